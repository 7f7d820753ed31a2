import Feature from 'ol/Feature.js';
import MVT from 'ol/format/MVT.js';
import { describe, expect, test } from 'vitest';
import { onMap } from '../src/squares/planes.ts';
import { squareStyle } from '../src/styles/squares.ts';
import { tile } from './mock/tile.ts';
import { occupied } from './mock/world.ts';

const PERIODS = ['../2009', '2010/2019', '2020/..'];
const read = (bytes: Uint8Array) => new MVT({ layers: ['presence'] }).readFeatures(bytes.slice().buffer as ArrayBuffer);

describe('squares in tiles', () => {
  test('at level 8 a tile is exactly one 10 km square of the British grid', () => {
    const [x, y] = [(540_000 + 640_000) / 10_000, (1_920_000 - 260_000) / 10_000];
    const names = read(tile(occupied('T3'), ['../..'], 8, x, y)).map((f) => f.get('square') as string);
    expect(names).toEqual(['TL45']);
  });

  test('every occupied square is in some tile of level 2', () => {
    const squares = occupied('T1');
    const names = new Set<string>();
    for (let x = 0; x < 4; x++) for (let y = 0; y < 4; y++) for (const f of read(tile(squares, PERIODS, 2, x, y))) names.add(f.get('square') as string);
    expect(names.size).toBe(squares.length);
  });

  test('an arrival is painted from its first year on, and marked in that year', () => {
    const [feature] = read(tile(occupied('T3'), ['../..'], 8, 118, 166));
    const at = (year: number | null) => squareStyle({ mode: 'arrival', shading: 'latest', year, side: 10_000, classes: [{ from: 2003, to: 2003 }], colours: ['#112233'], land: '#ffffff', ink: '#000000' })(feature!, 100);
    expect(at(2002)).toBeUndefined();
    expect(at(2003)?.getStroke()?.getColor()).toBe('#000000');
    expect(at(2004)?.getStroke()?.getColor()).not.toBe('#000000');
    expect(at(null)).toBeDefined();
  });

  test('the oldest period is hollow: an outline of its colour round a paler fill', () => {
    const [feature] = read(tile(occupied('T3'), PERIODS, 8, 118, 166));
    const style = squareStyle({ mode: 'presence', shading: 'first', year: null, side: 10_000, classes: [], colours: ['#dcb13e', '#8b3054', '#2d2450'], land: '#f6f6ef', ink: '#000000' })(feature!, 100);
    expect(style?.getStroke()?.getColor()).toBe('#dcb13e');
    expect(style?.getFill()?.getColor()).not.toBe('#dcb13e');
  });

  test('a square of a pixel or two is all its own colour, and the newer lies over the older', () => {
    const paint = squareStyle({ mode: 'presence', shading: 'latest', year: null, side: 2000, classes: [], colours: ['#dcb13e', '#8b3054', '#2d2450'], land: '#f6f6ef', ink: '#000000' });
    const seen = [0, 1, 2].map((latest) => paint(new Feature({ latest }), 1340)!);
    expect(seen.map((style) => style.getFill()?.getColor())).toEqual(['#dcb13e', '#8b3054', '#2d2450']);
    expect(seen.every((style) => style.getStroke()?.getColor() === style.getFill()?.getColor())).toBe(true);
    expect(seen.map((style) => style.getZIndex())).toEqual([0, 1, 2]);
  });

  test('Irish squares are placed on the British plane', () => {
    // Belfast City Hall is J 33831 74015 ; on the British plane about E 146 km, N 529 km (from memory, not verified elsewhere).
    const [e, n] = onMap('IE', [333_831, 374_015]);
    expect(Math.round(e / 1000)).toBe(146);
    expect(Math.round(n / 1000)).toBe(529);
  });
});
