// Fetching the file here, with progress and a way to stop; what is too long to be held whole is left to the browser's own downloads.
import { Problem } from '../api.ts';
import { saveFile } from '../desk/saveFile.ts';
import { bytes as inBytes } from '../desk/words.ts';
import { el } from '../elements.ts';
import { asked, toPath } from './address.ts';
import { fileNameOf } from './snippets.ts';
import { LARGE_BYTES, type SizeBox } from './size.ts';
import { canAsk, type ExportStore } from './store.ts';
import type { Tell } from './tell.ts';

export function mountDownload(host: HTMLElement, store: ExportStore, tell: Tell, size: SizeBox): void {
  let under: AbortController | null = null;
  const start = el('button', { type: 'button', class: 'main', click: () => void fetchFile() }, 'Download');
  const stop = el('button', { type: 'button', hidden: true, click: () => under?.abort() }, 'Stop');
  const bar = el('progress', { 'aria-label': 'Fetched so far', hidden: true });
  const told = el('p', { class: 'told', role: 'status' });
  const fault = el('p', { class: 'fault', role: 'alert' });
  const large = el('p', { class: 'note', hidden: true });
  host.append(el('section', { class: 'fetching', 'aria-label': 'Download' }, el('p', { class: 'row' }, start, stop), large, bar, told, fault));

  async function fetchFile(): Promise<void> {
    const query = store.state, mine = under = new AbortController();
    turn(true);
    told.textContent = 'The server is making the file …';
    try {
      const answer = await tell.answer(asked(query), query, mine.signal);
      const content = await readAll(answer, (now, of) => {
        if (of === null) bar.removeAttribute('value');
        else [bar.max, bar.value] = [of, now];
        told.textContent = of === null ? `${inBytes(now)} so far` : `${inBytes(now)} of ${inBytes(of)}`;
      });
      const name = nameIn(answer.headers.get('Content-Disposition')) ?? fileNameOf(query);
      saveFile(content, name);
      told.textContent = `Done: ${name}, ${inBytes(content.size)}.`;
    } catch (error) {
      told.textContent = mine.signal.aborted ? 'Stopped. Nothing was kept.' : '';
      if (!mine.signal.aborted) fault.textContent = wordsOf(error);
    } finally {
      under = null;
      turn(false);
    }
  }

  function turn(isFetching: boolean): void {
    // What is hidden loses the focus, which belongs to the button that takes its place.
    const hadFocus = document.activeElement === (isFetching ? start : stop);
    bar.hidden = stop.hidden = !isFetching;
    start.hidden = isFetching;
    bar.removeAttribute('value');
    fault.textContent = '';
    if (hadFocus) (isFetching ? stop : start).focus();
  }

  function show(): void {
    const { known } = size, query = store.state;
    const isLong = known !== null && known.bytes !== null && known.bytes >= LARGE_BYTES;
    large.hidden = !isLong;
    if (under === null) start.hidden = isLong;
    start.disabled = !canAsk(query) || known === null || known.rows === 0;
    if (isLong) {
      large.replaceChildren(...(query.full
        ? ['Too long for this page to hold. Fetch it with the command below, which goes straight to the disk.']
        : [el('a', { href: toPath(asked(query)), download: '' }, 'Download'), ' with the browser, which writes it to the disk as it comes. If the line is cut, ', el('code', {}, 'curl --continue-at -'), ' added to the command below goes on where it stopped.']));
    }
  }

  size.follow(show);
  store.follow(() => {
    show();
    if (under === null) told.textContent = fault.textContent = '';
  });
}

/** Reads an answer piece by piece; its length is null where the server does not tell it. */
export async function readAll(answer: Response, tell: (now: number, of: number | null) => void): Promise<Blob> {
  const said = answer.headers.get('Content-Length'), of = said === null ? null : Number(said);
  const parts: Uint8Array<ArrayBuffer>[] = [];
  let now = 0;
  const reader = answer.body!.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    parts.push(value);
    tell(now += value.length, of);
  }
  if (of !== null && now < of) throw new Problem('The line was cut before the file was whole.', 'Nothing was kept; download it again.', 0);
  return new Blob(parts, { type: answer.headers.get('Content-Type') ?? '' });
}

/** The name of the file in a Content-Disposition header; those of this server need no quotes. */
export const nameIn = (header: string | null): string | null => /filename="?([\w.-]+)"?/.exec(header ?? '')?.[1] ?? null;

function wordsOf(error: unknown): string {
  if (error instanceof Problem) return error.message;
  // What a browser throws when the line is cut in the middle of an answer.
  if (error instanceof TypeError) return 'The line was cut before the file was whole. Nothing was kept; download it again.';
  throw error;
}
