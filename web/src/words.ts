// Numbers, names and distances in words; the texts that more than one panel says.
import type { Omitted, TaxonLine } from './api.ts';
import { el } from './elements.ts';

const whole = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 });
const oneDecimal = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 1, minimumFractionDigits: 1 });

export const count = (n: number): string => whole.format(n);

/** "1 record", "12 records". */
export const counted = (n: number, one: string, many = `${one}s`): string => `${count(n)} ${n === 1 ? one : many}`;

/** Kilometres a year: one decimal below 10, whole above, as the interval seldom carries more. */
export const speed = (v: number): string => Math.abs(v) < 10 ? oneDecimal.format(v) : whole.format(v);

/** "2004", "1998–2024", or nothing known. */
export function years(first: number | null, last: number | null): string {
  if (first === null || last === null || first === 0) return 'no dated records';
  return first === last ? String(first) : `${first}–${last}`;
}

export const shownName = (taxon: Pick<TaxonLine, 'vernacularName' | 'scientificName'>): string => taxon.vernacularName || taxon.scientificName;

/** A scientific name, set as such. */
export const scientific = (name: string): HTMLElement => el('i', { class: 'scientific', lang: 'la' }, name);

const WINDS = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'];

/** The nearest of eight winds to a bearing in degrees clockwise from grid north. */
export const wind = (bearing: number): string => WINDS[Math.round((((bearing % 360) + 360) % 360) / 45) % 8]!;

/** What a map leaves out, and why; empty when it leaves nothing out. */
export function omittedInWords({ tooCoarse, betweenPeriods, belowQuality }: Omitted): string {
  const reasons = [
    tooCoarse > 0 && `${count(tooCoarse)} known too roughly for squares of this size`,
    betweenPeriods > 0 && `${count(betweenPeriods)} whose dates fall in no single period`,
    belowQuality > 0 && `${count(belowQuality)} below the trust asked for`,
  ].filter((reason): reason is string => reason !== false);
  return reasons.length === 0 ? '' : `Records not shown: ${reasons.join('; ')}.`;
}

/** 51.507 N, 0.128 W. */
export function latLon(latitude: number, longitude: number): string {
  const side = (v: number, plus: string, minus: string) => `${Math.abs(v).toFixed(3)} ${v < 0 ? minus : plus}`;
  return `${side(latitude, 'N', 'S')}, ${side(longitude, 'E', 'W')}`;
}

/** "640 bytes", "87 kB", "1.2 MB". */
export function fileSize(bytes: number): string {
  if (bytes < 1000) return counted(bytes, 'byte');
  const [value, unit] = bytes < 1e6 ? [bytes / 1e3, 'kB'] : bytes < 1e9 ? [bytes / 1e6, 'MB'] : [bytes / 1e9, 'GB'];
  return `${value < 10 ? oneDecimal.format(value) : whole.format(value)} ${unit}`;
}
