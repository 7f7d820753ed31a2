// How well a square is known, what came lately and what may be missing: words first, then the figures.
import type { Completeness, ExpectedSpecies, SquarePage } from '../api.ts';
import { yearBars } from '../charts/yearBars.ts';
import { el } from '../elements.ts';
import type { Store } from '../store.ts';
import { table, tableTwin } from '../table.ts';
import { count, counted, scientific, shownName } from '../words.ts';

const LISTED = 8;

/** What came lately. Where nobody looked before, that all is new tells nothing. */
export function newLately(page: SquarePage): Node[] {
  if (page.newLately.length === 0 || page.newSince === 0) return [];
  const wasVisited = page.visitsByYear.some((v) => v.year < page.newSince && v.visits > 0) || page.newLately.length < page.taxa.length;
  const names = page.taxa.filter((t) => page.newLately.includes(t.id) && !t.standsForOthers).map(shownName);
  return [el('p', {}, wasVisited
    ? `New since ${page.newSince}: ${names.slice(0, LISTED).join(', ')}${names.length > LISTED ? ` and ${names.length - LISTED} more` : ''}.`
    : `Nobody had looked here before ${page.newSince}, so all of it is new.`)];
}

export function expected(page: SquarePage, store: Store): Node[] {
  const row = (s: ExpectedSpecies) => el('tr', {}, el('th', { scope: 'row' },
    el('button', { type: 'button', class: 'link', click: () => store.change({ taxon: s.id, year: null }) }, s.vernacularName || scientific(s.scientificName)), el('span', { class: 'why' }, s.why)),
  el('td', {}, `${Math.round(100 * s.probability)} %`));
  const table = (rows: ExpectedSpecies[]) => el('table', { class: 'expected' }, el('thead', {}, el('tr', {}, el('th', { scope: 'col' }, 'Species'), el('th', { scope: 'col' }, 'Chance'))), el('tbody', {}, ...rows.map(row)));
  const found = page.expected;
  return [
    el('h4', {}, 'Missing, but expected'),
    ...(found.length === 0
      ? [el('p', { class: 'note' }, 'None: no species is found in three or more squares round it and was not found here, or the visits here would have found it.')]
      : [table(found.slice(0, LISTED)), ...(found.length > LISTED ? [el('details', {}, el('summary', {}, `${found.length - LISTED} more`), table(found.slice(LISTED)))] : []),
        el('p', { class: 'note' }, 'From the squares round it and from visits alone, without regard to habitat. Sensitive species are never named.')]),
  ];
}

export function howWellKnown(page: SquarePage): Node[] {
  const seen = page.completeness.filter((c) => c.visits > 0);
  return [
    el('h4', {}, 'How well it is known'),
    ...(seen.length === 0 ? [el('p', {}, page.until === 0 ? 'There are no records yet.' : `No visit in ${page.since}–${page.until}.`)] : seen.map((c) => el('p', {}, completenessInWords(c)))),
    ...visitsByYear(page),
    ...(seen.length === 0 ? [] : [el('details', {}, el('summary', {}, 'The figures'), el('p', { class: 'note' }, `From visits in ${page.since}–${page.until}. The estimate is the least number of species that the lists speak for (Chao2).`), figures(seen))]),
  ];
}

function visitsByYear({ visitsByYear: years }: SquarePage): Node[] {
  if (years.length === 0) return [];
  const counts = years.map(({ year, visits }) => ({ year, count: visits }));
  const said = `Visits by year, ${years[0]!.year} to ${years.at(-1)!.year}: ${counted(counts.reduce((sum, c) => sum + c.count, 0), 'visit')}, at most ${Math.max(...counts.map((c) => c.count))} in a year.`;
  return [
    el('p', { class: 'aside' }, 'Visits by year'), yearBars(counts, { kind: 'visits', said, words: (n) => counted(n, 'visit') }),
    tableTwin(['Year', 'Visits'], years.map(({ year, visits }) => [String(year), count(visits)]), 'Visits by year as a table'),
  ];
}

/** "The glimmers are well known: …". */
export function completenessInWords({ group, visits, species, estimate, low, high, refused, wellSurveyed }: Completeness): string {
  const name = group ?? 'species without a group';
  const verdict = wellSurveyed ? 'well known' : visits < 5 ? 'hardly known' : 'known in part';
  const found = `${counted(species, 'species', 'species')} on ${counted(visits, 'visit')}`;
  const left = estimate === null ? refused ?? '' : `At least ${count(Math.round(estimate))} must be there (95 % interval ${count(Math.round(low!))} to ${count(Math.round(high!))}).`;
  return `${name[0]!.toUpperCase()}${name.slice(1)}: ${verdict}; ${found}. ${left}`.trim();
}

function figures(groups: Completeness[]): HTMLElement {
  const estimate = (c: Completeness) => c.estimate === null ? '–' : `${c.estimate.toFixed(1)} (${c.low!.toFixed(1)} to ${c.high!.toFixed(1)})`;
  return table(['Group', 'Found', 'Estimate', 'Coverage'], groups.map((c) => [c.group ?? 'no group', count(c.species), estimate(c), `${Math.round(100 * c.coverage)} %`]));
}
