// What a researcher asks for: one immutable value, and the address hash that carries it in a link.
import { oneOf, QUALITIES, readable, type Quality } from '../state.ts';

export const WHATS = ['presence', 'effort', 'records', 'fronts'] as const;
export const EXPORT_SIZES = ['100km', '10km', '5km', '2km', '1km', '100m'] as const;
export const FORMATS = ['csv', 'csvw', 'geojson', 'gpkg', 'parquet', 'dwca', 'pmtiles'] as const;

export type What = (typeof WHATS)[number];
export type ExportSquare = (typeof EXPORT_SIZES)[number];
export type Format = (typeof FORMATS)[number];

export interface ExportQuery {
  readonly what: What;
  /** Identifier of the species; null for all. */
  readonly taxon: string | null;
  readonly group: string | null;
  /** First and last year or day, as typed; null for open. */
  readonly from: string | null;
  readonly to: string | null;
  readonly size: ExportSquare;
  readonly quality: Quality;
  readonly region: string | null;
  /** Degrees: west,south,east,north. */
  readonly box: string | null;
  /** Frozen edition; null for the live state. */
  readonly edition: string | null;
  readonly format: Format;
  /** Records with sensitive species and people, for those who may see them. */
  readonly full: boolean;
}

export const START: ExportQuery = {
  what: 'presence', taxon: null, group: null, from: null, to: null, size: '10km', quality: 'usable', region: null, box: null, edition: null, format: 'csv', full: false,
};

/** Which choices count for what is asked; the others are kept for when they do. */
export function counts(query: Pick<ExportQuery, 'what' | 'format'>): Record<'group' | 'years' | 'size' | 'quality' | 'place' | 'box' | 'edition' | 'full', boolean> {
  const isTiles = query.format === 'pmtiles', isFronts = query.what === 'fronts', isRecords = query.what === 'records';
  return { group: !isFronts, years: true, size: !isRecords, quality: !isFronts && query.what !== 'effort', place: !isTiles && !isFronts, box: !isTiles, edition: !isFronts && !isRecords, full: isRecords };
}

const FORMATS_OF: Record<What, readonly Format[]> = {
  presence: ['csv', 'csvw', 'geojson', 'gpkg', 'parquet', 'pmtiles'],
  effort: ['csv', 'csvw', 'geojson', 'gpkg', 'parquet'],
  records: ['csv', 'csvw', 'geojson', 'gpkg', 'parquet', 'dwca'],
  fronts: ['geojson'],
};

/** The formats in which it comes. */
export const formatsOf = (what: What): readonly Format[] => FORMATS_OF[what];

const DATE = /^\d{4}(?:-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01]))?$/;

/** What is wrong with the years; empty when nothing is. */
export function faultOfYears(from: string | null, to: string | null): string {
  const wrong = [from, to].find((text) => text !== null && !DATE.test(text));
  if (wrong !== undefined) return `“${wrong}” is no year or day. Write 2005, or 2005-06-30.`;
  // "2005" begins a year, as a first day, and ends it, as a last.
  if (from !== null && to !== null && from > (to.length === 4 ? `${to}-12-31` : to)) return 'The first comes after the last.';
  return '';
}

/** What is wrong with a box; empty when nothing is. */
export function faultOfBox(box: string | null): string {
  if (box === null) return '';
  const numbers = box.split(',').map((part) => part.trim() === '' ? Number.NaN : Number(part));
  if (numbers.length !== 4 || numbers.some((number) => !Number.isFinite(number))) return 'Write four numbers with commas between: west,south,east,north, such as -3.5,54,-1,56.';
  const [west, south, east, north] = numbers as [number, number, number, number];
  if (Math.abs(west) > 180 || Math.abs(east) > 180 || Math.abs(south) > 90 || Math.abs(north) > 90) return 'Degrees go to 180 east and west, and to 90 north and south.';
  return south > north ? 'The southern edge lies north of the northern.' : '';
}

/** What is still missing before it can be asked; empty when nothing is. */
export function faultOf(query: ExportQuery): string {
  if (query.what === 'fronts' && query.taxon === null) return 'Fronts are of one species: choose one.';
  return faultOfYears(query.from, query.to) || (counts(query).box ? faultOfBox(query.box) : '');
}

/** The hash of a query, without the leading #; what equals the start is left out. */
export function toHash(query: ExportQuery): string {
  return (Object.keys(START) as (keyof ExportQuery)[])
    .filter((name) => query[name] !== START[name])
    .map((name) => `${name}=${readable(String(query[name]))}`).join('&');
}

/** The query of a hash, with or without the leading #. What cannot be read takes its start value. */
export function fromHash(hash: string): ExportQuery {
  const given = new URLSearchParams(hash.replace(/^#/, ''));
  const text = (name: keyof ExportQuery) => given.get(name) || null;
  const what = oneOf(WHATS, given.get('what'), START.what);
  return {
    what,
    taxon: text('taxon'), group: text('group'), from: text('from'), to: text('to'),
    size: oneOf(EXPORT_SIZES, given.get('size'), START.size),
    quality: oneOf(QUALITIES, given.get('quality'), START.quality),
    region: text('region'), box: text('box'), edition: text('edition'),
    format: oneOf(formatsOf(what), given.get('format'), formatsOf(what)[0]!),
    full: given.get('full') === 'true',
  };
}
