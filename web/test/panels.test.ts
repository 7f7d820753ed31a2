// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { printAddress } from '../src/api.ts';
import { mountSpecies } from '../src/panels/species.ts';
import { mountSpread } from '../src/panels/spread.ts';
import { mountSquare } from '../src/panels/square.ts';
import { completenessInWords } from '../src/panels/squareKnown.ts';
import { mountTakeAway, sizeInWords } from '../src/panels/takeAway.ts';
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
    const body = kind === 'places' ? answers.places(searchParams.get('q')!) : kind === 'about' ? answers.about() : kind === 'editions' ? { editions: [] } : kind === 'exports' ? { rows: 1204, atMost: false, bytes: 87_300 }
      : kind === 'squares' ? answers.square(id!, searchParams.get('taxon'), periods) : what === 'spread' ? answers.spread(id!) : id === undefined ? answers.taxa('') : answers.taxon(id);
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

  test('what is new, how well it is known and what is missing stand in words', async () => {
    const text = await shown(mountSquare, { taxon: 'T3', square: 'TL45' });
    expect(text).toContain('Invented bees: well known; 12 species on 30 visits. At least 14 must be there (95 % interval 12 to 22).');
    expect(text).toContain('Exempla altera');
    expect(text).toContain('Found since 2016 in 5 of the 8 squares');
    expect(host.querySelectorAll('.visits .bar').length).toBe(4);
    expect(text).toContain('TL35 9');
    expect(host.querySelector('a[href*="list.html"]')?.getAttribute('href')).toBe('/api/v1/squares/TL45/list.html?quality=usable');
  });

  const write = (text: string) => {
    mountSquare(host, store);
    store.begin();
    host.querySelector('input')!.value = text;
    host.querySelector('form')!.dispatchEvent(new Event('submit', { cancelable: true }));
  };

  test('what is neither a square nor a place is refused in words', async () => {
    write('under the oak');
    await vi.waitFor(() => expect(host.querySelector('.fault')?.textContent).toContain('That is no square'));
    expect(store.state.square).toBeNull();
  });

  test('a place gives its square in the size that the map shows', async () => {
    store.change({ size: '1km' });
    write('Lond');
    await vi.waitFor(() => expect(store.state.square).toBe('TQ3080'));
  });

  test('a device that tells no position says why', async () => {
    mountSquare(host, store);
    store.begin();
    ([...host.querySelectorAll('button')].find((b) => b.textContent === 'Where I am')!).click();
    await vi.waitFor(() => expect(host.querySelector('.fault')?.textContent).toContain('Write the square instead'));
  });

  test('what can be taken away is told with its size, once it is looked at', async () => {
    mountTakeAway(host, store);
    store.begin();
    store.change({ taxon: 'T1' });
    expect(fetch).not.toHaveBeenCalled();
    const fold = host.querySelector('details')!;
    fold.open = true;
    fold.dispatchEvent(new Event('toggle'));
    await vi.waitFor(() => expect(host.textContent).toContain('1,204 rows, about 87 kB'));
    expect(host.textContent).toContain('not frozen');
    const links = [...host.querySelectorAll('a')].map((a) => a.getAttribute('href')!);
    for (const ending of ['map.svg', 'map.png', 'map.pdf', 'style.json', 'new-squares.atom']) expect(links.some((href) => href.includes(`/taxa/T1/${ending}?`))).toBe(true);
    for (const format of ['csv', 'geojson', 'gpkg', 'parquet']) expect(links.some((href) => href.startsWith('/api/v1/exports/presence?') && href.endsWith(`format=${format}`))).toBe(true);
  });
});

describe('words of squares and downloads', () => {
  const known = { group: 'glimmers', visits: 3, species: 2, estimate: null, low: null, high: null, refused: 'Not enough visits: 3 of at least 5.', coverage: 0.4, wellSurveyed: false };

  test('where there is no estimate its reason stands in its place', () =>
    expect(completenessInWords(known)).toBe('Glimmers: hardly known; 2 species on 3 visits. Not enough visits: 3 of at least 5.'));

  test('a size is told with what it counts', () => {
    expect(sizeInWords({ rows: 0, atMost: false, bytes: 0 })).toBe('no rows');
    expect(sizeInWords({ rows: 1, atMost: true, bytes: 640 })).toBe('at most 1 row, about 640 bytes');
    expect(sizeInWords({ rows: 9, atMost: false, bytes: 1_240_000 })).toBe('9 rows, about 1.2 MB');
  });

  test('the printed map is the map as shown', () => {
    const state = { ...store.state, taxon: 'T1', periods: ['../1999', '2010/..'] };
    expect(printAddress(state, null, 'svg')).toBe('/taxa/T1/map.svg?grid=10km&quality=usable&periods=..%2F1999,2010%2F..');
    expect(printAddress({ ...state, mode: 'arrival' }, null, 'pdf')).toContain('kind=arrivals');
    expect(printAddress({ ...state, mode: 'change' }, null, 'pdf')).toBeNull();
    expect(printAddress({ ...state, mode: 'change' }, { taxon: 'T1', size: '10km', quality: 'usable', from: '1990/1999', to: '2010/2019' }, 'png')).toContain('kind=change&from=1990%2F1999&to=2010%2F2019');
  });
});
