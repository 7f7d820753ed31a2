// How fast and which way: every estimate with its interval and its number of squares, a chart of the advance, a rose of directions.
import { api, type Estimator, type Jump, type Phase, type Sector, type Spread } from '../api.ts';
import { advanceChart } from '../charts/advance.ts';
import { intervalChart, type Interval } from '../charts/intervals.ts';
import { rose } from '../charts/rose.ts';
import { el } from '../elements.ts';
import { question } from '../loading.ts';
import type { Store } from '../store.ts';
import { table } from '../table.ts';
import { count, counted, speed, wind, years } from '../words.ts';
import { speedPartsFold } from './speedParts.ts';
import { squaresOverTime } from './squaresOverTime.ts';
import { shown } from './waiting.ts';
import { whatIs } from './whatIs.ts';

export function mountSpread(host: HTMLElement, store: Store): void {
  const empty = [el('p', { class: 'empty' }, 'Choose a species to see how its range moves.')];
  const asked = question<Spread>((answer) => host.replaceChildren(...shown(answer, (spread) => drawSpread(spread, store), empty)));
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

function drawSpread(spread: Spread, store: Store): Node[] {
  const measured = spread.estimators.filter((e) => e.kmPerYear !== null && !e.refused);
  const refused = spread.estimators.filter((e) => !measured.includes(e));
  return [
    el('p', { class: 'opening' }, spread.summary ?? `${counted(spread.squares, 'square')}, ${years(spread.firstYear, spread.lastYear)}.`),
    whatIs(
      'How fast the edge of the range moves, from the year of the first record in every square. Each method asks this in its own way, so that you see where they agree.',
      'Each number stands with the interval that holds the true one in 95 of 100 such cases, and with the number n of squares it comes from. What cannot be measured says why.'),
    ...(spread.origin === null ? [] : [el('p', { class: 'note' }, `Distances run from ${spread.origin.square} (${spread.origin.how}).`)]),
    ...(spread.points.length === 0 ? [] : [el('h4', {}, 'The advance'), advanceChart(spread), ...squaresOverTime(spread.points)]),
    ...speeds(measured),
    ...originLine(spread.originRange),
    ...phaseList(spread.phases),
    ...jumpList(spread.jumps, store),
    ...refusals(refused),
    ...directions(spread.sectors),
    ...places(spread, store),
  ];
}

function speeds(measured: Estimator[]): Node[] {
  if (measured.length === 0) return [];
  const estimates = measured.map((e): Interval => ({ label: e.label ?? e.method, value: e.kmPerYear!, low: e.low, high: e.high, n: e.n, words: speed(e.kmPerYear!) }));
  return [
    el('h4', {}, 'Speed, km a year'),
    intervalChart(estimates, 'Speeds of all methods with their intervals, in kilometres a year; the same follows in words.'),
    el('details', {}, el('summary', {}, 'The same in words'),
      el('dl', { class: 'estimators' }, ...measured.flatMap((e) => [el('dt', {}, name(e)), el('dd', {}, `${inWords(e)}.`, e.note ? ` ${e.note}` : '')]))),
  ];
}

const name = (e: Estimator) => e.label ?? e.method;

function inWords(e: Estimator): string {
  const range = e.low === null || e.high === null ? 'no interval' : `${speed(e.low)} to ${speed(e.high)}`;
  return `${speed(e.kmPerYear!)} km a year (${range}; ${counted(e.n, 'square')})`;
}

function phaseList(phases: Phase[]): Node[] {
  if (phases.length === 0) return [];
  const rows = phases.map((p) => [years(Math.round(p.from), Math.round(p.to)), speed(p.kmPerYear), `${speed(p.low)} to ${speed(p.high)}`, p.movement]);
  return [el('h4', {}, 'The speed changed'), table(['Years', 'Km a year', 'Interval', 'The front'], rows)];
}

function originLine(range: Spread['originRange']): Node[] {
  if (range === null || range.squares < 2) return [];
  return [el('p', { class: 'note' }, `Front speed with the origin in each of the ${range.squares} earliest squares: ${speed(range.low)} to ${speed(range.high)} km a year.`)];
}

function jumpList(jumps: Jump[], store: Store): Node[] {
  if (jumps.length === 0) return [];
  const place = ({ square }: Jump) => square === null ? 'a square' : el('button', { type: 'button', class: 'link', click: () => store.change({ square, panel: 'square' }) }, square);
  const rows = jumps.map((j) => [place(j), String(Math.round(j.year)), count(Math.round(j.kmAhead)), count(Math.round(j.kmFromNearest)), count(j.squares)]);
  return [
    el('h4', {}, 'Far ahead of the front'),
    el('p', {}, `${counted(jumps.length, 'square')} found far ahead of the front and left out of it. `, el('button', { type: 'button', class: 'link', click: () => store.change({ mode: 'arrival' }) }, 'Show on the map of arrivals')),
    el('div', { class: 'jumps' }, table(['Square', 'Year', 'Km ahead', 'Km from the nearest find', 'Squares by now'], rows)),
  ];
}

function refusals(refused: Estimator[]): Node[] {
  if (refused.length === 0) return [];
  return [el('h4', {}, 'Not measured'), el('ul', { class: 'refused' }, ...refused.map((e) => el('li', {}, `${name(e)}: ${e.refused ?? 'no answer'}`)))];
}

function directions(sectors: Sector[]): Node[] {
  if (sectors.length === 0) return [];
  const rows = sectors.map((s) => [`${wind(s.bearing)} (${Math.round(s.bearing)}°)`, s.kmPerYear === null ? 'not measurable' : speed(s.kmPerYear), s.low === null || s.high === null ? '–' : `${speed(s.low)} to ${speed(s.high)}`, count(s.n)]);
  return [el('h4', {}, 'By direction'), rose(sectors), table(['Towards', 'Km a year', 'Interval', 'Squares'], rows)];
}

/** What differs from place to place comes from the arrival model, which is fitted only when someone wants it. */
function places({ points }: Spread, store: Store): Node[] {
  if (points.length === 0) return [];
  return [
    el('h4', {}, 'From place to place'),
    el('p', {}, el('button', { type: 'button', class: 'link', click: () => store.change({ mode: 'arrival', overlay: 'arrows' }) }, 'Show local speed and direction on the map')),
    speedPartsFold(store),
  ];
}
