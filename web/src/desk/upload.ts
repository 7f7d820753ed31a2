// Sends a file as it lies on the disk: the browser streams it, so that its size does not matter here.
import { noAnswer, Problem, ROOT } from '../api.ts';
import type { ImportLine } from './answers.ts';
import type { Session } from './session.ts';

export interface Sent { bytes: number; of: number; perSecond: number; secondsLeft: number | null }

/** Below this many milliseconds a rate says more about the first packet than about the line. */
const SETTLED_MS = 600;

/** Sends it; where the token is refused, waits for another and sends again. Ended by the signal. */
export async function upload(session: Session, file: File, dataset: string, tell: (sent: Sent) => void, signal: AbortSignal): Promise<ImportLine> {
  for (;;) {
    const { token } = session;
    const answer = token === null ? null : await send(token, file, dataset, tell, signal);
    if (answer !== null && answer.status !== 401) return read(answer);
    await session.renew(token);
    signal.throwIfAborted();
  }
}

function send(token: string, file: File, dataset: string, tell: (sent: Sent) => void, signal: AbortSignal): Promise<XMLHttpRequest> {
  const request = new XMLHttpRequest();
  const began = performance.now();
  request.open('POST', `${ROOT}/imports?dataset=${encodeURIComponent(dataset)}&file=${encodeURIComponent(file.name)}`);
  request.setRequestHeader('Authorization', `Bearer ${token}`);
  request.setRequestHeader('Content-Type', 'application/octet-stream');
  request.upload.addEventListener('progress', ({ loaded }) => tell(pace(loaded, file.size, performance.now() - began)));
  const abort = () => request.abort();
  signal.addEventListener('abort', abort);
  return new Promise<XMLHttpRequest>((done, failed) => {
    request.addEventListener('load', () => done(request));
    // A server that refuses a long file answers and hangs up, which the browser tells as a cut line.
    request.addEventListener('error', () => failed(noAnswer()));
    request.addEventListener('abort', () => failed(signal.reason));
    request.send(file);
  }).finally(() => signal.removeEventListener('abort', abort));
}

/** How fast a file goes, and how long it will still take. */
export function pace(bytes: number, of: number, ms: number): Sent {
  const perSecond = ms === 0 ? 0 : bytes / (ms / 1000);
  return { bytes, of, perSecond, secondsLeft: ms < SETTLED_MS || perSecond === 0 ? null : (of - bytes) / perSecond };
}

function read({ status, responseText }: XMLHttpRequest): ImportLine {
  if (status >= 200 && status < 300) return JSON.parse(responseText) as ImportLine;
  const said = problemIn(responseText);
  throw new Problem(said.title ?? `The server answered ${status}.`, said.detail ?? 'It gave no reason.', status);
}

function problemIn(text: string): { title?: string; detail?: string } {
  try {
    return JSON.parse(text) as { title?: string; detail?: string };
  } catch {
    return {};
  }
}
