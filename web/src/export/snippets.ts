// The question as a command and as programs, with every value quoted by the rules of its language. None holds a token: each reads it from the environment.
import { asked, type Asked } from './address.ts';
import type { ExportQuery, Format } from './query.ts';

export const LANGUAGES = ['curl', 'python', 'r'] as const;
export type Language = (typeof LANGUAGES)[number];

/** Where a program finds the token. */
export const TOKEN_VARIABLE = 'RANGEMAP_TOKEN';

const ENDINGS: Record<Format, string> = { csv: 'csv', csvw: 'csv-metadata.json', geojson: 'geojson', gpkg: 'gpkg', parquet: 'parquet', dwca: 'zip', pmtiles: 'pmtiles' };

/** A name that needs no quotes anywhere. */
export const fileNameOf = ({ what, format }: Pick<ExportQuery, 'what' | 'format'>): string => `${what}.${ENDINGS[format]}`;

/** The program that fetches the file. */
export function snippet(language: Language, query: ExportQuery, origin: string): string {
  const what = asked(query), file = fileNameOf(query), withToken = query.what === 'records' && query.full;
  const parts = { curl, python, r }[language](what, origin, file, withToken);
  return [...parts, ...(language === 'curl' ? [] : reading(language, query, file))].join('\n');
}

function curl({ path, parameters }: Asked, origin: string, file: string, withToken: boolean): string[] {
  return [[
    `curl --fail --get ${shell(origin + path)}`,
    ...parameters.map(([name, value]) => `--data-urlencode ${shell(`${name}=${value}`)}`),
    ...(withToken ? [`--header "Authorization: Bearer $${TOKEN_VARIABLE}"`] : []),
    `--output ${shell(file)}`,
  ].join(' \\\n  ')];
}

function python({ path, parameters }: Asked, origin: string, file: string, withToken: boolean): string[] {
  return [
    ...(withToken ? ['import os'] : []),
    'import shutil',
    'import urllib.parse',
    'import urllib.request',
    '',
    'query = urllib.parse.urlencode({',
    ...parameters.map(([name, value]) => `    ${doubleQuoted(name)}: ${doubleQuoted(value)},`),
    '})',
    `request = urllib.request.Request(${doubleQuoted(`${origin}${path}?`)} + query)`,
    ...(withToken ? [`request.add_header("Authorization", "Bearer " + os.environ["${TOKEN_VARIABLE}"])`] : []),
    `with urllib.request.urlopen(request) as answer, open(${doubleQuoted(file)}, "wb") as out:`,
    '    shutil.copyfileobj(answer, out)',
  ];
}

function r({ path, parameters }: Asked, origin: string, file: string, withToken: boolean): string[] {
  return [
    'query <- c(',
    parameters.map(([name, value]) => `  ${name} = ${doubleQuoted(value)}`).join(',\n'),
    ')',
    'query <- vapply(enc2utf8(query), utils::URLencode, "", reserved = TRUE)',
    `names(query) <- c(${parameters.map(([name]) => doubleQuoted(name)).join(', ')})`,
    `address <- paste0(${doubleQuoted(`${origin}${path}?`)}, paste0(names(query), "=", query, collapse = "&"))`,
    ...(withToken
      ? [`download.file(address, ${doubleQuoted(file)}, mode = "wb",`, `  headers = c(Authorization = paste("Bearer", Sys.getenv("${TOKEN_VARIABLE}"))))`]
      : [`download.file(address, ${doubleQuoted(file)}, mode = "wb")`]),
  ];
}

/** How the file is read once it is there; in R by packages where R itself cannot, and nothing where a language has no usual way. */
function reading(language: 'python' | 'r', { what, format }: ExportQuery, file: string): string[] {
  const name = doubleQuoted(file);
  if (language === 'python') {
    if (format === 'csv') return ['', 'import csv', '', `with open(${name}, encoding="utf-8", newline="") as table:`, '    rows = list(csv.DictReader(table))', 'print(len(rows), "rows")'];
    return format === 'geojson' ? ['', 'import json', '', `with open(${name}, encoding="utf-8") as map:`, '    features = json.load(map)["features"]', 'print(len(features), "features")'] : [];
  }
  if (format === 'csv') return ['', `${what} <- read.csv(${name}, encoding = "UTF-8")`];
  if (format === 'geojson' || format === 'gpkg') return ['', `${what} <- sf::st_read(${name})  # needs the package sf`];
  return format === 'parquet' ? ['', `${what} <- arrow::read_parquet(${name})  # needs the package arrow`] : [];
}

/** A word of a POSIX shell: within single quotes all but the single quote stands for itself. */
export const shell = (text: string): string => `'${text.replaceAll("'", String.raw`'\''`)}'`;

/** A string of Python or R: both read the escapes of JSON, but R no "\/" and neither a bare control character. */
export const doubleQuoted = (text: string): string => JSON.stringify(text).replace(/[\u007f-\u009f\u2028\u2029]/g, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`);
