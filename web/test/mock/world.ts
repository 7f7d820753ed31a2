// An invented world for tests and for work on the viewer without a server: three made-up species on the squares of the south of Britain and of Ireland.
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { SquareProperties, Taxon } from '../../src/api.ts';
import { readSquare, type GridSquare } from '../../src/squares/names.ts';
import { onMap } from '../../src/squares/planes.ts';

export interface Occupied { name: string; square: GridSquare; years: number[]; distanceKm: number }

const LAND = join(dirname(fileURLToPath(import.meta.url)), '../../../gis-data/squares/land-squares.csv');

export const TAXA: Taxon[] = [
  { ...taxon('T1', 'Exemplum viatorium', 'Wandering examplebee', ['worker 16-44; queen 9-42'], 'White tail, ginger thorax (invented)'), aggregate: 'TA' },
  { ...taxon('T2', 'Exemplum sedentarium', 'Settled examplebee', [], null), aggregate: 'TA' },
  taxon('T3', 'Exemplum rarissimum', null, [], null),
  { ...taxon('TA', 'Exemplum agg.', null, [], null), rank: 'aggregate', members: ['T1', 'T2'] },
];

function taxon(id: string, scientificName: string, vernacularName: string | null, [season]: string[], marks: string | null): Taxon {
  return {
    id, scientificName, vernacularName, rank: 'species', group: 'Invented bees', records: 0, firstYear: 2001, lastYear: 2025, sensitive: id === 'T3',
    aggregate: null, members: [], notes: { ...(marks === null ? {} : { marks }), ...(season === undefined ? {} : { season }) }, grids: ['10km', '5km', '2km', '1km'],
  };
}

/** A seeded generator of numbers in [0, 1): mulberry32, public domain. */
function seeded(seed: number): () => number {
  return () => {
    seed = (seed + 0x6d2b79f5) | 0;
    let t = Math.imul(seed ^ (seed >>> 15), 1 | seed);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** The first species advances from the south coast at 17 km a year; the second is everywhere in the south-east; the third in one square. */
export function occupied(id: string): Occupied[] {
  if (id === 'TA') return occupied('T2');
  const next = seeded(7);
  const squares = readFileSync(LAND, 'utf8').trim().split('\n').slice(1).map((line) => line.split(',')[1]!);
  return squares.flatMap((name) => {
    const square = readSquare(name)!;
    const [e, n] = onMap(square.grid, [square.easting + 5_000, square.northing + 5_000]);
    const distanceKm = Math.hypot(e - 430_000, n - 110_000) / 1000;
    const years = yearsFor(id, name, distanceKm, next);
    return years.length === 0 ? [] : [{ name, square, years, distanceKm }];
  });
}

function yearsFor(id: string, name: string, distanceKm: number, next: () => number): number[] {
  const chance = next(), late = Math.floor(next() * 6);
  if (id === 'T3') return name === 'TL45' ? [2003] : [];
  const first = id === 'T1' ? 2001 + Math.floor(distanceKm / 17) + late : 1985 + late * 4;
  if (first > 2025 || chance > (id === 'T1' ? 0.8 : 0.7) || (id === 'T2' && distanceKm > 260)) return [];
  return Array.from({ length: 2026 - first }, (_, i) => first + i).filter((year, i) => i === 0 || (next() < 0.3 && (id === 'T1' || year < 2012)));
}

/** Reads the years of a period such as 2000/2009; open ends reach everything. */
export function yearsOf(period: string): [number, number] {
  const [from, to] = period.split('/');
  return [from === '..' ? -Infinity : Number(from!.slice(0, 4)), to === '..' ? Infinity : Number((to ?? from!).slice(0, 4))];
}

/** What a tile or a GeoJSON feature says of a square; null when no record falls into a period. */
export function propertiesOf({ name, square, years }: Occupied, periods: string[]): (SquareProperties & Record<string, string | number>) | null {
  const counts = periods.map((p) => { const [a, b] = yearsOf(p); return years.filter((y) => y >= a && y <= b).length; });
  const held = years.filter((y) => periods.some((p) => { const [a, b] = yearsOf(p); return y >= a && y <= b; }));
  if (held.length === 0) return null;
  return {
    square: name, grid: square.grid, first: held[0]!, last: held.at(-1)!, records: held.length,
    period: counts.findIndex((c) => c > 0), latest: counts.findLastIndex((c) => c > 0), ...Object.fromEntries(counts.map((c, i) => [`p${i}`, c])),
  };
}
