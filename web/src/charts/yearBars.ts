// A count a year as bars: visits, new squares.
import { chart } from './chart.ts';
import { yearTicks } from './ticks.ts';

export interface YearCount { year: number; count: number }

export interface YearBars {
  /** Class of the chart. */
  kind: string;
  said: string;
  /** What a bar counts, for the title of each: "3 visits". */
  words(count: number): string;
}

export function yearBars(counts: YearCount[], { kind, said, words }: YearBars): HTMLElement {
  const years = counts.map((c) => c.year);
  const [first, last] = [Math.min(...years), Math.max(...years)];
  const most = Math.max(1, ...counts.map((c) => c.count));
  return chart({ kind, said, height: 104 }, ({ axisX, axisY, gridY, rectY, ruleY }) => ({
    marginLeft: 38, marginRight: 8, marginTop: 8, marginBottom: 22,
    x: { domain: [first - 0.5, last + 0.5] },
    y: { domain: [0, most] },
    marks: [
      gridY({ ticks: [0, most], className: 'rule' }), axisY({ ticks: [0, most], tickSize: 0, label: null, tickFormat: 'd' }), axisX({ ticks: last - first < 4 ? years : yearTicks(first, last), tickSize: 0, label: null, tickFormat: 'd' }),
      rectY(counts.filter((c) => c.count > 0), { x1: (c: YearCount) => c.year - 0.4, x2: (c: YearCount) => c.year + 0.4, y: 'count', className: 'bar', title: (c: YearCount) => `${c.year}: ${words(c.count)}` }),
      ruleY([0], { className: 'rule' }),
    ],
  }));
}
