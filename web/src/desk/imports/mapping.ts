// What a person says of a file's columns: pure steps from one saying to the next, and the mapping file both ways.
import type { MappingFile, Preview, Statements } from '../answers.ts';

export interface Saying {
  /** Header to term; null for a column that is kept and not used. Null where the server still decides by the headers. */
  columns: ReadonlyMap<string, string | null> | null;
  defaults: ReadonlyMap<string, string>;
  dateOrder: Preview['dateOrder'];
  newTaxa: boolean;
}

export const NOTHING_SAID: Saying = { columns: null, defaults: new Map(), dateOrder: 'notStated', newTaxa: false };

/** A preview whose columns say what was chosen, also where the server could not read the file so yet. */
export function asSaid(preview: Preview, { columns }: Saying): Preview {
  const said = columns ?? new Map<string, string | null>();
  return { ...preview, columns: preview.columns.map((column) => said.has(column.name) ? { ...column, term: said.get(column.name)! } : column) };
}

/** Columns as they are read now, and one of them read as something else. A term that another column had moves over. */
export function readAs(saying: Saying, preview: Preview, header: string, term: string | null): Saying {
  // Choices may come faster than previews: what was said last counts, not what is shown.
  const read = asSaid(preview, saying).columns.map(({ name, term: was }): [string, string | null] => [name, name === header ? term : was === term ? null : was]);
  return { ...saying, columns: new Map(read) };
}

/** A value for the rows whose column is missing or empty; null takes it away. */
export function withDefault(saying: Saying, term: string, value: string | null): Saying {
  const defaults = new Map(saying.defaults);
  if (value === null) defaults.delete(term);
  else defaults.set(term, value);
  return { ...saying, defaults };
}

/** The form that the server takes. */
export function statements(saying: Saying, dryRun = false): Statements {
  return { mapping: mappingFile(saying), newTaxa: saying.newTaxa, ...(dryRun ? { dryRun } : {}) };
}

export function mappingFile({ columns, defaults, dateOrder }: Saying): MappingFile {
  return {
    columns: Object.fromEntries(columns ?? []),
    defaults: Object.fromEntries([...defaults].filter(([, value]) => value.trim() !== '')),
    ...(dateOrder === 'notStated' ? {} : { dateOrder }),
  };
}

/** A mapping applied to the columns that this file has: those that it does not name stay as they are read now. */
export function withMapping(saying: Saying, file: MappingFile, { columns }: Preview): Saying {
  const read = columns.map(({ name, term }): [string, string | null] => [name, name in file.columns ? file.columns[name] ?? null : term]);
  return { ...saying, columns: new Map(read), defaults: new Map(Object.entries(file.defaults)), dateOrder: file.dateOrder ?? saying.dateOrder };
}

/** Reads a mapping file; says in words why it is none. */
export function readMapping(text: string): { file: MappingFile } | { fault: string } {
  let said: unknown;
  try {
    said = JSON.parse(text);
  } catch {
    return { fault: 'This is no mapping file: it is not JSON.' };
  }
  const { columns, defaults = {}, dateOrder, ...others } = (isObject(said) ? said : {}) as Record<string, unknown>;
  if (!isObject(columns) || !isObject(defaults) || Object.keys(others).length > 0) return { fault: 'This is no mapping file: it should hold “columns”, “defaults” and “dateOrder” only.' };
  if (Object.values(columns).some((term) => term !== null && typeof term !== 'string')) return { fault: 'A column of this mapping file is read as something that is no word.' };
  if (dateOrder !== undefined && dateOrder !== 'dmy' && dateOrder !== 'mdy') return { fault: 'The date order of this mapping file is neither dmy nor mdy.' };
  return { file: { columns: columns as MappingFile['columns'], defaults: defaults as MappingFile['defaults'], ...(dateOrder === undefined ? {} : { dateOrder }) } };
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value);
