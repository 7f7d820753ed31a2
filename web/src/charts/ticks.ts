/** Round values from 0 or the given start up to the end, about as many as asked for. */
export function ticks(from: number, to: number, about: number): number[] {
  const rough = (to - from) / Math.max(1, about) || 1;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((m) => m * power).find((s) => s >= rough) ?? rough;
  const found: number[] = [];
  for (let k = Math.ceil(from / step); k * step <= to + step * 1e-9; k++) found.push(Number((k * step).toPrecision(12)));
  return found;
}

/** Round years of a span, both ends included; never half a year. */
export const yearTicks = (from: number, to: number): number[] => ticks(from, to, 5).filter(Number.isInteger);
