// Periods as people write and read them. ISO 8601 intervals, open ends written as two dots; years, months or days.

/** One period without ends. */
export const ALL_TIME = '../..';

export interface Preset { name: string; periods: readonly string[] }

export const PRESETS: Preset[] = [
  { name: 'Before 2000 · 2000s · since 2010', periods: ['../1999', '2000/2009', '2010/..'] },
  { name: 'Before 2010 · 2010s · since 2020', periods: ['../2009', '2010/2019', '2020/..'] },
  { name: 'Every five years from 2005', periods: ['../2004', '2005/2009', '2010/2014', '2015/2019', '2020/..'] },
  { name: 'All years as one', periods: [ALL_TIME] },
];

/** Puts the scheme's own periods first among those offered, under the names that it gives them. */
export function offerFirst(named: readonly { name: string; period: string }[]): void {
  const periods = named.map(({ period }) => period);
  const known = PRESETS.findIndex((preset) => preset.periods.join() === periods.join());
  if (known >= 0) PRESETS.splice(known, 1);
  PRESETS.unshift({ name: named.map(({ name }) => name).join(' · '), periods });
}

const DATE = String.raw`\d{4}(?:-\d\d(?:-\d\d)?)?`;
const INTERVAL = new RegExp(String.raw`^(?:(${DATE}|\.\.)/(${DATE}|\.\.)|(${DATE}))$`);

/** Reads periods parted by commas, spaces or lines. Gives the first fault in words, or the periods. */
export function readPeriodText(text: string): { periods: string[] } | { fault: string } {
  const periods = text.split(/[\s,;|]+/).filter((p) => p !== '');
  if (periods.length === 0) return { fault: 'Write at least one period, such as 2000/2009.' };
  if (periods.length > 8) return { fault: `${periods.length} periods are more than the map can tell apart; use at most 8.` };
  for (const period of periods) {
    const match = INTERVAL.exec(period);
    if (match === null) return { fault: `“${period}” is not a period. Write 2000/2009, ../1999 for all before 2000, or 2010/.. for since 2010.` };
    const [, from, to] = match;
    if (from !== undefined && to !== undefined && from !== '..' && to !== '..' && from > to) return { fault: `“${period}” ends before it begins.` };
  }
  return { periods };
}

/** A period in words: "before 2000", "2000–2009", "since 2010". */
export function periodInWords(period: string): string {
  const [from, to] = period.split('/');
  if (from === undefined || to === undefined) return period;
  if (from === '..' && to === '..') return 'all years';
  if (from === '..') return /^\d{4}$/.test(to) ? `before ${Number(to) + 1}` : `up to ${to}`;
  if (to === '..') return `since ${from}`;
  return from === to ? from : `${from}–${to}`;
}
