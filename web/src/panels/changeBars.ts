// Measures of change of one unit on one axis: a dot for the value, a bar for its interval, and a line at 0, no change. Long intervals are cut at the rim, with an arrow.
import type { ChangeEstimate } from '../api.ts';
import { svg } from '../elements.ts';
import { scale, ticks } from './scale.ts';

const WIDTH = 380, ROW = 34, AXIS = 22, LEFT = 8, RIGHT = 14;

/** An interval this many times longer than the values would leave nothing of them to see. */
const MOST_STRETCH = 3;

export function changeBars(estimates: ChangeEstimate[]): SVGSVGElement {
  const [from, to] = span(estimates);
  const x = scale([from, to], [LEFT, WIDTH - RIGHT]);
  const inside = (v: number) => Math.min(to, Math.max(from, v));
  const bottom = estimates.length * ROW;
  const axis = ticks(from, to, 5).flatMap((v) => [
    svg('line', { class: v === 0 ? 'rule none' : 'rule', x1: x(v), x2: x(v), y1: 0, y2: bottom }),
    svg('text', { x: x(v), y: bottom + 15, 'text-anchor': 'middle' }, String(v)),
  ]);
  const rows = estimates.flatMap((e, i) => {
    const y = i * ROW + 25;
    return [
      svg('text', { class: 'label', x: LEFT, y: y - 9 }, e.label),
      svg('text', { class: 'label number', x: WIDTH - RIGHT, y: y - 9, 'text-anchor': 'end' }, `${e.value! > 0 ? '+' : ''}${Math.round(e.value! * 10) / 10}`, svg('tspan', { class: 'unit' }, `  n ${e.n}`)),
      svg('line', { class: 'interval', x1: x(inside(e.low!)), x2: x(inside(e.high!)), y1: y, y2: y }),
      e.high! > to && svg('path', { class: 'interval', d: `M${x(to) - 5} ${y - 4} L${x(to)} ${y} L${x(to) - 5} ${y + 4}`, fill: 'none' }),
      e.low! < from && svg('path', { class: 'interval', d: `M${x(from) + 5} ${y - 4} L${x(from)} ${y} L${x(from) + 5} ${y + 4}`, fill: 'none' }),
      svg('circle', { class: 'value', cx: x(inside(e.value!)), cy: y, r: 4 }),
    ];
  }).filter((node) => node !== false);
  return svg('svg', { class: 'chart intervals', viewBox: `0 0 ${WIDTH} ${bottom + AXIS}`, role: 'img', 'aria-label': 'Measures of change with their intervals; 0 is no change. The same follows in words.' }, ...axis, ...rows);
}

function span(estimates: ChangeEstimate[]): [number, number] {
  const values = [0, ...estimates.map((e) => e.value!)];
  const reach = Math.max(1, ...values.map(Math.abs)) * MOST_STRETCH;
  const low = Math.max(Math.min(...values, ...estimates.map((e) => e.low!)), -reach), high = Math.min(Math.max(...values, ...estimates.map((e) => e.high!)), reach);
  return [Math.min(low, 0), Math.max(high, 0)];
}
