// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { printAddress } from '../src/api.ts';
import { mountForecast } from '../src/panels/forecast.ts';
import { mountSearch } from '../src/panels/search.ts';
import { mountSeason } from '../src/panels/season.ts';
import { mountSpecies } from '../src/panels/species.ts';
import { mountSpread } from '../src/panels/spread.ts';
import { mountSquare } from '../src/panels/square.ts';
import { mountSquareCompare } from '../src/panels/squareCompare.ts';
import { completenessInWords } from '../src/panels/squareKnown.ts';
import { mountSquareSizes } from '../src/panels/squareSizes.ts';
import { byYear } from '../src/panels/squaresOverTime.ts';
import { mountTakeAway, sizeInWords } from '../src/panels/takeAway.ts';
import { makeStore, type Store } from '../src/store.ts';
import * as answers from './mock/answers.ts';

/** Waits for what a busy machine may take its time for. */
const soon = (check: () => void) => vi.waitFor(check, { timeout: 60_000 });

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
      : kind === 'squares' && what === 'change' ? answers.squareChange(id!, searchParams.get('from')!, searchParams.get('to')!)
        : kind === 'squares' ? answers.square(id!, searchParams.get('taxon'), periods) : what === 'spread' ? answers.spread(id!) : what === 'season' ? answers.season(id!) : what === 'forecast' ? answers.forecast() : id === undefined ? answers.taxa('') : answers.taxon(id);
    return body === null ? new Response('{"title":"No such species.","detail":"Try the search."}', { status: 404 }) : Response.json(body);
  }));
});
afterEach(() => vi.unstubAllGlobals());

async function shown(mount: (host: HTMLElement, store: Store) => void, part: Parameters<Store['change']>[0]): Promise<string> {
  mount(host, store);
  store.begin();
  store.change(part);
  await soon(() => expect(host.textContent).not.toContain('Asking the server'));
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
    await soon(() => expect(host.querySelectorAll('.advance .dot circle').length).toBe(answers.spread('T1').points.length));
  });

  test('squares far ahead of the front are named, and what another origin would change', async () => {
    const text = await shown(mountSpread, { taxon: 'T1', panel: 'spread' });
    expect(text).toContain('1 square found far ahead of the front and left out of it.');
    expect(host.querySelector('.jumps tbody tr')?.textContent).toBe('NY4620141431213');
    expect(text).toContain('origin in each of the 4 earliest squares: 16 to 17 km a year');
  });

  test('a species with too few squares gets no speed but the reason', async () => {
    const text = await shown(mountSpread, { taxon: 'T3', panel: 'spread' });
    expect(text).toContain('Not enough squares: 1 of at least 10.');
    expect(text).not.toContain('km a year');
  });

  test('new squares are counted year by year, years without one too', () => {
    const square = (year: number, distanceKm: number) => ({ square: 'SU31', year, distanceKm });
    expect(byYear([square(2003, 12), square(2001, 5), square(2001, 9)])).toEqual([
      { year: 2001, fresh: 2, sofar: 2, farthestKm: 9 }, { year: 2002, fresh: 0, sofar: 2, farthestKm: null }, { year: 2003, fresh: 1, sofar: 3, farthestKm: 12 },
    ]);
  });

  test('an aggregate leads to its members and a member to its aggregate, and whose map has which records is said', async () => {
    expect(await shown(mountSpecies, { taxon: 'TA' })).toContain('are on no member’s map');
    [...host.querySelectorAll('button')].find((b) => b.textContent === 'Settled examplebee')!.click();
    await soon(() => expect(host.textContent).toContain('Records that name only the aggregate are on its map and not on this one.'));
    expect(store.state.taxon).toBe('T2');
  });

  test('the season stands stage by stage as a chart and in figures, with the weeks that the list expects', async () => {
    const text = await shown(mountSeason, { taxon: 'T1', panel: 'species' });
    await soon(() => expect(host.querySelectorAll('.season .bar rect').length).toBe(6));
    expect(host.querySelector('.season')?.getAttribute('aria-label')).toContain('worker in weeks 20–23, most in week 21; queen in weeks 12–14');
    expect([...host.querySelectorAll('tbody tr')].map((row) => row.textContent)).toContain('worker4020–232116–44');
    expect(text).toContain('Left out: 5 records dated to more than a week.');
    expect(text).toContain('31 records of 60 name a plant.');
  });

  test('marks stand beside those of what it is taken for, by sex and caste', async () => {
    await shown(mountSeason, { taxon: 'T1', panel: 'species' });
    const rows = [...host.querySelectorAll('.tell tbody tr')].map((row) => [...row.children].map((cell) => cell.textContent));
    expect(rows).toEqual([['queen', 'white tail', 'the list says nothing'], ['worker', 'ginger thorax', 'black thorax']]);
    host.querySelector<HTMLElement>('h4 ~ p button.link')!.click();
    expect(store.state.taxon).toBe('T2');
  });

  test('past forecasts stand with every score against both references', async () => {
    const text = await shown(mountForecast, { taxon: 'T1', panel: 'forecast' });
    expect(text).toContain('1 of 1 past forecasts did better both');
    expect([...host.querySelectorAll('.hindcast tbody td')].map((cell) => cell.textContent)).toEqual(['0.041', '12 %', '3 %', '0.190', '0.87', '1.1', '480']);
    expect(text).toContain('2011–2012: Not enough squares: 4 of at least 20.');
  });

  test('a square in two periods tells gained, lost and kept species apart from what nobody could have found', async () => {
    const text = await shown(mountSquareCompare, { square: 'TL45', compare: ['1990/1999', '2010/2019'] });
    expect([...host.querySelectorAll('h5')].map((h) => h.textContent)).toEqual(['Gained 1', 'Still there 1', 'Not visited since 1', 'Visits']);
    expect(text).toContain('Invented bees: 4 visits in 1990–1999, 9 visits in 2010–2019.');
    expect(text).toContain('Invented flies: 2 visits in 1990–1999, not visited in 2010–2019.');
  });

  test('periods to compare are refused in words before the server is asked', async () => {
    mountSquareCompare(host, store);
    store.begin();
    store.change({ square: 'TL45' });
    host.querySelectorAll('input')[0]!.value = 'long ago';
    host.querySelector('form')!.dispatchEvent(new Event('submit', { cancelable: true }));
    expect(host.querySelector('.fault')?.textContent).toContain('is not a period');
    expect(store.state.compare).toEqual([]);
    host.querySelectorAll('input')[0]!.value = '1990/1999';
    host.querySelectorAll('input')[1]!.value = '2010/2019';
    host.querySelector('form')!.dispatchEvent(new Event('submit', { cancelable: true }));
    await soon(() => expect(host.textContent).toContain('Still there'));
    expect(store.state.compare).toEqual(['1990/1999', '2010/2019']);
  });

  test('another size of square keeps the place, and leads back', () => {
    mountSquareSizes(host, store);
    store.begin();
    store.change({ square: 'TL4558', size: '1km' });
    const press = (words: string) => [...host.querySelectorAll('button')].find((b) => b.textContent === words)!.click();
    press('10 km');
    expect([store.state.square, store.state.size]).toEqual(['TL45', '10km']);
    press('1 km');
    expect(store.state.square).toBe('TL4558');
    store.change({ square: 'TL46' });
    press('1 km');
    expect(store.state.square).toBe('TL4565');
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
    await soon(() => expect(host.querySelectorAll('.visits .bar rect').length).toBe(4));
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
    await soon(() => expect(host.querySelector('.fault')?.textContent).toContain('That is no square'));
    expect(store.state.square).toBeNull();
  });

  test('a place gives its square in the size that the map shows', async () => {
    store.change({ size: '1km' });
    write('Lond');
    await soon(() => expect(store.state.square).toBe('TQ3080'));
  });

  test('a device that tells no position says why', async () => {
    mountSquare(host, store);
    store.begin();
    ([...host.querySelectorAll('button')].find((b) => b.textContent === 'Where I am')!).click();
    await soon(() => expect(host.querySelector('.fault')?.textContent).toContain('Write the square instead'));
  });

  test('what can be taken away is told with its size, once it is looked at', async () => {
    mountTakeAway(host, store);
    store.begin();
    store.change({ taxon: 'T1' });
    expect(fetch).not.toHaveBeenCalled();
    const fold = host.querySelector('details')!;
    fold.open = true;
    fold.dispatchEvent(new Event('toggle'));
    await soon(() => expect(host.textContent).toContain('1,204 rows, about 87 kB'));
    expect(host.textContent).toContain('not frozen');
    const links = [...host.querySelectorAll('a')].map((a) => a.getAttribute('href')!);
    for (const ending of ['map.svg', 'map.png', 'map.pdf', 'style.json', 'new-squares.atom']) expect(links.some((href) => href.includes(`/taxa/T1/${ending}?`))).toBe(true);
    for (const format of ['csv', 'geojson', 'gpkg', 'parquet']) expect(links.some((href) => href.startsWith('/api/v1/exports/presence?') && href.endsWith(`format=${format}`))).toBe(true);
  });
});

