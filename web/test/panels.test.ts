// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { mountSpecies } from '../src/panels/species.ts';
import { mountSpread } from '../src/panels/spread.ts';
import { mountSquare } from '../src/panels/square.ts';
import { makeStore, type Store } from '../src/store.ts';
import * as answers from './mock/answers.ts';

let store: Store;
let host: HTMLElement;

beforeEach(() => {
  // An address of its own, so that no test hears of another's.
  store = makeStore({ hash: '' } as Location, { replaceState: () => {}, pushState: () => {} } as unknown as History);
  host = document.createElement('div');
  vi.stubGlobal('fetch', vi.fn(async (address: string) => {
    const { pathname, searchParams } = new URL(address, 'http://localhost');
    const [, , , kind, id, what] = pathname.split('/');
    const periods = searchParams.get('periods')?.split(',') ?? [];
    const body = kind === 'squares' ? answers.square(id!, searchParams.get('taxon'), periods) : what === 'spread' ? answers.spread(id!) : id === undefined ? answers.taxa('') : answers.taxon(id);
    return body === null ? new Response('{"title":"No such species.","detail":"Try the search."}', { status: 404 }) : Response.json(body);
  }));
});
afterEach(() => vi.unstubAllGlobals());

async function shown(mount: (host: HTMLElement, store: Store) => void, part: Parameters<Store['change']>[0]): Promise<string> {
  mount(host, store);
  store.begin();
  store.change(part);
  await vi.waitFor(() => expect(host.textContent).not.toContain('Asking the server'));
  return host.textContent ?? '';
}

describe('panels', () => {
  test('without a species the page invites to choose one', async () => expect(await shown(mountSpecies, {})).toContain('Choose a species'));

  test('a species shows its marks and season', async () => {
    const text = await shown(mountSpecies, { taxon: 'T1' });
    expect(text).toContain('Wandering examplebee');
    expect(text).toContain('White tail');
  });

  test('an unknown species says what the server said and offers another try', async () => {
    expect(await shown(mountSpecies, { taxon: 'none' })).toContain('No such species. Try the search.');
    expect(host.querySelector('button')?.textContent).toBe('Try again');
  });

  test('a speed always stands with its interval and its number of squares', async () => {
    expect(await shown(mountSpread, { taxon: 'T1', panel: 'spread' })).toMatch(/17 km a year \(16 to 18; 1,\d{3} squares\)/);
    expect(host.querySelectorAll('.advance .dot').length).toBe(answers.spread('T1').points.length);
  });

  test('squares far ahead of the front are named, and what another origin would change', async () => {
    const text = await shown(mountSpread, { taxon: 'T1', panel: 'spread' });
    expect(text).toContain('Far ahead of the front, and left out of it: NY46 in 2014 (143 km ahead, 3 squares by now).');
    expect(text).toContain('origin in each of the 4 earliest squares: 16 to 17 km a year');
  });

  test('a species with too few squares gets no speed but the reason', async () => {
    const text = await shown(mountSpread, { taxon: 'T3', panel: 'spread' });
    expect(text).toContain('Not enough squares: 1 of at least 10.');
    expect(text).not.toContain('km a year');
  });

  test('the spread is not asked for before someone looks at it', async () => {
    await shown(mountSpread, { taxon: 'T1', panel: 'square' });
    expect(fetch).not.toHaveBeenCalled();
  });

  test('a square shows what supports the species, period by period', async () => {
    const text = await shown(mountSquare, { taxon: 'T3', square: 'TL45' });
    expect(text).toContain('What supports it');
    expect([...host.querySelectorAll('tbody')][0]?.textContent).toContain('2000–2009102003');
  });

  test('a reference that is no square is refused in words', () => {
    mountSquare(host, store);
    store.begin();
    host.querySelector('input')!.value = 'London';
    host.querySelector('form')!.dispatchEvent(new Event('submit', { cancelable: true }));
    expect(host.querySelector('.fault')?.textContent).toContain('That is no square');
    expect(store.state.square).toBeNull();
  });
});
