// Distance from the origin against the year of the first record, one dot a square, with the line of the front.
import type { Spread } from '../api.ts';
import { svg } from '../elements.ts';
import { counted, speed } from '../words.ts';
import { scale, ticks } from './scale.ts';

const WIDTH = 380, HEIGHT = 230;
const LEFT = 40, RIGHT = 18, TOP = 10, BOTTOM = 26;

export function advanceChart({ points, line }: Spread): SVGSVGElement {
  const yearsHeld = points.map((p) => p.year);
  const [from, to] = [Math.min(...yearsHeld), Math.max(...yearsHeld)];
  const farthest = Math.max(1, ...points.map((p) => p.distanceKm));
  const x = scale([from, to], [LEFT, WIDTH - RIGHT]), y = scale([0, farthest], [HEIGHT - BOTTOM, TOP]);

  const yearTicks = ticks(from, to, 5).filter(Number.isInteger).map((year) => svg('text', { x: x(year), y: HEIGHT - 8, 'text-anchor': 'middle' }, String(year)));
  const kmTicks = ticks(0, farthest, 4).flatMap((km) => [
    svg('line', { class: 'rule', x1: LEFT, x2: WIDTH - RIGHT, y1: y(km), y2: y(km) }),
    svg('text', { x: LEFT - 6, y: y(km) + 4, 'text-anchor': 'end' }, String(km)),
  ]);
  const dots = points.map((p) => svg('circle', { class: 'dot', cx: x(p.year), cy: y(p.distanceKm), r: 2.2 }, svg('title', {}, `${p.square}: ${p.year}, ${Math.round(p.distanceKm)} km`)));
  const said = `${counted(points.length, 'square')} by year of first record and distance in kilometres from the origin`
    + (line === null ? '.' : `; the front moves ${speed(line.slope)} km a year.`);
  return svg('svg', { class: 'chart advance', viewBox: `0 0 ${WIDTH} ${HEIGHT}`, role: 'img', 'aria-label': said },
    ...kmTicks, ...yearTicks, svg('text', { class: 'unit', x: LEFT + 4, y: TOP + 6 }, 'km from the origin'), ...dots, frontLine());

  function frontLine(): SVGElement | null {
    if (line === null) return null;
    const { slope, intercept } = line;
    // The line is drawn only where the chart has room for it: years in which it lies between 0 and the farthest square.
    const yearAt = (km: number) => slope === 0 ? from : (km - intercept) / slope;
    const [low, high] = [yearAt(0), yearAt(farthest)].sort((a, b) => a - b) as [number, number];
    const start = slope === 0 ? from : Math.max(from, low), end = slope === 0 ? to : Math.min(to, high);
    return start > end ? null : svg('line', { class: 'front', x1: x(start), y1: y(intercept + slope * start), x2: x(end), y2: y(intercept + slope * end) });
  }
}
