// Asks for exports: as anyone, or with a token where records are wanted in full.
import { noAnswer, readProblem } from '../api.ts';
import type { Session } from '../desk/session.ts';
import { toPath, type Asked } from './address.ts';
import type { ExportQuery } from './query.ts';

export interface Tell {
  readonly session: Session;
  /** The answer, checked; a refusal is thrown as a problem in words. */
  answer(asked: Asked, query: ExportQuery, signal: AbortSignal): Promise<Response>;
  json<T>(asked: Asked, query: ExportQuery, signal: AbortSignal): Promise<T>;
}

export function makeTell(session: Session): Tell {
  async function answer(asked: Asked, query: ExportQuery, signal: AbortSignal): Promise<Response> {
    let got: Response;
    try {
      got = await fetch(toPath(asked), { signal, headers: headers(query) });
    } catch (error) {
      if (signal.aborted) throw error;
      throw noAnswer();
    }
    if (!got.ok) throw await readProblem(got);
    return got;
  }

  const headers = ({ what, full }: ExportQuery): Record<string, string> => what === 'records' && full && session.token !== null ? { Authorization: `Bearer ${session.token}` } : {};

  return { session, answer, json: async <T>(asked: Asked, query: ExportQuery, signal: AbortSignal) => await (await answer(asked, query, signal)).json() as T };
}
