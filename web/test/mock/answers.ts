// The answers of the invented server, in the shapes of the real one.
import type { About, Forecast, Modelled, Place, Season, SquareChange, SquarePage, Spread } from '../../src/api.ts';
import { occupied, propertiesOf, TAXA, yearsOf, type Occupied } from './world.ts';

const withCounts = (id: string) => {
  const squares = occupied(id);
  const years = squares.flatMap((s) => s.years);
  return { ...TAXA.find((t) => t.id === id)!, records: years.length, firstYear: Math.min(...years), lastYear: Math.max(...years) };
};

export const about = (): About => ({
  name: 'Invented scheme', demo: true, notice: 'All records are invented.', edition: 1, updated: '2026-01-01T00:00:00Z', credits: [],
  citation: 'Invented scheme, live state 1; not frozen, so that it cannot be asked for again.',
  periods: [{ name: 'before 2000', period: '../1999' }, { name: '2000–2009', period: '2000/2009' }, { name: 'since 2010', period: '2010/..' }],
});

export const places = (q: string): { places: Place[] } => ({
  places: 'london'.startsWith(q.toLowerCase()) ? [{ name: 'London', where: 'GB', square: 'TQ38', latitude: 51.508, longitude: -0.126 }] : [],
});

export function taxa(q: string): object {
  const found = TAXA.filter((t) => `${t.scientificName} ${t.vernacularName ?? ''}`.toLowerCase().includes(q.toLowerCase()));
  return { taxa: found.map((t) => withCounts(t.id)), found: found.length };
}

export const taxon = (id: string): object | null => TAXA.some((t) => t.id === id) ? withCounts(id) : null;

export function presence(id: string, periods: string[]): object {
  const features = occupied(id).flatMap((o) => propertiesOf(o, periods) ?? []).map((properties) => ({ type: 'Feature', properties, geometry: null }));
  return { type: 'FeatureCollection', features, omitted: { tooCoarse: 14, betweenPeriods: 3, belowQuality: 0 }, periods, edition: 'invented' };
}

export function arrivals(id: string): object {
  const feature = (o: Occupied) => ({ type: 'Feature', geometry: null, properties: { square: o.name, grid: o.square.grid, year: o.years[0] } });
  return { type: 'FeatureCollection', features: occupied(id).map(feature) };
}

export function spread(id: string): Spread {
  const squares = occupied(id);
  const points = squares.map((o) => ({ square: o.name, year: o.years[0]!, distanceKm: o.distanceKm }));
  const few = 'Not enough squares: 1 of at least 10.';
  const estimator = (method: string, label: string, kmPerYear: number, low: number, high: number) =>
    ({ method, label, kmPerYear, low, high, n: points.length, firstYear: 2001, lastYear: 2025, note: null, refused: null });
  const base = { taxon: id, grid: '10km', unit: 'year', squares: squares.length, firstYear: 2001, lastYear: 2025 };
  if (squares.length < 10) {
    return { ...base, origin: null, sectors: [], phases: [], jumps: [], originRange: null, summary: 'Too few squares to measure a speed.', points, line: null,
      estimators: [{ method: 'front-quantile', label: 'Front (90% quantile)', kmPerYear: null, low: null, high: null, n: squares.length, firstYear: null, lastYear: null, note: null, refused: few }] };
  }
  return {
    ...base,
    origin: { square: 'SU31', easting: 430_000, northing: 110_000, how: 'the earliest squares' },
    estimators: [
      estimator('front-quantile', 'Front (90% quantile)', 16.8, 15.9, 17.6), estimator('interval-censored', 'Arrival dates as intervals', 17.2, 16.1, 18.4),
      estimator('all-points', 'All squares', 14.1, 13.5, 14.8), estimator('root-area', 'Root of the area', 9.4, 8.8, 10.1),
      { method: 'gamma-margin', label: 'Northern margin', kmPerYear: null, low: null, high: null, n: 12, firstYear: null, lastYear: null, note: null, refused: 'Not enough periods: 2 of at least 3.' },
    ],
    phases: [], jumps: [{ square: 'NY46', easting: 345_000, northing: 565_000, year: 2014, kmAhead: 143.2, kmFromNearest: 121, squares: 3 }], originRange: { squares: 4, low: 16.1, high: 17.3 },
    sectors: [0, 45, 90, 135, 180, 225, 270, 315].map((bearing, i) => ({ bearing, kmPerYear: i === 4 ? null : 17 - i, low: i === 4 ? null : 15 - i, high: i === 4 ? null : 19 - i, n: i === 4 ? 3 : 60 - 5 * i, farthestKm: null, refused: i === 4 ? 'Not enough squares: 3 of at least 10.' : null })),
    summary: 'The front moved about 17 km a year between 2001 and 2025, fastest towards the north.',
    points,
    line: { slope: 16.8, intercept: -33_570 },
  };
}

