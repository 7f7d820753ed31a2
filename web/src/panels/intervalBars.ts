// The estimates side by side on one axis: a dot for the value, a bar for its interval, so that agreement is seen at a glance.
import type { Estimator } from '../api.ts';
import { svg } from '../elements.ts';
import { speed } from '../words.ts';
import { scale, ticks } from './scale.ts';

const WIDTH = 380, ROW = 34, AXIS = 22, LEFT = 6, RIGHT = 14;

export function intervalBars(estimators: Estimator[]): SVGSVGElement {
  const values = estimators.flatMap((e) => [e.low ?? e.kmPerYear!, e.high ?? e.kmPerYear!]);
  const from = Math.min(0, ...values), to = Math.max(...values, 1);
  const x = scale([from, to], [LEFT, WIDTH - RIGHT]);
  const bottom = estimators.length * ROW;

  const axis = ticks(from, to, 5).flatMap((v) => [
    svg('line', { class: 'rule', x1: x(v), x2: x(v), y1: 0, y2: bottom }),
    svg('text', { x: x(v), y: bottom + 15, 'text-anchor': 'middle' }, String(v)),
  ]);
  const rows = estimators.flatMap((e, i) => {
    const y = i * ROW + 25;
    return [
      svg('text', { class: 'label', x: LEFT, y: y - 9 }, e.label ?? e.method),
      svg('text', { class: 'label number', x: WIDTH - RIGHT, y: y - 9, 'text-anchor': 'end' }, speed(e.kmPerYear!), svg('tspan', { class: 'unit' }, `  n ${e.n}`)),
      e.low === null || e.high === null ? null : svg('line', { class: 'interval', x1: x(e.low), x2: x(e.high), y1: y, y2: y }),
      svg('circle', { class: 'value', cx: x(e.kmPerYear!), cy: y, r: 4 }),
    ];
  }).filter((node) => node !== null);
  return svg('svg', { class: 'chart intervals', viewBox: `0 0 ${WIDTH} ${bottom + AXIS}`, role: 'img', 'aria-label': 'Speeds of all methods with their intervals, in kilometres a year; the same follows in words.' }, ...axis, ...rows);
}
