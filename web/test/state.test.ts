import { describe, expect, test } from 'vitest';
import { fromHash, MODES, OVERLAYS, PANELS, QUALITIES, SHADINGS, SIZES, START, toHash, type ViewState } from '../src/state.ts';

describe('the address of a view', () => {
  test('the start needs no address', () => {
    expect(toHash(START)).toBe('');
    expect(fromHash('')).toEqual(START);
    expect(fromHash('#')).toEqual(START);
  });

  test('every combination of choices comes back from its address', () => {
    for (const size of SIZES) for (const mode of MODES) for (const shading of SHADINGS) for (const quality of QUALITIES) for (const panel of PANELS) for (const overlay of OVERLAYS) {
      const state: ViewState = { ...START, taxon: 'T1', size, mode, shading, quality, panel, overlay, compare: ['1990/1999', '2010/..'], year: 2012, square: 'TL45', centre: [123_456, 654_321], zoom: 4.25 };
      expect(fromHash(`#${toHash(state)}`)).toEqual(state);
    }
  });

  test('awkward names and periods come back', () => {
    const state: ViewState = { ...START, taxon: 'Exemplum α & β/γ #1, 100% + more', periods: ['../1999-12-31', '2000-01/2000-06', '2001/..'] };
    expect(fromHash(toHash(state))).toEqual(state);
  });

  test('a readable address keeps periods as they are written', () => {
    expect(toHash({ ...START, periods: ['../2009', '2010/..'] })).toBe('periods=../2009,2010/..');
    expect(toHash({ ...START, overlay: 'arrows', compare: ['1990/1999', '2010/2019'] })).toBe('over=arrows&compare=1990/1999,2010/2019');
  });

  test('what cannot be read takes its start value', () => {
    expect(fromHash('grid=3km&mode=x&year=soon&at=1,2&quality=&panel=?&periods=,&over=clouds&compare=2010/2019')).toEqual(START);
  });

  test("a scheme's own periods are those of an address without periods, and always stand in it", () => {
    const own = ['1990/1999', '2000/..'];
    expect(fromHash('', own).periods).toEqual(own);
    for (const periods of [own, START.periods, ['../..']]) {
      const hash = toHash({ ...START, periods }, own);
      expect(hash).toContain('periods=');
      expect(fromHash(hash, own).periods).toEqual(periods);
      // The link means the same at a scheme that begins with others.
      expect(fromHash(hash, ['2005']).periods).toEqual(periods);
    }
  });
});
