// Where the species will be next year, which squares to search, and how far such forecasts could be trusted in the past.
import { api, forecastAddress, ROOT, type Forecast, type NoForecast } from '../api.ts';
import { el } from '../elements.ts';
import { question } from '../loading.ts';
import type { Size } from '../state.ts';
import type { Store } from '../store.ts';
import { table, unseen } from '../table.ts';
import { weekInWords } from '../weeks.ts';
import { count, counted, speed } from '../words.ts';
import { pastForecasts } from './pastForecasts.ts';
import { shown } from './waiting.ts';
import { whatIs } from './whatIs.ts';

const LISTED = 10;

export function mountForecast(host: HTMLElement, store: Store): void {
  const empty = [el('p', { class: 'empty' }, 'Choose a species to see where it may be next.')];
  let held = '';
  const asked = question<Forecast | NoForecast>((answer) => host.replaceChildren(...shown(answer, (forecast) => draw(forecast, store), empty)));

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

function draw(forecast: Forecast | NoForecast, store: Store): Node[] {
  if (forecast.refused !== undefined) return [el('p', { class: 'opening' }, 'No forecast can be made.'), el('p', {}, forecast.refused, ' A forecast is for species that spread, and needs visits that did not find them, too.')];
  const { year, expectedSquares, low, high, speed: moves } = forecast;
  return [
    el('p', { class: 'opening' }, `By the end of ${year} it is expected in ${counted(Math.round(expectedSquares), 'square')} where it was never found (95 % interval ${count(low)} to ${count(high)}).`),
    el('p', {}, moves === null
      ? 'Its arrival years tell no speed that can be measured.'
      : `Its arrival advances by ${speed(moves.kmPerYear)} km a year (95 % interval ${speed(moves.low)} to ${speed(moves.high)}; ${counted(moves.n, 'square')}).`,
      ' ', el('button', { type: 'button', class: 'link', click: () => store.change({ mode: 'forecast' }) }, 'Show it on the map')),
    whatIs(
      'Where the species may be next year, from every visit so far: those that found it and those that did not. The shading on the map is the chance that it will be there, not that you would find it.',
      'The search lists name squares where a visit would tell most. How good such forecasts were stands at the end: the same reckoning was made with what was known in past years.'),
    ...searchLists(forecast, store),
    ...pastForecasts(forecast.hindcast),
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
  const row = (s: { square: string; chance: number; aside: string }) => [el('button', { type: 'button', class: 'link', click: () => store.change({ square: s.square, panel: 'square' }) }, s.square), percent(s.chance), s.aside];
  const some = (listed: typeof squares) => table(['Square', chance, unseen('Besides')], listed.map(row));
  return el('section', { class: 'searched' }, el('h5', {}, title), some(squares.slice(0, LISTED)),
    squares.length <= LISTED ? null : el('details', {}, el('summary', {}, `${squares.length - LISTED} more`), some(squares.slice(LISTED))));
}

const percent = (chance: number) => `${Math.round(100 * chance)} %`;
