// Sizes, times and states in words, as the desk says them.
import { count, counted } from '../words.ts';
import type { ImportLine, RecordLine, Status } from './answers.ts';

const UNITS = ['bytes', 'kB', 'MB', 'GB', 'TB'];

/** "312 bytes", "4.2 MB": decimal units, as the systems of today show them. */
export function bytes(n: number): string {
  let unit = 0;
  while (n >= 999.5 && unit < UNITS.length - 1) {
    n /= 1000;
    unit++;
  }
  return `${unit === 0 || n >= 99.5 ? count(n) : n.toPrecision(2)} ${UNITS[unit]}`;
}

/** "a few seconds", "40 seconds", "3 minutes", "2 hours": no closer than it can be known. */
export function timeLeft(seconds: number): string {
  if (seconds < 8) return 'a few seconds';
  if (seconds < 55) return `${Math.ceil(seconds / 5) * 5} seconds`;
  if (seconds < 55 * 60) return counted(Math.max(1, Math.round(seconds / 60)), 'minute');
  return counted(Math.max(1, Math.round(seconds / 3600)), 'hour');
}

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** 2026-06-07 as "7 Jun 2026". */
export function day(iso: string): string {
  const [year, month, date] = iso.slice(0, 10).split('-').map(Number);
  return `${date} ${MONTHS[month! - 1]} ${year}`;
}

/** "7 Jun 2026", "Jun 2026", "2026", or both ends. */
export function days(first: string, last: string): string {
  if (first === last) return day(first);
  const [year, month] = first.split('-').map(Number);
  const end = new Date(Date.UTC(year!, month!, 0)).toISOString().slice(0, 10);
  if (first.endsWith('-01-01') && last === `${first.slice(0, 4)}-12-31`) return String(year);
  if (first.endsWith('-01') && last === end) return `${MONTHS[month! - 1]} ${year}`;
  return `${day(first)} – ${day(last)}`;
}

/** A moment in UTC as the person's own clock shows it: "7 Jun 2026, 14:05". */
export function moment(iso: string): string {
  const at = new Date(iso);
  const two = (n: number) => String(n).padStart(2, '0');
  return `${at.getDate()} ${MONTHS[at.getMonth()]} ${at.getFullYear()}, ${two(at.getHours())}:${two(at.getMinutes())}`;
}

export function stateWords({ state, report, progress }: ImportLine): string {
  switch (state) {
    case 'received': return report?.dryRun ? 'tried, not imported' : 'waits for you';
    case 'queued': return 'waits for its turn';
    case 'running': return progress === null ? 'being read' : `being read, ${Math.floor(progress.fraction * 100)} %`;
    case 'done': return report !== null && report.refused > 0 ? `done, ${count(report.refused)} refused` : 'done';
    case 'failed': return 'failed, nothing kept';
    case 'undone': return 'taken back';
  }
}

export const STATUS_WORDS: Record<Status, string> = { unreviewed: 'Unreviewed', confirmed: 'Confirmed', doubtful: 'Doubtful', rejected: 'Rejected' };

const PLURALS = new Map([
  ...['queen', 'worker', 'male', 'female', 'egg', 'nymph', 'adult', 'juvenile', 'nest'].map((stage): [string, string] => [stage, `${stage}s`]),
  ...['larva', 'pupa', 'exuvia'].map((stage): [string, string] => [stage, `${stage}e`]),
]);

/** "6 workers", "1 queen"; a word of the recorder's own is left as it is. */
function numbered(number: number, stage: string | null): string {
  const plural = stage === null ? undefined : PLURALS.get(stage);
  return plural === undefined ? [count(number), stage].filter((text) => text !== null).join(', ') : counted(number, stage!, plural);
}

/** What was seen, in one line: "6 workers", "female, 14 mm". */
export function seen({ count: number, stage, sex, lengthMm, present }: RecordLine): string {
  const isSaid = stage !== null && ['worker', 'queen', 'male', 'female'].includes(stage);
  const parts = [number === null ? stage : numbered(number, stage), isSaid ? null : sex, lengthMm === null ? null : `${lengthMm} mm`];
  const said = parts.filter((text) => text !== null).join(', ');
  return present ? said : ['looked for and not found', said].filter((text) => text !== '').join(', ');
}
