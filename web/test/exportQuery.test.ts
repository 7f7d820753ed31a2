import { describe, expect, test } from 'vitest';
import { asked, askedSize, toPath } from '../src/export/address.ts';
import { counts, EXPORT_SIZES, faultOf, faultOfBox, faultOfYears, formatsOf, fromHash, START, toHash, WHATS, type ExportQuery } from '../src/export/query.ts';
import { QUALITIES } from '../src/state.ts';

const ODD = `Exemplum d'ésprit "& co" 100% #1 + more \\ $HOME`;

describe('the address of a query', () => {
  test('the start needs no address', () => {
    expect(toHash(START)).toBe('');
    expect(fromHash('')).toEqual(START);
  });

  test('every combination of choices comes back from its address', () => {
    for (const what of WHATS) for (const format of formatsOf(what)) for (const size of EXPORT_SIZES) for (const quality of QUALITIES) for (const full of [true, false]) {
      const query: ExportQuery = { what, format, size, quality, full, taxon: ODD, group: 'bees & wasps', from: '2001', to: '2010-06-30', region: 'Scotland', box: '-3,54,-1,56', edition: 'ab12' };
      expect(fromHash(`#${toHash(query)}`)).toEqual(query);
    }
  });

  test('a format that a table does not come in is another', () => {
    expect(fromHash('what=fronts&format=dwca').format).toBe('geojson');
    expect(fromHash('format=dwca').format).toBe('csv');
  });

  test('what cannot be read takes its start value', () => {
    expect(fromHash('what=all&size=3km&quality=best&full=perhaps&taxon=')).toEqual(START);
  });
});

describe('what is wrong with a query', () => {
  test.each([[null, null], ['2005', null], ['2005', '2005'], ['2005-06-30', '2005'], [null, '2005-01-01']])('%s to %s is fine', (from, to) => expect(faultOfYears(from, to)).toBe(''));
  test.each([['soon', null], ['2005-13-01', null], ['205', null], ['2010', '2005'], ['2005-06-30', '2005-06-29']])('%s to %s is not', (from, to) => expect(faultOfYears(from, to)).not.toBe(''));
  test.each([null, '-3,54,-1,56', ' -3.5, 54 ,-1,56', '170,50,-170,60'])('the box %s is fine', (box) => expect(faultOfBox(box)).toBe(''));
  test.each(['1,2', 'a,b,c,d', '0,2,1,1', '0,,1,1', '-181,0,0,1', '0,0,1,91'])('the box %s is not', (box) => expect(faultOfBox(box)).not.toBe(''));

  test('fronts need a species, and a box that does not count is no fault', () => {
    expect(faultOf({ ...START, what: 'fronts', format: 'geojson' })).toContain('choose one');
    expect(faultOf({ ...START, format: 'pmtiles', box: 'nonsense' })).toBe('');
  });
});

describe('the question to the server', () => {
  test('only what counts for a table is asked', () => {
    const query: ExportQuery = { ...START, group: 'bees', region: 'Wales', box: '-3,54,-1,56', edition: 'ab12', quality: 'all', taxon: 'T1', from: '2001', full: true };
    expect(names({ ...query })).toEqual(['taxon', 'group', 'grid', 'quality', 'edition', 'from', 'region', 'bbox', 'format']);
    expect(names({ ...query, what: 'effort' })).toEqual(['taxon', 'group', 'grid', 'edition', 'from', 'region', 'bbox', 'format']);
    expect(names({ ...query, what: 'records' })).toEqual(['taxon', 'group', 'quality', 'from', 'region', 'bbox', 'format']);
    expect(names({ ...query, format: 'pmtiles' })).toEqual(['taxon', 'group', 'grid', 'quality', 'edition', 'periods']);
    expect(names({ ...query, what: 'fronts', format: 'geojson' })).toEqual(['taxonID', 'size', 'datetime', 'bbox', 'limit', 'f']);
  });

  test('years of fronts are days from the first to the last', () => {
    const query: ExportQuery = { ...START, what: 'fronts', format: 'geojson', taxon: 'T1', from: '2001', to: '2010' };
    expect(new Map(asked(query).parameters).get('datetime')).toBe('2001-01-01/2010-12-31');
    expect(new Map(asked({ ...query, to: null }).parameters).get('datetime')).toBe('2001-01-01/..');
  });

  test('an odd name comes back from the path as it was', () => {
    const path = toPath(asked({ ...START, taxon: ODD }));
    expect(path).not.toMatch(/['"\s$]/);
    expect(new URL(path, 'http://localhost').searchParams.get('taxon')).toBe(ODD);
  });

  test('the size of tiles is that of the rows in them', () => {
    expect(askedSize({ ...START, format: 'pmtiles', region: 'Wales' })).toEqual({ path: '/api/v1/exports/presence', parameters: [['grid', '10km'], ['quality', 'usable'], ['format', 'csv'], ['count', 'true']] });
    expect(counts({ what: 'presence', format: 'pmtiles' }).place).toBe(false);
  });
});

const names = (query: ExportQuery) => asked(query).parameters.map(([name]) => name);
