// Visits to a square by year, a bar a year.
import { svg } from '../elements.ts';
import { counted } from '../words.ts';
import { scale, ticks } from './scale.ts';

const WIDTH = 380, HEIGHT = 96, LEFT = 30, RIGHT = 6, TOP = 6, BOTTOM = 22;

export function visitBars(visits: { year: number; visits: number }[]): SVGSVGElement {
  const [first, last] = [visits[0]!.year, visits.at(-1)!.year];
  const most = Math.max(...visits.map((v) => v.visits));
  const x = scale([first, last + 1], [LEFT, WIDTH - RIGHT]), y = scale([0, most], [HEIGHT - BOTTOM, TOP]);
  const width = Math.max(1, x(first + 1) - x(first) - 1.5);
  const said = `Visits by year, ${first} to ${last}: ${counted(visits.reduce((sum, v) => sum + v.visits, 0), 'visit')}, at most ${most} in a year.`;
  const level = (v: number) => [svg('line', { class: 'rule', x1: LEFT, x2: WIDTH - RIGHT, y1: y(v), y2: y(v) }), svg('text', { x: LEFT - 5, y: y(v) + 4, 'text-anchor': 'end' }, String(v))];
  const named = last - first < 4 ? visits.map((v) => v.year) : ticks(first, last, 5).filter(Number.isInteger);
  return svg('svg', { class: 'chart visits', viewBox: `0 0 ${WIDTH} ${HEIGHT}`, role: 'img', 'aria-label': said },
    ...level(0), ...level(most),
    ...visits.filter((v) => v.visits > 0).map((v) => svg('rect', { class: 'bar', x: x(v.year), width: Math.min(width, 24), y: y(v.visits), height: y(0) - y(v.visits) }, svg('title', {}, `${v.year}: ${counted(v.visits, 'visit')}`))),
    ...named.map((year) => svg('text', { x: x(year) + Math.min(width, 24) / 2, y: HEIGHT - 6, 'text-anchor': 'middle' }, String(year))));
}
