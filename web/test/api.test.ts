import { afterEach, describe, expect, test, vi } from 'vitest';
import { api, mapParameters, Problem, tileAddress } from '../src/api.ts';
import { question, type Loaded } from '../src/loading.ts';

afterEach(() => vi.unstubAllGlobals());

const answering = (status: number, body: string) => vi.stubGlobal('fetch', vi.fn(async () => new Response(body, { status })));

describe('asking the server', () => {
  test('an answer is read', async () => {
    answering(200, '{"taxa":[]}');
    expect(await api.taxa('bee', 5)).toEqual({ taxa: [] });
    expect(fetch).toHaveBeenCalledWith('/api/v1/taxa?q=bee&limit=5', expect.anything());
  });

  test('a problem keeps the title and the detail that the server gave', async () => {
    answering(404, '{"title":"No such species.","detail":"Try the search.","status":404}');
    await expect(api.taxon('x')).rejects.toMatchObject({ title: 'No such species.', detail: 'Try the search.', status: 404 });
  });

  test('a failure without a reason, and a server that is gone, are said in words', async () => {
    answering(502, '<html>');
    await expect(api.about()).rejects.toMatchObject({ title: 'The server answered 502.' });
    vi.stubGlobal('fetch', vi.fn(async () => { throw new TypeError('refused'); }));
    await expect(api.about()).rejects.toBeInstanceOf(Problem);
  });

  test('names and periods are safe in an address, and the tile’s place stays open', () => {
    const q = { taxon: 'A/b c', size: '2km', periods: ['../1999', '2000/2009'], quality: 'all' } as const;
    expect(mapParameters(q)).toBe('grid=2km&periods=..%2F1999,2000%2F2009&quality=all');
    expect(tileAddress(q)).toBe('/api/v1/taxa/A%2Fb%20c/tiles/BritishNationalGrid/{z}/{y}/{x}?grid=2km&periods=..%2F1999,2000%2F2009&quality=all');
  });
});

describe('an answer on its way', () => {
  test('a late answer to an older question is dropped', async () => {
    const seen: Loaded<string>[] = [];
    const asked = question<string>((answer) => seen.push(answer));
    let finishOld = (_: string) => {};
    asked.ask(() => new Promise((resolve) => { finishOld = resolve; }));
    asked.ask(async () => 'new');
    finishOld('old');
    await new Promise((resolve) => setTimeout(resolve));
    expect(seen.map((a) => a.kind === 'ready' ? a.value : a.kind)).toEqual(['loading', 'loading', 'new']);
  });

  test('a failure can be tried again', async () => {
    const seen: Loaded<string>[] = [];
    const asked = question<string>((answer) => seen.push(answer));
    let isDown = true;
    asked.ask(async () => { if (isDown) throw new Problem('Down.', 'Wait.', 503); return 'up'; });
    await new Promise((resolve) => setTimeout(resolve));
    isDown = false;
    const failed = seen.at(-1)!;
    if (failed.kind === 'failed') failed.again();
    await new Promise((resolve) => setTimeout(resolve));
    expect(seen.map((a) => a.kind)).toEqual(['loading', 'failed', 'loading', 'ready']);
  });
});
