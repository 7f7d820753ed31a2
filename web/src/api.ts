// The only place that fetches. Types mirror the server's answers under /api/v1.
import type { Mark, Marks } from './desk/answers.ts';
import type { Quality, Size, ViewState } from './state.ts';

export interface TaxonLine {
  id: string;
  scientificName: string;
  vernacularName: string | null;
  rank: string | null;
  group: string | null;
  records: number;
  firstYear: number | null;
  lastYear: number | null;
  sensitive: boolean;
}

/** The first of the taxa found, and how many there are in all. */
export interface TaxaFound { taxa: TaxonLine[]; found: number }

export interface Taxon extends TaxonLine {
  aggregate: string | null;
  members: string[];
  notes: { marks?: string | null; season?: string | null } | null;
  grids: string[];
}

export interface Omitted { tooCoarse: number; betweenPeriods: number; belowQuality: number }

/** Properties of a square, in tiles and in GeoJSON alike; `period` and `latest` count from 0 in the periods asked. */
export interface SquareProperties {
  square: string; grid: string; first: number; last: number; records: number; period: number; latest: number;
  /** Records in each period asked, left out where there are none. */
  [recordsIn: `p${number}`]: number | undefined;
}

export interface Presence {
  features: { properties: SquareProperties }[];
  omitted: Omitted;
  periods: string[];
  edition: string | null;
}

/** Arrivals by the arrival model; refused says what is missing where there are none. */
export interface Modelled { refused?: string; features: { properties: ModelledSquare }[] }
/** Speed in km a year and bearing in degrees clockwise from grid north, null where they cannot be measured. */
export interface ModelledSquare { square: string; kmPerYear: number | null; kmPerYearLow: number | null; kmPerYearHigh: number | null; bearing: number | null }

export interface Arrivals { features: { properties: { square: string; grid: string; year: number } }[] }

export interface Estimator {
  method: string;
  label: string | null;
  kmPerYear: number | null;
  low: number | null;
  high: number | null;
  n: number;
  note: string | null;
  refused: string | null;
}

export interface Phase { from: number; to: number; kmPerYear: number; low: number; high: number; movement: string }

/** A square found far ahead of the front, which is measured without it and what spread from it. */
export interface Jump { square: string | null; easting: number; northing: number; year: number; kmAhead: number; kmFromNearest: number; squares: number }

export interface Sector { bearing: number; kmPerYear: number | null; low: number | null; high: number | null; n: number }

export interface Spread {
  taxon: string;
  squares: number;
  firstYear: number | null;
  lastYear: number | null;
  origin: { square: string; easting: number; northing: number; how: string } | null;
  estimators: Estimator[];
  sectors: Sector[];
  phases: Phase[];
  jumps: Jump[];
  originRange: { squares: number; low: number; high: number } | null;
  summary: string | null;
  points: { square: string; year: number; distanceKm: number }[];
  line: { slope: number; intercept: number } | null;
}

/** One measure of change between two periods: numbers with their interval, or the reason why there are none. 0 means no change. */
export interface ChangeEstimate {
  method: string;
  label: string;
  unit: string;
  value: number | null;
  low: number | null;
  high: number | null;
  before: number | null;
  after: number | null;
  n: number;
  note: string | null;
  refused: string | null;
}

export interface PeriodEffort { period: string; visits: number; recorders: number; records: number; squares: number; wellSurveyed: number; meanListLength: number | null }

export interface Change {
  from: string;
  to: string;
  grid: string;
  effort: { group: string | null; visitRatio: number | null; periods: PeriodEffort[] }[];
  taxa: ChangeEstimate[];
  verdicts: { taxon: string; words: string | null }[];
}

/** All species of a group by one method, the most striking first. */
export interface Screening {
  group: string | null;
  method: string;
  label: string;
  caution: string;
  taxa: { taxon: string; p: number | null; adjusted: number; standsOut: boolean }[];
}

export interface ChangeOfAll extends Omit<Change, 'taxa'> {
  taxa: (ChangeEstimate & { taxon: string; scientificName: string })[];
  screenings: Screening[];
}

/** What became of a square between two periods. */
export const FATES = ['gained', 'lost', 'kept', 'not-surveyed-before', 'not-surveyed-after'] as const;
export type Fate = (typeof FATES)[number];
export interface Fates { features: { properties: { square: string; grid: string; change: Fate } }[]; from: string; to: string }

