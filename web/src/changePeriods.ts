// Change is told between the first and the last of the chosen periods.
import type { ChangeQuestion } from './api.ts';
import type { ViewState } from './state.ts';

/** The question that a state asks about change; null where it names no two periods or no species. */
export function changeQuestion({ taxon, size, quality, periods }: ViewState): ChangeQuestion | null {
  const [from, to] = [periods[0], periods.at(-1)];
  return taxon === null || from === undefined || to === undefined || periods.length < 2 ? null : { taxon, size, quality, from, to };
}
