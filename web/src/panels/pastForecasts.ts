// What forecasts from past years were worth: in words first, then every score against both references.
import type { PastForecast } from '../api.ts';
import { el } from '../elements.ts';
import { table } from '../table.ts';
import { count } from '../words.ts';

interface Score { name: string; of(past: PastForecast): string; words: string }

const SCORES: readonly Score[] = [
  { name: 'Brier score', of: (p) => figure(p.brier, 3), words: 'How far the chances were off, squared, on average: 0 is perfect, 0.25 what a coin gives.' },
  { name: 'Better than no spread', of: (p) => share(p.skill), words: 'How much less they were off (Brier) than with “it stays where it is”. Below 0 %: that rule would have done better.' },
  { name: 'Better than neighbours', of: (p) => share(p.skillAgainstNeighbours), words: 'The same against “it moves to squares beside”.' },
  { name: 'Log score', of: (p) => figure(p.log, 3), words: 'As the Brier score, but harder on what was held nearly certain and was wrong: 0 is perfect, 0.69 what a coin gives.' },
  { name: 'Order (AUC)', of: (p) => figure(p.auc, 2), words: 'How often a square where it came had the greater chance than one where it did not: 0.5 is guessing, 1 perfect.' },
  { name: 'Boldness', of: (p) => figure(p.slope, 1), words: 'Slope of calibration: 1 is right; above 1 the chances could have been bolder, below 1 they were too bold.' },
  { name: 'Squares', of: (p) => count(p.n), words: 'Squares that were foretold and visited since.' },
];

export function pastForecasts(past: PastForecast[]): Node[] {
  const scored = past.filter((p) => p.refused === null), refused = past.filter((p) => p.refused !== null);
  const years = (p: PastForecast) => `${p.cut + 1}–${p.cut + p.horizon}`;
  return [
    el('h4', {}, 'How good were such forecasts?'),
    el('p', {}, trackRecord(past)),
    ...(scored.length === 0 ? [] : [el('div', { class: 'wide hindcast', tabindex: 0, role: 'group', 'aria-label': 'Past forecasts' }, table(['Forecast of', ...scored.map(years)], SCORES.map(({ name, of }) => [name, ...scored.map(of)]))), scoresInWords()]),
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

const scoresInWords = () => el('details', {}, el('summary', {}, 'What the rows say'), el('dl', { class: 'estimators' }, ...SCORES.flatMap(({ name, words }) => [el('dt', {}, name), el('dd', {}, words)])));

const figure = (value: number | null, decimals: number) => value === null ? '–' : value.toFixed(decimals);

const share = (skill: number | null) => skill === null ? '–' : `${skill < 0 ? '−' : ''}${Math.abs(Math.round(100 * skill))} %`;
