// How the range changed between two periods: the finding in words, how effort changed, and every measure with its interval.
import { api, effortAddress, ROOT, type Change, type ChangeEstimate, type PeriodEffort } from '../api.ts';
import { changeQuestion } from '../changePeriods.ts';
import { el } from '../elements.ts';
import { question } from '../loading.ts';
import { periodInWords } from '../periods.ts';
import { differs, type Store } from '../store.ts';
import { count, counted } from '../words.ts';
import { changeBars } from './changeBars.ts';
import { NEEDS_TWO_PERIODS } from './changeLegend.ts';
import { screeningFold } from './screening.ts';
import { shown } from './waiting.ts';

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
  const measured = change.taxa.filter((e) => e.refused === null);
  const refused = change.taxa.filter((e) => e.refused !== null);
  const units = [...new Set(measured.map((e) => e.unit))];
  return [
    el('p', { class: 'opening' }, change.verdicts[0]?.words ?? `From ${periodInWords(change.from)} to ${periodInWords(change.to)}.`),
    ...change.effort.flatMap((e) => [...effort(e.periods, e.visitRatio), effortLink(change, e.group)]),
    ...units.flatMap((unit) => {
      const ofUnit = measured.filter((e) => e.unit === unit);
      return [el('h4', {}, `Change, ${unitInWords(unit)}`), changeBars(ofUnit)];
    }),
    ...(measured.length === 0 ? [] : [inWords(measured)]),
    ...(refused.length === 0 ? [] : [el('h4', {}, 'Not measured'), el('ul', { class: 'refused' }, ...refused.map((e) => el('li', {}, `${e.label}: ${e.refused}`)))]),
  ];
}

function effort(periods: PeriodEffort[], ratio: number | null): Node[] {
  const head = ['Period', 'Visits', 'Recorders', 'Squares', 'Well surveyed', 'Taxa a visit'].map((text) => el('th', { scope: 'col' }, text));
  const row = (p: PeriodEffort) => el('tr', {}, el('th', { scope: 'row' }, periodInWords(p.period)), ...[p.visits, p.recorders, p.squares, p.wellSurveyed].map((n) => el('td', {}, count(n))),
    el('td', {}, p.meanListLength === null ? '–' : p.meanListLength.toFixed(1)));
  return [
    el('h4', {}, 'Effort'),
    el('table', {}, el('thead', {}, el('tr', {}, ...head)), el('tbody', {}, ...periods.map(row))),
    el('p', { class: 'note' }, ratio === null ? 'There were no visits before, so nothing can be compared at equal effort.' : `${ratio.toFixed(1)} visits now for each visit then.`),
  ];
}

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
