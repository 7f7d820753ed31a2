// Distance from the origin against the year of the first record, one dot a square, with the line of the front.
import type { Spread } from '../api.ts';
import { counted, speed } from '../words.ts';
import { chart } from './chart.ts';
import { yearTicks } from './ticks.ts';

type Point = Spread['points'][number];

export function advanceChart({ points, line: front }: Spread): HTMLElement {
  const years = points.map((p) => p.year);
  const [from, to] = [Math.min(...years), Math.max(...years)];
  const farthest = Math.max(1, ...points.map((p) => p.distanceKm));
  const said = `${counted(points.length, 'square')} by year of first record and distance in kilometres from the origin`
    + (front === null ? '.' : `; the front moves ${speed(front.slope)} km a year.`);
  return chart({ kind: 'advance', said, height: 230 }, ({ axisX, axisY, dot, gridY, line, ruleY }) => ({
    marginLeft: 40, marginRight: 18, marginTop: 20, marginBottom: 24,
    x: { domain: [from, to] },
    y: { domain: [0, farthest] },
    marks: [
      gridY({ ticks: 4, className: 'rule' }), axisY({ ticks: 4, tickSize: 0, label: 'km from the origin', labelArrow: 'none' }), axisX({ ticks: yearTicks(from, to), tickSize: 0, label: null, tickFormat: 'd' }), ruleY([0], { className: 'rule' }),
      dot(points, { x: 'year', y: 'distanceKm', r: 2.2, className: 'dot', title: (p: Point) => `${p.square}: ${p.year}, ${Math.round(p.distanceKm)} km` }),
      line(front === null ? [] : [from, to].map((year) => ({ year, km: front.intercept + front.slope * year })), { x: 'year', y: 'km', className: 'front', clip: true }),
    ],
  }));
}
