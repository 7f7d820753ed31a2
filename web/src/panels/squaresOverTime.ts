// How many squares came when: bars of new squares, and the growing number beside them in a table.
import type { Spread } from '../api.ts';
import { yearBars } from '../charts/yearBars.ts';
import { el } from '../elements.ts';
import { tableTwin } from '../table.ts';
import { count, counted } from '../words.ts';

export interface YearOfSpread { year: number; fresh: number; sofar: number; farthestKm: number | null }

/** Every year from the first to the last, those without a new square too. */
export function byYear(points: Spread['points']): YearOfSpread[] {
  const years = points.map((p) => p.year);
  const first = Math.min(...years);
  let sofar = 0;
  return Array.from({ length: Math.max(...years) - first + 1 }, (_, i) => {
    const here = points.filter((p) => p.year === first + i);
    sofar += here.length;
    return { year: first + i, fresh: here.length, sofar, farthestKm: here.length === 0 ? null : Math.max(...here.map((p) => p.distanceKm)) };
  });
}

export function squaresOverTime(points: Spread['points']): Node[] {
  const years = byYear(points);
  const [first, last] = [years[0]!, years.at(-1)!];
  const most = years.reduce((a, b) => b.fresh > a.fresh ? b : a);
  return [
    el('h4', {}, 'New squares by year'),
    yearBars(years.map(({ year, fresh }) => ({ year, count: fresh })), {
      kind: 'new-squares', words: (n) => counted(n, 'new square'),
      said: `New squares by year, ${first.year} to ${last.year}: ${counted(last.sofar, 'square')} in all, most in ${most.year} (${count(most.fresh)}).`,
    }),
    tableTwin(['Year', 'New squares', 'Squares so far', 'Farthest new one, km'], years.map((y) => [String(y.year), count(y.fresh), count(y.sofar), y.farthestKm === null ? '–' : count(Math.round(y.farthestKm))]), 'The advance year by year as a table'),
  ];
}
