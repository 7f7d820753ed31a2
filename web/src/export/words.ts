// What the choices are called, and what each is good for.
import type { Quality } from '../state.ts';
import { counts, START, type ExportQuery, type ExportSquare, type Format, type What } from './query.ts';

interface Choice { name: string; about: string }

export const WHAT_WORDS: Record<What, Choice> = {
  presence: { name: 'Presence', about: 'one row a species, square and year, with effort beside it' },
  effort: { name: 'Recording effort', about: 'one row a group, square and year with visits' },
  records: { name: 'Single records', about: 'without sensitive species and people, unless you may see them' },
  fronts: { name: 'Fronts', about: 'one line a year of a spreading species' },
};

export const QUALITY_WORDS: Record<Quality, Choice> = {
  usable: { name: 'Usable', about: 'confirmed, or not reviewed yet and without a serious doubt' },
  confirmed: { name: 'Confirmed', about: 'by a reviewer' },
  all: { name: 'All', about: 'but rejected records' },
};

export const SIZE_WORDS: Record<ExportSquare, string> = { '100km': '100 km', '10km': '10 km', '5km': '5 km', '2km': '2 km', '1km': '1 km', '100m': '100 m' };

export const FORMAT_WORDS: Record<Format, Choice> = {
  csv: { name: 'CSV', about: 'a table for any spreadsheet' },
  csvw: { name: 'CSV on the Web', about: 'the description of that table: columns, source, licences' },
  geojson: { name: 'GeoJSON', about: 'shapes for the web' },
  gpkg: { name: 'GeoPackage', about: 'for a desktop map program' },
  parquet: { name: 'GeoParquet', about: 'for large analyses' },
  dwca: { name: 'Darwin Core Archive', about: 'for other collections of records' },
  pmtiles: { name: 'PMTiles', about: 'vector tiles in one file, for a map on any static host' },
};

/** What could be opened up where nothing matches. */
export function waysOn(query: ExportQuery): string[] {
  const may = counts(query);
  return [
    (query.from !== null || query.to !== null) && 'take other years, or none',
    may.place && query.region !== null && 'take another region, or everywhere',
    may.box && query.box !== null && 'make the box larger, or take it away',
    may.quality && query.quality !== 'all' && 'let all records count',
    may.size && query.size !== '100km' && query.size !== START.size && 'take larger squares: places known roughly are in no small one',
    may.group && query.group !== null && 'take all groups',
    query.taxon !== null && query.what !== 'fronts' && 'take all species',
  ].filter((way) => way !== false);
}
