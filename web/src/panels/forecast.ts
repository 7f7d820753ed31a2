// Where the species will be next year, which squares to search, and how far such forecasts could be trusted in the past.
import { api, forecastAddress, ROOT, type Forecast, type PastForecast } from '../api.ts';
import { el } from '../elements.ts';
import { question } from '../loading.ts';
import type { Size } from '../state.ts';
import type { Store } from '../store.ts';
import { count, counted, speed } from '../words.ts';
import { shown } from './waiting.ts';

const LISTED = 10;

export function mountForecast(host: HTMLElement, store: Store): void {
  const empty = [el('p', { class: 'empty' }, 'Choose a species to see where it may be next.')];
  let held = '';
  const asked = question<Forecast>((answer) => host.replaceChildren(...shown(answer, (forecast) => draw(forecast, store), empty)));

  // The model is fitted only when someone looks at it.
  store.follow(({ taxon, size, panel }) => {
    if (taxon === null) {
      held = '';
      asked.clear();
    } else if (panel === 'forecast' && held !== `${taxon} ${size}`) {
      held = `${taxon} ${size}`;
      asked.ask((signal) => api.forecast(taxon, size, signal));
    }
  });
}

function draw(forecast: Forecast, store: Store): Node[] {
  const { year, expectedSquares, low, high, speed: moves } = forecast;
  return [
    el('p', { class: 'opening' }, `By the end of ${year} it is expected in ${counted(Math.round(expectedSquares), 'square')} where it was never found (95 % interval ${count(low)} to ${count(high)}).`),
    el('p', {}, moves === null
      ? 'Its arrival years tell no speed that can be measured.'
      : `Its arrival advances by ${speed(moves.kmPerYear)} km a year (95 % interval ${speed(moves.low)} to ${speed(moves.high)}; ${counted(moves.n, 'square')}).`,
      ' ', el('button', { type: 'button', class: 'link', click: () => store.change({ mode: 'forecast' }) }, 'Show it on the map')),
    ...searchLists(forecast, store),
    ...trust(forecast.hindcast),
  ];
}

function searchLists(forecast: Forecast, store: Store): Node[] {
  const { ahead, search, weeks, caution, year } = forecast;
  const { taxon, size } = store.state;
  if (taxon === null || ahead.length + search.length === 0) return [el('p', { class: 'note' }, 'No square is named for this species.')];
  return [
    el('h4', {}, 'Squares to search'),
    el('p', { class: 'note caution' }, caution),
    weeks.length === 0 ? null : el('p', {}, `Best weeks: ${weeks.map((week) => weekInWords(year, week)).join(', ')}.`),
    list('Next to be reached', 'Reached next', ahead.map((s) => ({ square: s.square, chance: s.arrives, aside: `${percent(s.there)} there already` })), store),
    list('Probably there, not found yet', 'There', search.map((s) => ({ square: s.square, chance: s.probability, aside: `${counted(s.visits, 'visit')} so far` })), store),
    el('p', { class: 'take' }, 'Take this: ', link(taxon, size, 'html', 'sheet to print'), ' ', link(taxon, size, 'gpx', 'waypoints (GPX)')),
  ].filter((node) => node !== null);
}

function link(taxon: string, size: Size, format: 'html' | 'gpx', words: string): HTMLElement {
  return el('a', { href: ROOT + forecastAddress(taxon, size, format), ...(format === 'gpx' ? { download: true } : { target: '_blank', rel: 'noopener' }) }, words);
}

function list(title: string, chance: string, squares: { square: string; chance: number; aside: string }[], store: Store): HTMLElement {
  const row = (s: { square: string; chance: number; aside: string }) => el('tr', {},
    el('th', { scope: 'row' }, el('button', { type: 'button', class: 'link', click: () => store.change({ square: s.square, panel: 'square' }) }, s.square)),
    el('td', {}, percent(s.chance)), el('td', {}, s.aside));
  const table = (rows: typeof squares) => el('table', {},
    el('thead', {}, el('tr', {}, ...['Square', chance, ''].map((text) => el('th', { scope: 'col' }, text || el('span', { class: 'unseen' }, 'Besides'))))), el('tbody', {}, ...rows.map(row)));
  return el('section', { class: 'searched' }, el('h5', {}, title), table(squares.slice(0, LISTED)),
    squares.length <= LISTED ? null : el('details', {}, el('summary', {}, `${squares.length - LISTED} more`), table(squares.slice(LISTED))));
}

/** What past forecasts were worth, in words first. */
function trust(past: PastForecast[]): Node[] {
  const scored = past.filter((p) => p.skill !== null);
  const better = scored.filter((p) => p.skill! > 0 && (p.skillAgainstNeighbours ?? 1) > 0).length;
  const head = ['Forecast of', 'Better than no spread', 'Better than neighbours', 'Order', 'Boldness', 'Squares'].map((text) => el('th', { scope: 'col' }, text));
  const row = (p: PastForecast) => el('tr', {}, el('th', { scope: 'row' }, `${p.cut + 1}–${p.cut + p.horizon}`),
    ...(p.refused === null ? [share(p.skill), share(p.skillAgainstNeighbours), p.auc?.toFixed(2) ?? '–', p.slope?.toFixed(1) ?? '–', count(p.n)].map((text) => el('td', {}, text)) : [el('td', { colspan: 5 }, p.refused)]));
  return [
    el('h4', {}, 'How good were such forecasts?'),
    el('p', {}, scored.length === 0
      ? 'Not enough was known in the past to try them.'
      : `Made from what was known then, ${better} of ${scored.length} past forecasts did better both than “it stays where it is” and than “it moves to squares beside”.`),
    el('table', {}, el('thead', {}, el('tr', {}, ...head)), el('tbody', {}, ...past.map(row))),
    el('details', {}, el('summary', {}, 'What the columns say'), el('dl', { class: 'estimators' },
      el('dt', {}, 'Better than'), el('dd', {}, 'How much less the chances were off (Brier score) than with that rule. Below 0 %: the rule would have done better.'),
      el('dt', {}, 'Order'), el('dd', {}, 'How often a square where it came had the greater chance than one where it did not: 0.5 is guessing, 1 perfect.'),
      el('dt', {}, 'Boldness'), el('dd', {}, '1 is right; above 1 the chances could have been bolder, below 1 they were too bold.'))),
  ];
}

const share = (skill: number | null) => skill === null ? '–' : `${skill < 0 ? '−' : ''}${Math.abs(Math.round(100 * skill))} %`;

const percent = (chance: number) => `${Math.round(100 * chance)} %`;

const dayAndMonth = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', timeZone: 'UTC' });

/** The days of an ISO 8601 week. */
export function weekInWords(year: number, week: number): string {
  const fourth = new Date(Date.UTC(year, 0, 4));
  const monday = new Date(fourth.getTime() + 86_400_000 * (7 * (week - 1) - (fourth.getUTCDay() + 6) % 7));
  return `${dayAndMonth.format(monday)} to ${dayAndMonth.format(new Date(monday.getTime() + 6 * 86_400_000))}`;
}