/** Where recorders of a group looked in two periods. */
export interface Effort { features: { properties: EffortSquare }[]; group: string | null; from: string; to: string }
export interface EffortSquare { square: string; visitsBefore: number; visitsAfter: number; wellSurveyedAfter: boolean }

/** Lines of the front with the areas in which they may run. */
export interface Fronts { features: FrontFeature[]; now: number }
export interface FrontFeature {
  geometry: { type: 'MultiLineString'; coordinates: [number, number][][] } | { type: 'MultiPolygon'; coordinates: [number, number][][][] };
  properties: { kind: 'front' | 'band'; year: number; foretold: boolean };
}

/** Chances of squares where the species was never found. */
/** refused says what is missing where there are none. */
export interface Foretold { refused?: string; features: { properties: ForetoldSquare }[]; now: number; year: number }
export interface ForetoldSquare { square: string; now: number; byYear: number; search: number | null }

export interface PastForecast { cut: number; horizon: number; brier: number | null; log: number | null; skill: number | null; skillAgainstNeighbours: number | null; skillAgainstDistance: number | null; auc: number | null; slope: number | null; n: number; refused: string | null }

/** Why there is no forecast. */
export interface NoForecast { refused: string }

export interface Forecast {
  refused?: undefined;
  now: number;
  year: number;
  expectedSquares: number;
  low: number;
  high: number;
  speed: { kmPerYear: number; low: number; high: number; n: number } | null;
  /** By decade of arrival and by region. */
  speeds: { kind: 'decade' | 'region'; name: string; kmPerYear: number; low: number; high: number; n: number }[];
  search: { square: string; probability: number; find: number; visits: number; why: string }[];
  ahead: { square: string; arrives: number; there: number }[];
  weeks: number[];
  caution: string;
  hindcast: PastForecast[];
}

export interface SquarePage {
  square: string;
  grid: string;
  size: string;
  latitude: number;
  longitude: number;
  /** An aggregate one of whose members is listed too stands for others and is no further species. */
  taxa: { id: string; scientificName: string; vernacularName: string | null; records: number; firstYear: number; lastYear: number; standsForOthers: boolean }[];
  records: number;
  visits: number;
  /** First of the last five years of the data, and the taxa found in these alone. */
  newSince: number;
  newLately: string[];
  /** The last ten years of the data; 0 without records. */
  since: number;
  until: number;
  visitsByYear: { year: number; visits: number }[];
  completeness: Completeness[];
  expected: ExpectedSpecies[];
  supports: {
    perPeriod: { period: string; records: number; confirmed: number; firstYear: number | null; lastYear: number | null }[];
    finerSquares: { square: string; records: number; firstYear: number; lastYear: number }[];
    note: string | null;
  } | null;
  around: { square: string; species: number }[];
}

/** What became of the species of a square between two periods. */
export interface SquareChange {
  square: string;
  from: string;
  to: string;
  visits: { group: string | null; before: number; after: number }[];
  taxa: { id: string; scientificName: string; vernacularName: string | null; group: string | null; change: Fate; before: number; after: number }[];
}

/** How well a group is known in a square; the estimate and its interval stand together, or the reason why they do not. */
export interface Completeness {
  group: string | null;
  visits: number;
  species: number;
  estimate: number | null;
  low: number | null;
  high: number | null;
  refused: string | null;
  coverage: number;
  wellSurveyed: boolean;
}

/** A species never found in a square that probably lives there. */
export interface ExpectedSpecies { id: string; scientificName: string; vernacularName: string | null; probability: number; why: string }

/** Records of each ISO week, 1 to 53, of one stage; null where none is stated. */
export interface StageWeeks { stage: string | null; records: number; weeks: number[] }
export interface SeasonPeriod { period: string; records: number; stages: StageWeeks[]; plants: { plant: string; records: number }[] }

/** When a species is about and on which plants; what the list expects, and how to tell it. */
export interface Season {
  scientificName: string;
  periods: SeasonPeriod[];
  leftOut: { tooVague: number; betweenPeriods: number; belowQuality: number };
  expected: Mark[];
  marks: Marks | null;
}

export interface Place { name: string; where: string; square: string | null; latitude: number; longitude: number }

/** Rows and bytes that an export would have; the rows at most so many where they are not counted. */
export interface ExportSize { rows: number; atMost: boolean; bytes: number }

