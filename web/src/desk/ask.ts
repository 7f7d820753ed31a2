// Asks the server as the person who is signed in. A question that comes back for want of a token waits for the sign-in and is asked again,
// so that nothing done on the page is lost.
import { noAnswer, readProblem, ROOT } from '../api.ts';
import type { Session } from './session.ts';

export interface Ask {
  get<T>(path: string, signal?: AbortSignal): Promise<T>;
  post<T>(path: string, body?: unknown, signal?: AbortSignal): Promise<T>;
  put<T>(path: string, body: unknown): Promise<T>;
  remove<T>(path: string): Promise<T | null>;
  file(path: string): Promise<Blob>;
  /** The answer itself, to be read as it comes. */
  stream(path: string, signal: AbortSignal): Promise<ReadableStream<Uint8Array>>;
}

export function makeAsk(session: Session): Ask {
  async function answer(path: string, init: RequestInit): Promise<Response> {
    for (;;) {
      const { token } = session;
      const got = token === null ? null : await send(path, init, token);
      if (got !== null && got.status !== 401) {
        if (!got.ok) throw await readProblem(got);
        return got;
      }
      await session.renew(token);
    }
  }

  const json = { Accept: 'application/json' };
  const headers = { ...json, 'Content-Type': 'application/json' };
  const read = async <T>(got: Response) => await got.json() as T;

  return {
    get: async <T>(path: string, signal?: AbortSignal) => read<T>(await answer(path, { headers: json, signal: signal ?? null })),
    post: async <T>(path: string, body?: unknown, signal?: AbortSignal) => {
      const got = await answer(path, { method: 'POST', headers, body: body === undefined ? null : JSON.stringify(body), signal: signal ?? null });
      return got.status === 204 ? undefined as T : read<T>(got);
    },
    put: async <T>(path: string, body: unknown) => read<T>(await answer(path, { method: 'PUT', headers, body: JSON.stringify(body) })),
    remove: async <T>(path: string) => {
      const got = await answer(path, { method: 'DELETE', headers: json });
      return got.status === 204 ? null : read<T>(got);
    },
    file: async (path) => (await answer(path, {})).blob(),
    stream: async (path, signal) => (await answer(path, { headers: { Accept: 'text/event-stream' }, signal })).body!,
  };
}

async function send(path: string, init: RequestInit, token: string): Promise<Response> {
  try {
    return await fetch(ROOT + path, { ...init, headers: { ...init.headers, Authorization: `Bearer ${token}` } });
  } catch (error) {
    if (init.signal?.aborted) throw error;
    throw noAnswer();
  }
}
