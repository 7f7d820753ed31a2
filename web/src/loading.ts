// An answer on its way: a newer question cancels the older one, so a late answer never overwrites a newer view.
import { Problem } from './api.ts';

export type Loaded<T> =
  | { kind: 'nothing' }
  | { kind: 'loading' }
  | { kind: 'ready'; value: T }
  | { kind: 'failed'; problem: Problem; again: () => void };

export interface Question<T> {
  ask(load: (signal: AbortSignal) => Promise<T>): void;
  clear(): void;
}

export function question<T>(show: (answer: Loaded<T>) => void): Question<T> {
  let current: AbortController | null = null;

  async function ask(load: (signal: AbortSignal) => Promise<T>): Promise<void> {
    current?.abort();
    const mine = current = new AbortController();
    show({ kind: 'loading' });
    try {
      const value = await load(mine.signal);
      if (!mine.signal.aborted) show({ kind: 'ready', value });
    } catch (error) {
      if (mine.signal.aborted) return;
      if (!(error instanceof Problem)) throw error;
      show({ kind: 'failed', problem: error, again: () => void ask(load) });
    }
  }

  return {
    ask: (load) => void ask(load),
    clear: () => { current?.abort(); show({ kind: 'nothing' }); },
  };
}
