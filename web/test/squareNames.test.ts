import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { squareName, readSquare } from '../src/squares/names.ts';
import { outline } from '../src/squares/outline.ts';
import { onGrid, onMap } from '../src/squares/planes.ts';
import { SIZES } from '../src/state.ts';

const landSquares = readFileSync(new URL('../../gis-data/squares/land-squares.csv', import.meta.url), 'utf8').trim().split('\n').slice(1).map((line) => line.split(','));

describe('names of squares', () => {
  test('every 10 km square with land is read at the corner that the list gives, and named back', () => {
    for (const [grid, name, easting, northing] of landSquares) {
      const square = readSquare(name!)!;
      expect([square.grid, square.easting, square.northing, square.side]).toEqual([grid, Number(easting), Number(northing), 10_000]);
      expect(squareName(square.grid, [square.easting + 1, square.northing + 9_999], '10km')).toBe(name);
    }
  });

  test('every size of every corner of one 10 km square is named and read back', () => {
    for (const size of SIZES) {
      for (let e = 540_500; e < 550_000; e += 1_000) {
        for (let n = 250_500; n < 260_000; n += 1_000) {
          const name = squareName('GB', [e, n], size)!;
          const square = readSquare(name)!;
          expect(`${square.side / 1000}km`).toBe(size);
          expect(square.easting <= e && e < square.easting + square.side && square.northing <= n && n < square.northing + square.side, name).toBe(true);
        }
      }
    }
  });

  test('tetrads run up the columns from the south-west, without O', () => {
    expect(['A', 'E', 'F', 'N', 'P', 'Z'].map((letter) => readSquare(`TL45${letter}`)).map((s) => [s!.easting - 540_000, s!.northing - 250_000]))
      .toEqual([[0, 0], [0, 8_000], [2_000, 0], [4_000, 6_000], [4_000, 8_000], [8_000, 8_000]]);
    expect(readSquare('TL45O')).toBeNull();
  });

  test('what is no square is refused', () => {
    for (const text of ['', 'TL4', 'TI45', 'ZZ99', '45', 'TL456', 'TL45AA', 'London']) expect(readSquare(text), text).toBeNull();
  });

  test('an empty square of Ireland is named on the Irish Grid', () => {
    // Belfast City Hall, J 33831 74015 on the Irish Grid; published in national mapping, the British coordinates by the seven-parameter shifts.
    const onBritish = onMap('IE', [333_831, 374_015]);
    expect(squareName('IE', onGrid('IE', onBritish), '10km')).toBe('J37');
  });

  test('an Irish square turns about five degrees on the British plane', () => {
    const [a, b] = outline(readSquare('J37')!);
    const degrees = Math.atan2(b![1] - a![1], b![0] - a![0]) * 180 / Math.PI;
    expect(Math.abs(degrees)).toBeGreaterThan(4.4);
    expect(Math.abs(degrees)).toBeLessThan(5.3);
  });
});
