// How the range changed between two periods: the finding in words first; effort and every measure with its interval behind a fold.
import { api, effortAddress, ROOT, type Change, type ChangeEstimate, type PeriodEffort } from '../api.ts';
import { changeQuestion } from '../changePeriods.ts';
import { intervalChart } from '../charts/intervals.ts';
import { el } from '../elements.ts';
import { question } from '../loading.ts';
import { periodInWords } from '../periods.ts';
import { differs, type Store } from '../store.ts';
import { table } from '../table.ts';
import { count, counted } from '../words.ts';
import { NEEDS_TWO_PERIODS } from './changeLegend.ts';
import { screeningFold } from './screening.ts';
import { shown } from './waiting.ts';
import { whatIs } from './whatIs.ts';

export function mountChange(host: HTMLElement, store: Store): void {
  const asked = question<Change>((answer) => host.replaceChildren(...shown(answer, drawAll, [el('p', { class: 'empty' }, nothing())])));
  const nothing = () => store.state.taxon === null ? 'Choose a species to see how its range changed.' : NEEDS_TWO_PERIODS;
  let held = false;

  // The measuring is asked for only when someone looks at it.
  store.follow((now, before) => {
    if (differs(now, before, 'taxon', 'size', 'quality', 'periods')) {
      held = false;
      asked.clear();
    }
    const wanted = changeQuestion(now);
    if (now.panel !== 'change' || held || wanted === null) return;
    held = true;
    asked.ask((signal) => api.change(wanted, signal));
  });

  function drawAll(change: Change): Node[] {
    const wanted = changeQuestion(store.state);
    return [...drawChange(change), ...(wanted === null ? [] : [screeningFold(wanted, store)])];
  }
}

function drawChange(change: Change): Node[] {
  const ratios = change.effort.map((e) => el('p', {}, effortInWords(e.visitRatio)));
  return [
    el('p', { class: 'opening' }, change.verdicts[0]?.words ?? `From ${periodInWords(change.from)} to ${periodInWords(change.to)}.`),
    ...ratios,
    whatIs(
      'Whether the species is found in more squares or fewer than before. More recorders find it in more squares even where nothing changed, so each measure allows for effort in its own way.',
      'The sentence above is as bold as the measures together permit. The figures stand with their intervals: where an interval holds 0, no change is a fair reading too.'),
    el('details', { class: 'figures' }, el('summary', {}, 'The figures'), ...figures(change)),
  ];
}

function figures(change: Change): Node[] {
  const measured = change.taxa.filter((e) => e.refused === null);
  const refused = change.taxa.filter((e) => e.refused !== null);
  const units = [...new Set(measured.map((e) => e.unit))];
  return [
    ...change.effort.flatMap((e) => [...effort(e.periods), effortLink(change, e.group)]),
    ...units.flatMap((unit) => [el('h4', {}, `Change, ${unitInWords(unit)}`), changeChart(measured.filter((e) => e.unit === unit))]),
    ...(measured.length === 0 ? [] : [inWords(measured)]),
    ...(refused.length === 0 ? [] : [el('h4', {}, 'Not measured'), el('ul', { class: 'refused' }, ...refused.map((e) => el('li', {}, `${e.label}: ${e.refused}`)))]),
  ];
}

function changeChart(measured: ChangeEstimate[]): HTMLElement {
  const words = (value: number) => `${value > 0 ? '+' : ''}${Math.round(value * 10) / 10}`;
  return intervalChart(measured.map((e) => ({ label: e.label, value: e.value!, low: e.low, high: e.high, n: e.n, words: words(e.value!) })), 'Measures of change with their intervals; 0 is no change. The same follows in words.');
}

function effort(periods: PeriodEffort[]): Node[] {
  const rows = periods.map((p) => [periodInWords(p.period), ...[p.visits, p.recorders, p.squares, p.wellSurveyed].map(count), p.meanListLength === null ? '–' : p.meanListLength.toFixed(1)]);
  return [el('h4', {}, 'Effort'), table(['Period', 'Visits', 'Recorders', 'Squares', 'Well surveyed', 'Taxa a visit'], rows)];
}

const effortInWords = (ratio: number | null) => ratio === null ? 'There were no visits before, so nothing can be compared at equal effort.' : `${ratio.toFixed(1)} visits now for each visit then.`;

const effortLink = (change: Change, group: string | null) => el('p', { class: 'take' }, 'Take this: ',
  el('a', { href: `${ROOT}${effortAddress(change, group)}`, download: true }, 'effort of every square as GeoJSON'));

const unitInWords = (unit: string) => unit === '%' ? 'per cent' : unit;

const signed = (v: number) => `${v > 0 ? '+' : v < 0 ? '−' : ''}${Math.abs(v) < 10 ? Math.abs(v).toFixed(1) : count(Math.abs(v))}`;

function inWords(measured: ChangeEstimate[]): HTMLElement {
  return el('details', {}, el('summary', {}, 'The same in words'), el('dl', { class: 'estimators' }, ...measured.flatMap((e) => [
    el('dt', {}, e.label),
    el('dd', {}, `${signed(e.value!)} ${e.unit} (95 % interval ${signed(e.low!)} to ${signed(e.high!)}; n ${counted(e.n, '').trim()}).`, e.note === null ? '' : ` ${e.note}`),
  ])));
}
