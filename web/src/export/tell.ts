// Asks for exports: as anyone, or with a token where records are wanted in full.
import { noAnswer, Problem, readProblem, ROOT } from '../api.ts';
import type { Me } from '../desk/answers.ts';
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
    return send(toPath(asked), query.what === 'records' && query.full ? await reviewer(signal) : {}, signal);
  }

  /** The server gives the public's rows to whoever may not review; here nobody shall take those for all. */
  async function reviewer(signal: AbortSignal): Promise<Record<string, string>> {
    const { token } = session;
    if (token === null) throw new Problem('Records in full need a token.', 'Give yours beside “In full”, or take the tick away.', 401);
    const headers = { Authorization: `Bearer ${token}` };
    const { name, rights } = await (await send(`${ROOT}/me`, headers, signal)).json() as Me;
    if (!rights.includes('review')) throw new Problem(`The token of ${name} does not allow this.`, 'Records in full need the right to review. Use another token, or take the tick away.', 403);
    return headers;
  }

  async function send(path: string, headers: Record<string, string>, signal: AbortSignal): Promise<Response> {
    let got: Response;
    try {
      got = await fetch(path, { signal, headers });
    } catch (error) {
      if (signal.aborted) throw error;
      throw noAnswer();
    }
    if (!got.ok) throw await readProblem(got);
    return got;
  }

  return { session, answer, json: async <T>(asked: Asked, query: ExportQuery, signal: AbortSignal) => await (await answer(asked, query, signal)).json() as T };
}
