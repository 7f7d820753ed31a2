// What forecasts from past years were worth: in words first, then every score against both references.
import type { PastForecast } from '../api.ts';
import { el } from '../elements.ts';
import { table } from '../table.ts';
import { count } from '../words.ts';

export function pastForecasts(past: PastForecast[]): Node[] {
  const scored = past.filter((p) => p.refused === null), refused = past.filter((p) => p.refused !== null);
  const years = (p: PastForecast) => `${p.cut + 1}–${p.cut + p.horizon}`;
  const head = ['Forecast of', 'Brier', 'Better than no spread', 'Better than neighbours', 'Log', 'Order', 'Boldness', 'Squares'];
  const rows = scored.map((p) => [years(p), figure(p.brier, 3), share(p.skill), share(p.skillAgainstNeighbours), figure(p.log, 3), figure(p.auc, 2), figure(p.slope, 1), count(p.n)]);
  return [
    el('h4', {}, 'How good were such forecasts?'),
    el('p', {}, trackRecord(past)),
    ...(scored.length === 0 ? [] : [el('div', { class: 'wide hindcast', tabindex: 0, role: 'group', 'aria-label': 'Past forecasts' }, table(head, rows)), columnsInWords()]),
    ...(refused.length === 0 ? [] : [el('ul', { class: 'refused' }, ...refused.map((p) => el('li', {}, `${years(p)}: ${p.refused}`)))]),
  ];
}

/** The record of past forecasts in a sentence. */
export function trackRecord(past: PastForecast[]): string {
  const scored = past.filter((p) => p.skill !== null && p.skillAgainstNeighbours !== null);
  const better = scored.filter((p) => p.skill! > 0 && p.skillAgainstNeighbours! > 0).length;
  return scored.length === 0
    ? 'Not enough was known in the past to try such forecasts.'
    : `Made from what was known then, ${better} of ${scored.length} past forecasts did better both than “it stays where it is” and than “it moves to squares beside”.`;
}

const columnsInWords = () => el('details', {}, el('summary', {}, 'What the columns say'), el('dl', { class: 'estimators' },
  el('dt', {}, 'Brier'), el('dd', {}, 'How far the chances were off on average, squared: 0 is perfect, 0.25 what a coin gives.'),
  el('dt', {}, 'Better than'), el('dd', {}, 'How much less the chances were off (Brier) than with that rule. Below 0 %: the rule would have done better.'),
  el('dt', {}, 'Log'), el('dd', {}, 'The same with a harder penalty for what was held nearly certain and was wrong: 0 is perfect, 0.69 what a coin gives.'),
  el('dt', {}, 'Order'), el('dd', {}, 'How often a square where it came had the greater chance than one where it did not (AUC): 0.5 is guessing, 1 perfect.'),
  el('dt', {}, 'Boldness'), el('dd', {}, 'Calibration: 1 is right; above 1 the chances could have been bolder, below 1 they were too bold.')));

const figure = (value: number | null, decimals: number) => value === null ? '–' : value.toFixed(decimals);

const share = (skill: number | null) => skill === null ? '–' : `${skill < 0 ? '−' : ''}${Math.abs(Math.round(100 * skill))} %`;
