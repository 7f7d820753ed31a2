// How fast and which way: every estimate with its interval and its number of squares, a chart of the advance, a rose of directions.
import { api, type Estimator, type Jump, type Phase, type Sector, type Spread } from '../api.ts';
import { el } from '../elements.ts';
import { question } from '../loading.ts';
import type { Store } from '../store.ts';
import { counted, count, speed, wind, years } from '../words.ts';
import { advanceChart } from './advanceChart.ts';
import { intervalBars } from './intervalBars.ts';
import { rose } from './rose.ts';
import { shown } from './waiting.ts';

export function mountSpread(host: HTMLElement, store: Store): void {
  const empty = [el('p', { class: 'empty' }, 'Choose a species to see how its range moves.')];
  const asked = question<Spread>((answer) => host.replaceChildren(...shown(answer, drawSpread, empty)));
  let held = '';

  // The measuring is asked for only when someone looks at it.
  store.follow(({ taxon, size, panel }) => {
    if (taxon === null) {
      held = '';
      asked.clear();
    } else if (panel === 'spread' && held !== `${taxon} ${size}`) {
      held = `${taxon} ${size}`;
      asked.ask((signal) => api.spread(taxon, size, signal));
    }
  });
}

function drawSpread(spread: Spread): Node[] {
  const measured = spread.estimators.filter((e) => e.kmPerYear !== null && !e.refused);
  const refused = spread.estimators.filter((e) => !measured.includes(e));
  return [
    el('p', { class: 'opening' }, spread.summary ?? `${counted(spread.squares, 'square')}, ${years(spread.firstYear, spread.lastYear)}.`),
    ...(spread.origin === null ? [] : [el('p', { class: 'note' }, `Distances run from ${spread.origin.square} (${spread.origin.how}).`)]),
    ...(spread.points.length === 0 ? [] : [el('h4', {}, 'The advance'), advanceChart(spread)]),
    ...(measured.length === 0 ? [] : [el('h4', {}, 'Speed, km a year'), intervalBars(measured), estimatorList(measured)]),
    ...originLine(spread.originRange),
    ...phaseList(spread.phases),
    ...jumpLine(spread.jumps),
    ...refusals(refused),
    ...directions(spread.sectors),
  ];
}

const name = (e: Estimator) => e.label ?? e.method;

function inWords(e: Estimator): string {
  const range = e.low === null || e.high === null ? 'no interval' : `${speed(e.low)} to ${speed(e.high)}`;
  return `${speed(e.kmPerYear!)} km a year (${range}; ${counted(e.n, 'square')})`;
}

function estimatorList(measured: Estimator[]): HTMLElement {
  return el('details', {}, el('summary', {}, 'The same in words'),
    el('dl', { class: 'estimators' }, ...measured.flatMap((e) => [el('dt', {}, name(e)), el('dd', {}, `${inWords(e)}.`, e.note ? ` ${e.note}` : '')])));
}

function phaseList(phases: Phase[]): Node[] {
  if (phases.length === 0) return [];
  const row = (p: Phase) => el('tr', {}, el('th', { scope: 'row' }, years(Math.round(p.from), Math.round(p.to))), el('td', {}, speed(p.kmPerYear)), el('td', {}, `${speed(p.low)} to ${speed(p.high)}`), el('td', {}, p.movement));
  const head = ['Years', 'Km a year', 'Interval', 'The front'].map((text) => el('th', { scope: 'col' }, text));
  return [el('h4', {}, 'The speed changed'), el('table', {}, el('thead', {}, el('tr', {}, ...head)), el('tbody', {}, ...phases.map(row)))];
}

function originLine(range: Spread['originRange']): Node[] {
  if (range === null || range.squares < 2) return [];
  return [el('p', { class: 'note' }, `Front speed with the origin in each of the ${range.squares} earliest squares: ${speed(range.low)} to ${speed(range.high)} km a year.`)];
}

function jumpLine(jumps: Jump[]): Node[] {
  if (jumps.length === 0) return [];
  const one = (j: Jump) => `${j.square ?? 'a square'} in ${Math.round(j.year)} (${Math.round(j.kmAhead)} km ahead${j.squares > 1 ? `, ${j.squares} squares by now` : ''})`;
  return [el('p', { class: 'jumps' }, `Far ahead of the front, and left out of it: ${jumps.map(one).join('; ')}.`)];
}

function refusals(refused: Estimator[]): Node[] {
  if (refused.length === 0) return [];
  return [el('h4', {}, 'Not measured'), el('ul', { class: 'refused' }, ...refused.map((e) => el('li', {}, `${name(e)}: ${e.refused ?? 'no answer'}`)))];
}

function directions(sectors: Sector[]): Node[] {
  if (sectors.length === 0) return [];
  const row = (s: Sector) => el('tr', {}, el('th', { scope: 'row' }, `${wind(s.bearing)} (${Math.round(s.bearing)}°)`), el('td', {}, s.kmPerYear === null ? '–' : speed(s.kmPerYear)),
    el('td', {}, s.low === null || s.high === null ? '–' : `${speed(s.low)} to ${speed(s.high)}`), el('td', {}, count(s.n)));
  const head = ['Towards', 'Km a year', 'Interval', 'Squares'].map((text) => el('th', { scope: 'col' }, text));
  return [el('h4', {}, 'By direction'), rose(sectors), el('table', {}, el('thead', {}, el('tr', {}, ...head)), el('tbody', {}, ...sectors.map(row)))];
}
