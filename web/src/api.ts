// The only place that fetches as anyone. The answers' types are made from the server's description of itself (web/api/openapi.json).
import type * as answers from './generated/api.ts';
import type { Quality, Size, ViewState } from './state.ts';

/** A map as it is read beside its tiles, which bring the outlines. */
type WithoutOutlines<M extends { features: { properties: unknown }[] }> = Omit<M, 'features'> & { features: Pick<M['features'][number], 'properties'>[] };

export type TaxonLine = answers.TaxonJson;
/** The first of the taxa found, and how many there are in all. */
export type TaxaFound = answers.TaxaJson;
export type Taxon = answers.TaxonDetailJson;
export type Omitted = answers.OmittedShape;

/** Properties of a square, in tiles and in GeoJSON alike; `period` and `latest` count from 0 in the periods asked. */
export type SquareProperties = Pick<answers.PresenceSquareShape, 'square' | 'grid' | 'first' | 'last' | 'records' | 'period' | 'latest'> & {
  /** Records in each period asked, left out where there are none. */
  [recordsIn: `p${number}`]: number | undefined;
};
export type Presence = Omit<answers.PresenceShape, 'features'> & { features: { properties: SquareProperties }[] };
export type Arrivals = WithoutOutlines<answers.ArrivalsShape>;

/** Arrivals by the arrival model; `refused` says what is missing where there are none. */
export type Modelled = WithoutOutlines<answers.ModelledArrivalsShape>;
export type ModelledSquare = answers.ModelledSquareShape;

/** Only the spread of a plain table, which no route gives, has no chart. */
export type Spread = answers.SpreadJson & { points: answers.PointJson[] };
export type Estimator = answers.EstimateJson;
export type Phase = answers.PhaseJson;
export type Jump = answers.JumpJson;
export type Sector = answers.SectorJson;

/** One measure of change between two periods: numbers with their interval, or the reason why there are none. 0 means no change. */
export type ChangeEstimate = answers.ChangeEstimateJson;
export type PeriodEffort = answers.PeriodEffortJson;
export type Change = answers.ChangeJson;
export type Screening = answers.ScreeningJson;
export type ChangeOfAll = answers.ChangeJson;

/** What became of a square between two periods. */
export const FATES = ['gained', 'lost', 'kept', 'not-surveyed-before', 'not-surveyed-after'] as const satisfies readonly Fate[];
export type Fate = answers.FateShape['change'];
export type Fates = WithoutOutlines<answers.FatesShape>;

/** Where recorders of a group looked in two periods. */
export type Effort = WithoutOutlines<answers.EffortShape>;
export type EffortSquare = answers.EffortSquareShape;

/** Lines of the front with the areas in which they may run. */
export type Fronts = answers.FrontsShape;
export type FrontFeature = answers.FrontFeature;

/** Chances of squares where the species was never found; `refused` says what is missing where there are none. */
export type Foretold = WithoutOutlines<answers.ForetoldShape>;
export type ForetoldSquare = answers.ForetoldSquareShape;

export type PastForecast = answers.HindcastJson;
/** Why there is no forecast. */
export type NoForecast = answers.RefusedJson;
export type Forecast = answers.ForecastJson & { refused?: undefined };

/** What became of the species of a square between two periods. */
export type SquareChange = answers.SquareChangeJson;
export type SquarePage = answers.SquareJson;
/** How well a group is known in a square; the estimate and its interval stand together, or the reason why they do not. */
export type Completeness = answers.CompletenessJson;
/** A species never found in a square that probably lives there. */
export type ExpectedSpecies = answers.ExpectedJson;

export type Season = answers.SeasonJson;
export type SeasonPeriod = Season['periods'][number];
export type StageWeeks = SeasonPeriod['stages'][number];


export type Place = answers.PlaceJson;
/** Rows and bytes that an export would have; the rows at most so many where they are not counted. */
export type ExportSize = answers.ExportSize;
export type Editions = answers.EditionListJson;
export type About = answers.AboutJson;

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
  taxa: (text: string, limit: number, signal?: AbortSignal) => get<answers.TaxaJson>(`/taxa?q=${part(text)}&limit=${limit}`, signal),
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
  places: (text: string, signal?: AbortSignal) => get<answers.PlacesJson>(`/places?q=${part(text)}`, signal),
  exportSize: (q: Omit<MapQuestion, 'periods'>, format: string, signal?: AbortSignal) => get<ExportSize>(`${exportAddress(q, format)}&count=true`, signal),
  editions: (signal?: AbortSignal) => get<Editions>('/editions', signal),
  squareChange: (name: string, from: string, to: string, quality: Quality, signal?: AbortSignal) =>
    get<SquareChange>(`/squares/${part(name)}/change?from=${part(from)}&to=${part(to)}&quality=${quality}`, signal),
  groups: (signal?: AbortSignal) => get<answers.GroupListJson>('/groups', signal),
  regions: (signal?: AbortSignal) => get<answers.RegionListJson>('/regions', signal),
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