export interface Editions { editions: { id: string; citation: string }[] }

export interface About { name: string; demo: boolean; notice: string | null; citation: string }

/** What the server said went wrong (RFC 9457), in words for a person. */
export class Problem extends Error {
  constructor(readonly title: string, readonly detail: string, readonly status: number) {
    super(`${title}${/[.!?]$/.test(title) ? '' : '.'} ${detail}`);
  }
}

export interface MapQuestion { taxon: string; size: Size; periods: readonly string[]; quality: Quality }

export const ROOT = '/api/v1';
const part = encodeURIComponent;

/** The parameters of a map, as tiles and tables of it take them alike. */
export function mapParameters({ size, periods, quality }: Omit<MapQuestion, 'taxon'>): string {
  return `grid=${size}&periods=${periods.map(part).join(',')}&quality=${quality}`;
}

export const tileAddress = (q: MapQuestion) => `${ROOT}/taxa/${part(q.taxon)}/tiles/BritishNationalGrid/{z}/{y}/{x}?${mapParameters(q)}`;
export const tableAddress = (q: MapQuestion, format: string) => `${ROOT}/taxa/${part(q.taxon)}/presence?${mapParameters(q)}&format=${format}`;

export interface ChangeQuestion { taxon: string; size: Size; quality: Quality; from: string; to: string }

export const changeAddress = ({ taxon, size, quality, from, to }: ChangeQuestion, format: string) =>
  `/taxa/${part(taxon)}/change?grid=${size}&quality=${quality}&from=${part(from)}&to=${part(to)}&format=${format}`;

export const changeOfAllAddress = ({ size, quality, from, to }: Omit<ChangeQuestion, 'taxon'>, format: string) =>
  `/change?grid=${size}&quality=${quality}&from=${part(from)}&to=${part(to)}&format=${format}`;

export const effortAddress = ({ grid, from, to }: Pick<Change, 'grid' | 'from' | 'to'>, group: string | null) =>
  `/effort?grid=${grid}&from=${part(from)}&to=${part(to)}${group === null ? '' : `&group=${part(group)}`}`;

export const effortOfTaxonAddress = ({ taxon, size, from, to }: ChangeQuestion) => `/effort?grid=${size}&from=${part(from)}&to=${part(to)}&taxon=${part(taxon)}`;

export const forecastAddress = (taxon: string, size: Size, format: 'json' | 'geojson' | 'html' | 'gpx') => `/taxa/${part(taxon)}/forecast?grid=${size}&format=${format}`;

export const fieldListAddress = (square: string, quality: Quality) => `/squares/${part(square)}/list.html?quality=${quality}`;

export const exportAddress = ({ taxon, size, quality }: Omit<MapQuestion, 'periods'>, format: string) => `/exports/presence?taxon=${part(taxon)}&grid=${size}&quality=${quality}&format=${format}`;

/** The map as shown, on paper; what has no printed form gives the squares by period. Null for a change without two periods. */
export function printAddress({ taxon, size, periods, quality, mode }: ViewState, twoPeriods: ChangeQuestion | null, format: string): string | null {
  if (taxon === null || (mode === 'change' && twoPeriods === null)) return null;
  const of = `/taxa/${part(taxon)}/map.${format}?grid=${size}&quality=${quality}`;
  if (mode === 'change') return `${of}&kind=change&from=${part(twoPeriods!.from)}&to=${part(twoPeriods!.to)}`;
  return mode === 'arrival' ? `${of}&kind=arrivals` : `${of}&periods=${periods.map(part).join(',')}`;
}

export const styleAddress = (q: MapQuestion & Pick<ViewState, 'mode'>) => `/taxa/${part(q.taxon)}/style.json?${mapParameters(q)}${q.mode === 'arrival' ? '&kind=arrivals' : ''}`;

export const newSquaresAddress = ({ taxon, size, quality }: Omit<MapQuestion, 'periods'>) => `/taxa/${part(taxon)}/new-squares.atom?grid=${size}&quality=${quality}`;

export const frontsAddress = (taxon: string, size: Size, years?: string) => `/taxa/${part(taxon)}/fronts?grid=${size}${years === undefined ? '' : `&years=${years}`}`;

