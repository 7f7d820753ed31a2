// A query as a question to the server: a path and its parameters, in the order in which people read them.
import { ROOT } from '../api.ts';
import { counts, type ExportQuery, type Format } from './query.ts';

export interface Asked { path: string; parameters: readonly (readonly [string, string])[] }

/** The question whose answer is the file. */
export function asked(query: ExportQuery): Asked {
  if (query.what === 'fronts') return { path: '/ogc/collections/fronts/items', parameters: frontParameters(query) };
  const isTiles = query.format === 'pmtiles';
  return { path: `${ROOT}/exports/${isTiles ? 'tiles' : query.what}`, parameters: [...chosen(query), ...years(query), ...places(query), ...(isTiles ? [] : [['format', query.format] as const])] };
}

/** The same in another format. */
export const askedAs = (query: ExportQuery, format: Format): Asked => asked({ ...query, format });

/** The question that tells the size beforehand. Tiles have no rows: what they are made from is told. */
export function askedSize(query: ExportQuery): Asked {
  const { path, parameters } = asked(query.format === 'pmtiles' ? { ...query, format: 'csv', region: null, box: null } : query);
  return query.what === 'fronts' ? { path, parameters: parameters.map(([name, value]) => [name, name === 'limit' ? '1' : value]) } : { path, parameters: [...parameters, ['count', 'true']] };
}

/** Path and parameters as they stand in an address. */
export const toPath = ({ path, parameters }: Asked): string => parameters.length === 0 ? path : `${path}?${parameters.map(([name, value]) => `${name}=${encoded(value)}`).join('&')}`;

function chosen(query: ExportQuery): [string, string][] {
  const may = counts(query);
  return present([
    ['taxon', query.taxon], ['group', may.group ? query.group : null], ['grid', may.size ? query.size : null], ['quality', may.quality ? query.quality : null], ['edition', may.edition ? query.edition : null],
  ]);
}

/** Tiles take periods, of which this is one. */
function years({ from, to, format }: ExportQuery): [string, string][] {
  if (format !== 'pmtiles') return present([['from', from], ['to', to]]);
  return from === null && to === null ? [] : [['periods', `${from ?? '..'}/${to ?? '..'}`]];
}

function places(query: ExportQuery): [string, string][] {
  const may = counts(query);
  return present([['region', may.place ? query.region : null], ['bbox', may.box ? query.box : null]]);
}

const MOST_FRONTS = '10000';

function frontParameters({ taxon, size, from, to, box }: ExportQuery): [string, string][] {
  const day = (text: string | null, rest: string) => text === null ? '..' : text.length === 4 ? `${text}${rest}` : text;
  const span = from === null && to === null ? null : `${day(from, '-01-01')}/${day(to, '-12-31')}`;
  return present([['taxonID', taxon], ['size', size], ['datetime', span], ['bbox', box], ['limit', MOST_FRONTS], ['f', 'json']]);
}

const present = (pairs: [string, string | null][]) => pairs.filter((pair): pair is [string, string] => pair[1] !== null);

/** Safe within quotes too; commas, slashes and colons stay readable. */
const encoded = (value: string) => encodeURIComponent(value).replaceAll("'", '%27').replaceAll('%2C', ',').replaceAll('%2F', '/').replaceAll('%3A', ':');
