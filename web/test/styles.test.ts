import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { lightness, rampColours } from '../src/styles/ramp.ts';
import { classOf, yearClasses } from '../src/styles/yearClasses.ts';

const css = readFileSync(new URL('../src/look/colours.css', import.meta.url), 'utf8');
const stops = [...css.matchAll(/--ramp-\d: (#[0-9a-f]{6})/g)].map((m) => m[1]!);
const light = stops.slice(0, 4), dark = stops.slice(4);

describe('the ramp', () => {
  test('lightness falls all the way in the light and rises all the way in the dark, by a step that the eye can tell', () => {
    for (const classes of [2, 3, 4, 5, 6]) {
      const steps = (ramp: string[]) => rampColours(ramp, classes).map(lightness).map((l, i, all) => i === 0 ? null : l - all[i - 1]!).filter((d) => d !== null);
      expect(Math.max(...steps(light)), `light, ${classes}`).toBeLessThan(-0.05);
      expect(Math.min(...steps(dark)), `dark, ${classes}`).toBeGreaterThan(0.05);
    }
  });

  test('its ends are the given colours, and a single class takes the newest', () => {
    expect(rampColours(light, 3)[0]).toBe(light[0]);
    expect(rampColours(light, 3)[2]).toBe(light[3]);
    expect(rampColours(light, 1)).toEqual([light[3]]);
  });

});

describe('classes of years', () => {
  test('every year of every span falls into the class that holds it, and there are at most six', () => {
    for (let first = 1970; first < 2000; first++) {
      for (let last = first; last < 2030; last++) {
        const classes = yearClasses(first, last);
        expect(classes.length).toBeLessThanOrEqual(6);
        for (let year = first; year <= last; year++) {
          const { from, to } = classes[classOf(classes, year)]!;
          expect(from <= year && year <= to).toBe(true);
        }
      }
    }
  });

  test('a span of centuries still gives six at most', () => expect(yearClasses(1750, 2025).length).toBeLessThanOrEqual(6));
});