export const api = {
  about: (signal?: AbortSignal) => get<About>('/about', signal),
  taxa: (text: string, limit: number, signal?: AbortSignal) => get<TaxaFound>(`/taxa?q=${part(text)}&limit=${limit}`, signal),
  taxon: (id: string, signal?: AbortSignal) => get<Taxon>(`/taxa/${part(id)}`, signal),
  season: (id: string, periods: readonly string[], quality: Quality, signal?: AbortSignal) =>
    get<Season>(`/taxa/${part(id)}/season?periods=${periods.map(part).join(',')}&quality=${quality}`, signal),
  presence: (q: MapQuestion, signal?: AbortSignal) => get<Presence>(`/taxa/${part(q.taxon)}/presence?${mapParameters(q)}`, signal),
  arrivals: (id: string, size: Size, quality: Quality, signal?: AbortSignal) =>
    get<Arrivals>(`/taxa/${part(id)}/arrivals?grid=${size}&quality=${quality}`, signal),
  modelled: (id: string, size: Size, signal?: AbortSignal) => get<Modelled>(`/taxa/${part(id)}/arrivals?grid=${size}&model=true`, signal),
  spread: (id: string, size: Size, signal?: AbortSignal) => get<Spread>(`/taxa/${part(id)}/spread?grid=${size}`, signal),
  change: (q: ChangeQuestion, signal?: AbortSignal) => get<Change>(changeAddress(q, 'json'), signal),
  changeOfAll: (q: ChangeQuestion, signal?: AbortSignal) => get<ChangeOfAll>(changeOfAllAddress(q, 'json'), signal),
  fates: (q: ChangeQuestion, signal?: AbortSignal) => get<Fates>(changeAddress(q, 'geojson'), signal),
  forecast: (id: string, size: Size, signal?: AbortSignal) => get<Forecast | NoForecast>(forecastAddress(id, size, 'json'), signal),
  foretold: (id: string, size: Size, signal?: AbortSignal) => get<Foretold>(forecastAddress(id, size, 'geojson'), signal),
  fronts: (id: string, size: Size, years?: string, signal?: AbortSignal) => get<Fronts>(frontsAddress(id, size, years), signal),
  effort: (q: ChangeQuestion, signal?: AbortSignal) => get<Effort>(effortOfTaxonAddress(q), signal),
  places: (text: string, signal?: AbortSignal) => get<{ places: Place[] }>(`/places?q=${part(text)}`, signal),
  exportSize: (q: Omit<MapQuestion, 'periods'>, format: string, signal?: AbortSignal) => get<ExportSize>(`${exportAddress(q, format)}&count=true`, signal),
  editions: (signal?: AbortSignal) => get<Editions>('/editions', signal),
  squareChange: (name: string, from: string, to: string, quality: Quality, signal?: AbortSignal) =>
    get<SquareChange>(`/squares/${part(name)}/change?from=${part(from)}&to=${part(to)}&quality=${quality}`, signal),
  square: (name: string, taxon: string | null, periods: readonly string[], quality: Quality, signal?: AbortSignal) =>
    get<SquarePage>(`/squares/${part(name)}?periods=${periods.map(part).join(',')}&quality=${quality}${taxon === null ? '' : `&taxon=${part(taxon)}`}`, signal),
};

/** Towns for labels, largest first; none when they cannot be had, since a map without names is still a map. */
export async function readPlaces(): Promise<{ name: string; population: number; at: [number, number] }[]> {
  const answer = await fetch('/gis/places.json').catch(() => null);
  return answer?.ok ? await answer.json() as Awaited<ReturnType<typeof readPlaces>> : [];
}

async function get<T>(path: string, signal?: AbortSignal): Promise<T> {
  let answer: Response;
  try {
    answer = await fetch(ROOT + path, { headers: { Accept: 'application/json' }, signal: signal ?? null });
  } catch (error) {
    if (signal?.aborted) throw error;
    throw noAnswer();
  }
  if (!answer.ok) throw await readProblem(answer);
  return await answer.json() as T;
}

/** Nothing came back: the server stopped, or the way to it is cut. */
export const noAnswer = () => new Problem('The server does not answer.', 'Check the connection, then try again.', 0);

export async function readProblem(answer: Response): Promise<Problem> {
  const said = await answer.json().catch(() => ({})) as { title?: string; detail?: string };
  return new Problem(said.title ?? `The server answered ${answer.status}.`, said.detail ?? 'It gave no reason.', answer.status);
}
