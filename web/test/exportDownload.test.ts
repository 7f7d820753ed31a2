// @vitest-environment happy-dom
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { makeAddressStore } from '../src/addressStore.ts';
import { Problem } from '../src/api.ts';
import { makeSession } from '../src/desk/session.ts';
import { mountDownload, nameIn, readAll } from '../src/export/download.ts';
import { fromHash, START, toHash, type ExportQuery } from '../src/export/query.ts';
import { LARGE_BYTES, type Known } from '../src/export/size.ts';
import { makeTell } from '../src/export/tell.ts';
import { waysOn } from '../src/export/words.ts';

describe('an answer that is read piece by piece', () => {
  const answer = (parts: string[], length: number | null) => new Response(
    new ReadableStream({ start(to) { for (const part of parts) to.enqueue(new TextEncoder().encode(part)); to.close(); } }), { headers: length === null ? {} : { 'Content-Length': String(length) } });

  test('tells how far it has come, and is whole at the end', async () => {
    const told: [number, number | null][] = [];
    const whole = await readAll(answer(['abc', 'de'], 5), (now, of) => told.push([now, of]));
    expect(told).toEqual([[3, 5], [5, 5]]);
    expect(whole.size).toBe(5);
  });

  test('one of unknown length is taken as it comes', async () => expect((await readAll(answer(['abc'], null), () => {})).size).toBe(3));

  test('one that was cut is no file', async () => {
    await expect(readAll(answer(['abc'], 5), () => {})).rejects.toThrow('The line was cut');
  });

  test('its name stands in its header', () => {
    expect(nameIn('attachment; filename=presence-T1-10km.csv; filename*=UTF-8\'\'presence-T1-10km.csv')).toBe('presence-T1-10km.csv');
    expect(nameIn('attachment')).toBeNull();
    expect(nameIn(null)).toBeNull();
  });
});

describe('the download', () => {
  let host: HTMLElement;
  beforeEach(() => { host = document.createElement('div'); });

  const button = () => host.querySelector('button')!;

  function shownWith(known: Known, query: Partial<ExportQuery> = {}): void {
    window.location.hash = toHash({ ...START, ...query });
    const store = makeAddressStore<ExportQuery>(window.location, window.history, { write: toHash, read: fromHash, passing: [] });
    mountDownload(host, store, makeTell(makeSession(window.sessionStorage)), { known, follow: () => {} });
    store.begin();
  }

  test('is out of reach while nothing is known, and where nothing matches', () => {
    shownWith(null);
    expect(button().disabled).toBe(true);
    host.replaceChildren();
    shownWith({ rows: 0, bytes: 0, atMost: false });
    expect(button().disabled).toBe(true);
  });

  test('of a long file is left to the browser, and of one that needs a token to the command', () => {
    shownWith({ rows: 1e7, bytes: LARGE_BYTES, atMost: false }, { taxon: 'T1' });
    expect(button().hidden).toBe(true);
    expect(host.querySelector('a')!.getAttribute('href')).toBe('/api/v1/exports/presence?taxon=T1&grid=10km&quality=usable&format=csv');
    host.replaceChildren();
    shownWith({ rows: 1e7, bytes: LARGE_BYTES, atMost: false }, { what: 'records', full: true });
    expect(host.querySelector('a')).toBeNull();
    expect(host.textContent).toContain('with the command below');
  });
});

describe('records in full', () => {
  const query: ExportQuery = { ...START, what: 'records', full: true };
  const asked = { path: '/api/v1/exports/records', parameters: [] };
  const signal = new AbortController().signal;

  test('are not asked without a token, nor with one that may not review', async () => {
    const session = makeSession(window.sessionStorage);
    session.signOut();
    const fetched = vi.spyOn(globalThis, 'fetch').mockImplementation(() => Promise.resolve(new Response(JSON.stringify({ name: 'B. Sender', rights: ['import'] }))));
    await expect(makeTell(session).answer(asked, query, signal)).rejects.toThrow(Problem);
    expect(fetched).not.toHaveBeenCalled();
    session.signIn('secret');
    await expect(makeTell(session).answer(asked, query, signal)).rejects.toThrow('B. Sender does not allow this');
    expect(fetched.mock.calls.map(([path]) => path)).toEqual(['/api/v1/me']);
    fetched.mockRestore();
    session.signOut();
  });
});

test('where nothing matches, only what narrows the question can be opened', () => {
  expect(waysOn({ ...START, quality: 'all' })).toEqual([]);
  expect(waysOn({ ...START, what: 'records', region: 'Wales', size: '1km', taxon: 'T1' })).toEqual(['take another region, or everywhere', 'let all records count', 'take all species']);
});
