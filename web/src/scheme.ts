// What the scheme's maps begin with.
import { api } from './api.ts';
import { offerFirst } from './periods.ts';
import { START } from './state.ts';

/** Longer than this nobody waits for a setting: the map begins with the program's own periods. */
const PATIENCE_MS = 3000;

/** The periods that maps begin with, also offered by name; the program's own where the server does not tell. */
export async function readScheme(): Promise<readonly string[]> {
  try {
    const { periods } = await api.about(AbortSignal.timeout(PATIENCE_MS));
    if (periods.length === 0) return START.periods;
    offerFirst(periods);
    return periods.map(({ period }) => period);
  } catch {
    // The panels say in words that the server does not answer.
    return START.periods;
  }
}
