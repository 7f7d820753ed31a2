// Speed by direction: one petal a sector, its length the speed, a thin line for the interval. Grid north is up.
import type { Sector } from '../api.ts';
import { svg } from '../elements.ts';
import { speed, wind } from '../words.ts';
import { ticks } from './ticks.ts';

const SIZE = 230, MIDDLE = SIZE / 2, REACH = 88;
/** Share of a sector's angle that its petal fills. */
const FILLED = 0.8;

export function rose(sectors: Sector[]): SVGSVGElement {
  const farthest = Math.max(1, ...sectors.map((s) => s.high ?? s.kmPerYear ?? 0));
  const half = 180 / sectors.length * FILLED;
  const radius = (v: number) => Math.max(0, v) / farthest * REACH;

  const rings = ticks(0, farthest, 3).filter((v) => v > 0).flatMap((v) => [
    svg('circle', { class: 'rule', cx: MIDDLE, cy: MIDDLE, r: radius(v) }),
    svg('text', { x: MIDDLE + 3, y: MIDDLE - radius(v) - 2 }, String(v)),
  ]);
  const petals = sectors.filter((s) => s.kmPerYear !== null).flatMap((s) => [
    svg('path', { class: 'petal', d: petal(s.bearing, half, radius(s.kmPerYear!)) }, svg('title', {}, `${wind(s.bearing)}: ${speed(s.kmPerYear!)} km a year, ${s.n} squares`)),
    s.low === null || s.high === null ? null : intervalLine(s.bearing, radius(s.low), radius(s.high)),
  ]).filter((node) => node !== null);
  const winds = (['N', 'E', 'S', 'W'] as const).map((letter, i) => {
    const [x, y] = at(i * 90, REACH + 16);
    return svg('text', { class: 'wind', x, y: y + 4, 'text-anchor': 'middle' }, letter);
  });
  return svg('svg', { class: 'chart rose', viewBox: `0 0 ${SIZE} ${SIZE}`, role: 'img', 'aria-label': 'Speed by direction; the table below gives the same numbers.' }, ...petals, ...rings, ...winds);
}

function at(bearing: number, radius: number): [number, number] {
  const angle = bearing * Math.PI / 180;
  return [MIDDLE + radius * Math.sin(angle), MIDDLE - radius * Math.cos(angle)];
}

function petal(bearing: number, half: number, radius: number): string {
  const [x0, y0] = at(bearing - half, radius), [x1, y1] = at(bearing + half, radius);
  return `M${MIDDLE} ${MIDDLE}L${x0} ${y0}A${radius} ${radius} 0 ${half > 90 ? 1 : 0} 1 ${x1} ${y1}Z`;
}

function intervalLine(bearing: number, low: number, high: number): SVGElement {
  const [x1, y1] = at(bearing, low), [x2, y2] = at(bearing, high);
  return svg('line', { class: 'interval', x1, y1, x2, y2 });
}