describe('a long list of species', () => {
  const FIVE_THOUSAND = Array.from({ length: 5000 }, (_, i) => ({ id: `S${i}`, scientificName: `Exemplum number${i}`, vernacularName: null, records: 5000 - i }));

  test('shows a few lines of it and says how many there are', async () => {
    vi.stubGlobal('fetch', vi.fn(async (address: string) => {
      const query = new URL(address, 'http://localhost').searchParams;
      const found = FIVE_THOUSAND.filter((t) => t.scientificName.includes(query.get('q')!));
      return Response.json({ taxa: found.slice(0, Number(query.get('limit'))), found: found.length });
    }));
    document.body.append(host);
    mountSearch(host, store);
    const input = host.querySelector('input')!;
    input.focus();
    input.value = 'Exemplum';
    input.dispatchEvent(new Event('input'));
    await soon(() => expect(host.querySelectorAll('[role=option]').length).toBe(12));
    expect(host.querySelector('[role=listbox]')!.children.length).toBe(13);
    expect(host.querySelector('[role=status]')?.textContent).toBe('12 of 5,000 shown. Type more of the name to find the others.');
    input.value = 'number4321';
    input.dispatchEvent(new Event('input'));
    await soon(() => expect(host.querySelectorAll('[role=option]').length).toBe(1));
    expect(host.querySelector('[role=status]')?.textContent).toBe('');
    // The Escape key closes the list and leaves the text: a box that emptied itself would search again.
    const escape = new KeyboardEvent('keydown', { key: 'Escape', cancelable: true });
    input.dispatchEvent(escape);
    expect(escape.defaultPrevented).toBe(true);
    expect(host.querySelector<HTMLElement>('[role=listbox]')!.hidden).toBe(true);
    host.remove();
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
