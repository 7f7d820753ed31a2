// How much a query gives, before it is fetched.
import type { ExportSize } from '../api.ts';
import { el } from '../elements.ts';
import { question, type Loaded } from '../loading.ts';
import { shown } from '../panels/waiting.ts';
import { counted, fileSize } from '../words.ts';
import { askedSize } from './address.ts';
import { faultOf, toHash, type ExportQuery } from './query.ts';
import { canAsk, type ExportStore } from './store.ts';
import type { Tell } from './tell.ts';
import { waysOn } from './words.ts';

/** Rows, and bytes where they are known; null while nothing is known. */
export type Known = { rows: number; bytes: number | null; atMost: boolean } | null;

export interface SizeBox { readonly known: Known; follow(follower: (known: Known) => void): void }

/** From here on a file is large: a browser that holds it whole may run out of room. */
export const LARGE_BYTES = 300e6;

export function mountSize(host: HTMLElement, store: ExportStore, tell: Tell): SizeBox {
  const body = el('div', { class: 'size', role: 'status' });
  host.append(el('section', { 'aria-labelledby': 'size-title' }, el('h2', { id: 'size-title' }, 'The file'), body));
  const followers: ((known: Known) => void)[] = [];
  let known: Known = null;
  const asked = question<Exclude<Known, null>>(show);

  function show(answer: Loaded<Exclude<Known, null>>): void {
    known = answer.kind === 'ready' ? answer.value : null;
    body.replaceChildren(...shown(answer, (value) => draw(store.state, value), [el('p', { class: 'note' }, faultOf(store.state))]));
    followers.forEach((follower) => follower(known));
  }

  const ask = () => canAsk(store.state) ? asked.ask((signal) => readSize(tell, store.state, signal)) : asked.clear();
  store.follow((now, before) => {
    if (now === before || toHash(now) !== toHash(before)) ask();
  });
  tell.session.follow(() => { if (store.state.full) ask(); });
  return { get known() { return known; }, follow: (follower) => { followers.push(follower); } };
}

async function readSize(tell: Tell, query: ExportQuery, signal: AbortSignal): Promise<Exclude<Known, null>> {
  const question = askedSize(query);
  // A collection of features tells how many there are, and no bytes.
  if (query.what === 'fronts') return { rows: (await tell.json<{ numberMatched: number }>(question, query, signal)).numberMatched, bytes: null, atMost: false };
  const { rows, bytes, atMost } = await tell.json<ExportSize>(question, query, signal);
  return { rows, bytes: query.format === 'pmtiles' || query.format === 'csvw' ? null : bytes, atMost };
}

function draw(query: ExportQuery, { rows, bytes, atMost }: Exclude<Known, null>): Node[] {
  if (rows === 0) return nothing(query);
  const [amount, note] = [`${atMost ? 'at most ' : ''}${counted(rows, query.what === 'fronts' ? 'line' : 'row')}`, noteOf(query, bytes)];
  return [
    el('p', { class: 'amount' }, el('strong', {}, amount), bytes === null ? '' : `, about ${fileSize(bytes)}`),
    ...(note === '' ? [] : [el('p', { class: 'note' }, note)]),
  ];
}

function noteOf({ format, what }: ExportQuery, bytes: number | null): string {
  if (format === 'pmtiles') return 'These rows go into the tiles; how long the file is shows once it is made.';
  if (format === 'csvw') return 'The description of these rows is a few kilobytes long.';
  if (bytes !== null && bytes >= LARGE_BYTES) return 'This is a large file. GeoParquet is the shortest form of it; years, a region or one species make it shorter.';
  return what === 'fronts' || bytes === null ? '' : 'The file itself may be somewhat longer or shorter.';
}

function nothing(query: ExportQuery): Node[] {
  if (query.what === 'fronts') return [el('p', { class: 'amount' }, 'There are no fronts.'), el('p', {}, 'The arrival model has none for this species, these years and squares: it needs a species that spreads, and enough squares with records.')];
  const ways = waysOn(query);
  return [
    el('p', { class: 'amount' }, 'Nothing matches.'),
    ...(ways.length === 0 ? [el('p', {}, 'The data hold nothing of the kind.')] : [el('p', {}, 'To find more you could'), el('ul', {}, ...ways.map((way) => el('li', {}, way)))]),
  ];
}
