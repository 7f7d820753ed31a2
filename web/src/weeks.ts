// Weeks of the year (ISO 8601), as the list of taxa writes them and as people read them.

const dayAndMonth = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', timeZone: 'UTC' });

/** The days of an ISO 8601 week. */
export function weekInWords(year: number, week: number): string {
  const fourth = new Date(Date.UTC(year, 0, 4));
  const monday = new Date(fourth.getTime() + 86_400_000 * (7 * (week - 1) - (fourth.getUTCDay() + 6) % 7));
  return `${dayAndMonth.format(monday)} to ${dayAndMonth.format(new Date(monday.getTime() + 6 * 86_400_000))}`;
}

/** Spans of weeks as the list writes them, "16-44" or "48-6, 20": a span over the turn of the year falls into two. */
export function readWeeks(text: string): [number, number][] {
  return [...text.matchAll(/(\d+)(?:\s*[-–]\s*(\d+))?/g)].flatMap(([, first, last]): [number, number][] => {
    const [from, to] = [Number(first), Number(last ?? first)];
    return from <= to ? [[from, to]] : [[from, 53], [1, to]];
  });
}
