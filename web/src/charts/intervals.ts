// Estimates of one unit on one axis: a dot for the value, a bar for its interval, a line at 0, so that agreement is seen at a glance.
// An interval that would leave nothing of the values to see is cut at the rim, with a wedge that points on.
import { count } from '../words.ts';
import { chart } from './chart.ts';
import { ticks } from './ticks.ts';

export interface Interval {
  label: string;
  value: number;
  /** Null where there is a value and no interval. */
  low: number | null;
  high: number | null;
  n: number;
  /** The value as it is told. */
  words: string;
}

const ROW = 34, AXIS = 24;
const SIDE = 10;

/** An interval this many times longer than the values is cut. */
const MOST_STRETCH = 3;

export function intervalChart(estimates: Interval[], said: string): HTMLElement {
  const [from, to] = span(estimates);
  const inside = (v: number) => Math.min(to, Math.max(from, v));
  const bars = estimates.filter((e) => e.low !== null && e.high !== null);
  const row = { y: 'label' }, marks = ticks(from, to, 5);
  return chart({ kind: 'intervals', said, height: estimates.length * ROW + AXIS }, ({ axisX, dot, gridX, ruleX, ruleY, text }) => ({
    marginLeft: SIDE, marginRight: SIDE, marginTop: 0, marginBottom: AXIS,
    x: { domain: [from, to] },
    y: { type: 'band', domain: estimates.map((e) => e.label), axis: null, padding: 0 },
    marks: [
      gridX({ ticks: marks, className: 'rule' }), axisX({ ticks: marks, tickSize: 0, label: null }), ruleX([0], { className: 'rule none' }),
      text(estimates, { ...row, text: 'label', frameAnchor: 'left', dy: -8, className: 'label' }),
      text(estimates, { ...row, text: (e: Interval) => `${e.words}  n ${count(e.n)}`, frameAnchor: 'right', dy: -8, className: 'label number' }),
      ruleY(bars, { ...row, x1: (e: Interval) => inside(e.low!), x2: (e: Interval) => inside(e.high!), dy: 7, className: 'interval' }),
      dot(bars.filter((e) => e.high! > to), { ...row, x: to, symbol: 'triangle', rotate: 90, r: 3.5, dy: 7, className: 'rim' }),
      dot(bars.filter((e) => e.low! < from), { ...row, x: from, symbol: 'triangle', rotate: -90, r: 3.5, dy: 7, className: 'rim' }),
      dot(estimates, { ...row, x: (e: Interval) => inside(e.value), r: 4, dy: 7, className: 'value' }),
    ],
  }));
}

function span(estimates: Interval[]): [number, number] {
  const values = [0, ...estimates.map((e) => e.value)];
  const reach = Math.max(1, ...values.map(Math.abs)) * MOST_STRETCH;
  const low = Math.max(Math.min(...values, ...estimates.map((e) => e.low ?? e.value)), -reach);
  const high = Math.min(Math.max(...values, ...estimates.map((e) => e.high ?? e.value)), reach);
  return [Math.min(low, 0), low === high ? 1 : Math.max(high, 0)];
}
