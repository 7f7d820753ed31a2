// The speed apart by decade of arrival and by region, from the arrival model.
import { api, type Forecast, type NoForecast } from '../api.ts';
import { intervalChart } from '../charts/intervals.ts';
import { el } from '../elements.ts';
import { question } from '../loading.ts';
import type { Store } from '../store.ts';
import { table } from '../table.ts';
import { count, speed } from '../words.ts';
import { shown } from './waiting.ts';

/** A fold that asks when it is opened first. */
export function speedPartsFold(store: Store): HTMLElement {
  const { taxon, size } = store.state;
  const host = el('div');
  const answer = question<Forecast | NoForecast>((loaded) => host.replaceChildren(...shown(loaded, speedParts)));
  let isAsked = false;
  const fold: HTMLDetailsElement = el('details', { class: 'parts', toggle: () => {
    if (!fold.open || isAsked || taxon === null) return;
    isAsked = true;
    answer.ask((signal) => api.forecast(taxon, size, signal));
  } }, el('summary', {}, 'Speed by decade and region'), host);
  return fold;
}

export function speedParts(forecast: Forecast | NoForecast): Node[] {
  if (forecast.refused !== undefined) return [el('p', { class: 'empty' }, `Not measurable. ${forecast.refused}`)];
  const parts = forecast.speeds;
  if (parts.length === 0) return [el('p', { class: 'empty' }, 'Not measurable: no decade and no region has enough squares.')];
  return [
    intervalChart(parts.map((p) => ({ label: p.name, value: p.kmPerYear, low: p.low, high: p.high, n: p.n, words: speed(p.kmPerYear) })), 'Speed by decade of arrival and by region with intervals, in kilometres a year; the table gives the same numbers.'),
    table(['Decade or region', 'Km a year', 'Interval', 'Squares'], parts.map((p) => [p.name, speed(p.kmPerYear), `${speed(p.low)} to ${speed(p.high)}`, count(p.n)])),
    el('p', { class: 'note' }, 'Away from where the spread began. A decade or region that is not listed has too few squares to measure a speed, or none that can be told from standing still.'),
  ];
}
