/** A run of years that share a colour, both ends included. */
export interface YearClass { from: number; to: number }

const MOST_CLASSES = 6;
const ROUND_STEPS = [1, 2, 5, 10, 20, 25, 50, 100];

/** Splits a span of years into at most six classes of a round number of years that start at round years. */
export function yearClasses(first: number, last: number): YearClass[] {
  const step = ROUND_STEPS.find((s) => Math.floor(last / s) - Math.floor(first / s) + 1 <= MOST_CLASSES) ?? ROUND_STEPS.at(-1)!;
  const classes: YearClass[] = [];
  for (let from = Math.floor(first / step) * step; from <= last; from += step) {
    classes.push({ from: Math.max(from, first), to: Math.min(from + step - 1, last) });
  }
  return classes;
}

/** Index of the class that holds the year; years outside take the nearest class. */
export function classOf(classes: readonly YearClass[], year: number): number {
  const found = classes.findIndex((c) => year <= c.to);
  return found < 0 ? classes.length - 1 : found;
}