export function square(ref: string, id: string | null, periods: string[]): SquarePage {
  const here = TAXA.flatMap((t) => occupied(t.id).filter((o) => o.name === ref).map((o) => ({ t, years: o.years })));
  const chosen = here.find((h) => h.t.id === id);
  const perPeriod = periods.map((period) => {
    const [a, b] = yearsOf(period);
    const held = (chosen?.years ?? []).filter((y) => y >= a && y <= b);
    return { period, records: held.length, confirmed: Math.floor(held.length / 2), visits: 9, firstYear: held[0] ?? 0, lastYear: held.at(-1) ?? 0 };
  });
  return {
    square: ref, grid: 'GB', size: '10km', latitude: 52.2, longitude: -0.12,
    taxa: here.map(({ t, years }) => ({ id: t.id, scientificName: t.scientificName, vernacularName: t.vernacularName, records: years.length, confirmed: 0, firstYear: years[0]!, lastYear: years.at(-1)!, standsForOthers: false })),
    records: here.reduce((sum, h) => sum + h.years.length, 0), visits: here.length * 9, completeVisits: here.length,
    supports: id === null ? null : { taxon: id, perPeriod, finerSquares: chosen === undefined ? [] : [{ square: `${ref}K`, size: '2km', records: 2, firstYear: 2010, lastYear: 2019 }], note: null },
    newSince: 2021, since: 2016, until: 2025, newLately: here.filter(({ years }) => years[0]! >= 2021).map(({ t }) => t.id),
    visitsByYear: [2018, 2019, 2020, 2021, 2022].map((year, i) => ({ year, visits: 3 * i, complete: i })),
    completeness: [{ group: 'invented bees', visits: 30, species: 12, estimate: 14.2, low: 12.4, high: 21.9, refused: null, coverage: 0.93, wellSurveyed: true }],
    expected: [{ id: 'T2', scientificName: 'Exempla altera', vernacularName: null, group: 'Invented bees', neighboursWith: 5, neighboursSearched: 8, visits: 0, probability: 0.62, why: 'Found since 2016 in 5 of the 8 squares round it that were searched; nobody looked here in that time.' }],
    neighbours: ['TL35', 'TL55', 'TL44', 'TL46'],
    around: [{ square: 'TL35', species: 9 }, { square: 'TL55', species: 11 }, { square: 'TL44', species: 0 }, { square: 'TL46', species: 7 }],
  };
}

/** Weeks with records, counted from 1, as the 53 counts of a year. */
const weeksOf = (counts: Record<number, number>) => Array.from({ length: 53 }, (_, i) => counts[i + 1] ?? 0);

