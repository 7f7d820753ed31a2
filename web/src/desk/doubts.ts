// What the doubts are called, as the server has it, for the codes that its answers hold.
import { Problem } from '../api.ts';
import type { KnownDoubt } from './answers.ts';

export interface DoubtTitles {
  /** A few words for a code. */
  of(code: string): string;
  /** Asks for the words where they are not here yet. Without them the desk goes on. */
  load(): Promise<void>;
}

export function makeDoubtTitles(ask: () => Promise<readonly KnownDoubt[]>): DoubtTitles {
  let titles: ReadonlyMap<string, string> | null = null;
  return {
    of: (code) => titles?.get(code) ?? asWords(code),
    async load() {
      if (titles !== null) return;
      try {
        titles = new Map((await ask()).map(({ code, title }) => [code, title]));
      } catch (error) {
        if (!(error instanceof Problem)) throw error;
      }
    },
  };
}

/** A code that the server did not name, such as twoFarPlaces: "two far places". */
const asWords = (code: string) => code.replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
