// The styles that the server writes, kept by its tests, against the validator of the MapLibre style specification.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { validateStyleMin } from '@maplibre/maplibre-gl-style-spec';
import { expect, test } from 'vitest';

const KEPT = fileURLToPath(new URL('../../tests/RangeMap.Maps.Tests/Styles/Golden/', import.meta.url));
const styles = readdirSync(KEPT).filter((name) => name.endsWith('.json'));
const read = (name: string) => JSON.parse(readFileSync(KEPT + name, 'utf8')) as Parameters<typeof validateStyleMin>[0];

test('there are styles to look at', () => expect(styles.length).toBeGreaterThan(3));

test.each(styles)('%s is a valid style', (name) => expect(validateStyleMin(read(name))).toEqual([]));

test('the validator finds a fault', () => {
  const style = read(styles[0]!);
  (style.layers[0] as { type: string }).type = 'heat';
  expect(validateStyleMin(style).length).toBeGreaterThan(0);
});
