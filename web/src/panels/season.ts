// The leaf of the species: when it is about, stage by stage, which plants it visits, and how to tell it.
import { api, type Season, type SeasonPeriod } from '../api.ts';
import { seasonChart, type StageSeason } from '../charts/season.ts';
import { el } from '../elements.ts';
import { question } from '../loading.ts';
import { ALL_TIME } from '../periods.ts';
import { differs, type Store } from '../store.ts';
import { table, tableTwin } from '../table.ts';
import { readWeeks } from '../weeks.ts';
import { count, counted, scientific } from '../words.ts';
import { howToTell } from './howToTell.ts';
import { shown } from './waiting.ts';
import { whatIs } from './whatIs.ts';

const PLANTS_LISTED = 10;

export function mountSeason(host: HTMLElement, store: Store): void {
  const empty = [el('p', { class: 'empty' }, 'Choose a species to see when it is about and how to tell it.')];
  const asked = question<Season>((answer) => host.replaceChildren(...shown(answer, (season) => drawSeason(season, store), empty)));
  let held = false;

  // Asked for only when someone looks at it.
  store.follow((now, before) => {
    if (differs(now, before, 'taxon', 'quality')) {
      held = false;
      asked.clear();
    }
    const { taxon, quality, panel } = now;
    if (panel !== 'species' || held || taxon === null) return;
    held = true;
    asked.ask((signal) => api.season(taxon, [ALL_TIME], quality, signal));
  });
}

function drawSeason(season: Season, store: Store): Node[] {
  const all = season.periods[0]!;
  const stages = all.stages.filter(({ records }) => records > 0).map((stage): StageSeason => ({ ...stage, expected: season.expected.filter((e) => e.stage === stage.stage || e.stage === null).flatMap((e) => readWeeks(e.words)) }));
  return [
    whatIs(
      'When the species is found in the year, for each sex, caste or stage that recorders note, and on which plants. Weeks are counted as in ISO 8601: week 1 holds 4 January.',
      'Many records in a week may mean many animals or many recorders: on fine weekends more people look.'),
    ...weeks(stages, season),
    ...plants(all),
    ...howToTell(season.marks, scientific(season.scientificName), store),
  ];
}

function weeks(stages: StageSeason[], { leftOut, expected }: Season): Node[] {
  if (stages.length === 0) return [el('h4', {}, 'Season'), el('p', { class: 'note' }, 'No record is dated to a week.')];
  const name = ({ stage }: StageSeason) => stage ?? 'not stated';
  const busiest = (s: StageSeason) => s.weeks.indexOf(Math.max(...s.weeks)) + 1;
  const span = (s: StageSeason) => weekSpan([s.weeks.findIndex((n) => n > 0) + 1, s.weeks.findLastIndex((n) => n > 0) + 1]);
  const listed = (s: StageSeason) => s.expected.length === 0 ? '–' : s.expected.map(weekSpan).join(', ');
  const said = `Records by week: ${stages.map((s) => `${name(s)} in weeks ${span(s)}, most in week ${busiest(s)}`).join('; ')}.`;
  const used = Array.from({ length: 53 }, (_, i) => i).filter((i) => stages.some((s) => s.weeks[i]! > 0));
  return [
    el('h4', {}, 'Season'),
    seasonChart(stages, said),
    expected.length === 0 ? null : el('p', { class: 'note' }, 'The line under the bars: the weeks that the list of species expects.'),
    table(['Stage', 'Records', 'Weeks', 'Most in week', 'Expected weeks'], stages.map((s) => [name(s), count(s.records), span(s), String(busiest(s)), listed(s)]), { class: 'weeks' }),
    tableTwin(['Week', ...stages.map(name)], used.map((i) => [String(i + 1), ...stages.map((s) => count(s.weeks[i]!))]), 'Every week as a table'),
    el('p', { class: 'note', hidden: leftOut.tooVague === 0 }, `Left out: ${counted(leftOut.tooVague, 'record')} dated to more than a week.`),
  ].filter((node) => node !== null);
}

const weekSpan = ([from, to]: readonly [number, number]) => from === to ? String(from) : `${from}–${to}`;

function plants({ plants: visited, records }: SeasonPeriod): Node[] {
  const rows = (some: typeof visited) => table(['Plant', 'Records'], some.map(({ plant, records: n }) => [plant, count(n)]));
  if (visited.length === 0) return [el('h4', {}, 'Plants visited'), el('p', { class: 'note' }, 'No record names a plant.')];
  const named = visited.reduce((sum, p) => sum + p.records, 0);
  return [
    el('h4', {}, 'Plants visited'),
    el('p', { class: 'note' }, `${counted(named, 'record')} of ${count(records)} name a plant.`),
    rows(visited.slice(0, PLANTS_LISTED)),
    ...(visited.length <= PLANTS_LISTED ? [] : [el('details', {}, el('summary', {}, `${visited.length - PLANTS_LISTED} more`), rows(visited.slice(PLANTS_LISTED)))]),
  ];
}