export function season(id: string): Season {
  return {
    taxon: id, scientificName: TAXA.find((t) => t.id === id)!.scientificName, quality: 'open', leftOut: { tooVague: 5, betweenPeriods: 0, belowQuality: 0 },
    periods: [{
      period: '../..', records: 60, plants: [{ plant: 'Invented thyme', records: 20 }, { plant: 'Invented sage', records: 11 }],
      stages: [{ stage: 'worker', records: 40, weeks: weeksOf({ 20: 8, 21: 20, 22: 9, 23: 3 }) }, { stage: 'queen', records: 15, weeks: weeksOf({ 12: 10, 14: 5 }) }, { stage: 'male', records: 0, weeks: weeksOf({}) }],
    }],
    expected: [{ stage: 'worker', words: '16-44' }, { stage: 'queen', words: '9-42' }],
    marks: {
      marks: [{ stage: 'queen', words: 'white tail' }, { stage: 'worker', words: 'ginger thorax' }], evidence: [{ stage: null, words: 'a picture from above' }], aggregate: 'Exemplum agg.',
      confusedWith: [{ taxon: 'T2', scientificName: 'Exemplum sedentarium', vernacularName: 'Settled examplebee', marks: [{ stage: 'worker', words: 'black thorax' }] }],
    },
  };
}

export const forecast = (): Forecast => ({
  taxon: 'T1', grid: '10km', edition: 1, scatterYears: 2.1, now: 2024, year: 2025, expectedSquares: 31.4, low: 22, high: 42, speed: { kmPerYear: 16.9, low: 15.8, high: 18.1, n: 1200 },
  speeds: [{ kind: 'decade', name: '2010s', kmPerYear: 17.2, low: 16, high: 18.6, n: 610 }, { kind: 'region', name: 'England', kmPerYear: 16.4, low: 15.2, high: 17.9, n: 900 }],
  search: [{ square: 'TL45', probability: 0.71, find: 0.4, visits: 2, weeks: [20, 21], why: 'Probably there, and missed so far.' }], ahead: [{ square: 'NY46', arrives: 0.44, there: 0.2 }],
  weeks: [20, 21], caution: 'A forecast is no permission.',
  hindcast: [
    { cut: 2020, horizon: 2, brier: 0.041, log: 0.19, skill: 0.12, skillAgainstNeighbours: 0.03, skillAgainstDistance: 0.05, auc: 0.87, slope: 1.1, n: 480, happened: 37, refused: null },
    { cut: 2010, horizon: 2, brier: null, log: null, skill: null, skillAgainstNeighbours: null, skillAgainstDistance: null, auc: null, slope: null, n: 0, happened: 0, refused: 'Not enough squares: 4 of at least 20.' },
  ],
});

/** Arrows to the north, the local speed unknown in every third square. */
export const modelled = (id: string): Modelled => ({
  type: 'FeatureCollection', taxon: id, grid: '10km', edition: 'invented',
  features: occupied(id).map(({ name, years }, i) => ({ properties: {
    square: name, grid: 'osgb', year: years[0]!, surface: years[0]!, reached: years[0]!, reachedLow: years[0]! - 1, reachedHigh: years[0]!, there: 1,
    ...(i % 3 === 0
      ? { kmPerYear: null, kmPerYearLow: null, kmPerYearHigh: null, bearing: null }
      : { kmPerYear: 10 + i % 9, kmPerYearLow: 8, kmPerYearHigh: 21, bearing: (i % 5) * 10 }),
  } })),
});

export const squareChange = (square: string, from: string, to: string): SquareChange => ({
  square, grid: '10km', from, to,
  visits: [{ group: 'invented bees', before: 4, after: 9 }, { group: 'invented flies', before: 2, after: 0 }],
  taxa: [
    { id: 'T1', scientificName: 'Exemplum viatorium', vernacularName: 'Wandering examplebee', group: 'invented bees', change: 'gained', before: 0, after: 3 },
    { id: 'T2', scientificName: 'Exemplum sedentarium', vernacularName: 'Settled examplebee', group: 'invented bees', change: 'kept', before: 5, after: 2 },
    { id: 'T3', scientificName: 'Exemplum rarissimum', vernacularName: null, group: 'invented flies', change: 'not-surveyed-after', before: 1, after: 0 },
  ],
});
