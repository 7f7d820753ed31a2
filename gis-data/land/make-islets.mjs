// Makes islets.geojson: the islands, islets and reefs that the OpenStreetMap-derived coast leaves out and GSHHG has, each with the part of the land
// that it lies nearest to.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { toBritish } from '../planes.mjs';
import { readShoreRings } from './gshhg.mjs';
import { readLandPolygons } from './make-land.mjs';
import { CoastIndex, boxOf, isInside } from './nearCoast.mjs';

/** A ring nearer than this to the other coast is taken for the same land, drawn with GSHHG's error (a vertex is off by 71 to 140 m in the median). */
const SAME_LAND_METRES = 100;
/** No islet of the islands lies further out than this from any other land. */
const FURTHEST_METRES = 100_000;

/**
 * Round the Channel Islands with the Minquiers and the Ecrehous (Jersey's by the judgment of the International Court of Justice of 17 November 1953),
 * without Chausey and the Roches Douvres: drawn by hand, longitude and latitude. Nearness would give half of the Minquiers to France.
 */
const CHANNEL_ISLANDS = [
  [-2.45, 48.92], [-1.93, 48.92], [-1.88, 49.26], [-1.93, 49.40], [-2.05, 49.60], [-2.05, 50.00], [-2.95, 50.00], [-2.95, 49.30], [-2.45, 48.92],
];

/** The islets as rings in longitude and latitude, with their parts; with `foreign` also those nearest to France and other countries (part `near`). */
export function findIslets({ foreign = false } = {}) {
  const land = readLandPolygons({ allForeign: true });
  const outer = land.map((f) => f.geometry.coordinates[0].map(toBritish));
  const coast = new CoastIndex();
  land.forEach((f, k) => coast.add(outer[k], f.properties.part));
  const boxes = outer.map(boxOf);

  const isNew = (ring) => !ring.some((point) => coast.nearest(point, SAME_LAND_METRES) !== null)
    && !outer.some((other, k) => overlap(boxes[k], boxOf(ring)) && (isInside(ring[0], other) || isInside(other[0], ring)));
  return readShoreRings()
    .map((degrees) => ({ degrees, ring: degrees.map(toBritish) }))
    .filter(({ ring }) => isNew(ring))
    .map(({ degrees, ring }) => ({ part: partOf(degrees[0], coast.nearest(ring[0], FURTHEST_METRES)), ring: degrees }))
    .filter(({ part }) => part !== null && (foreign || part !== 'near'));
}

function partOf(place, nearest) {
  if (isInside(place, CHANNEL_ISLANDS)) return 'CI';
  return nearest?.label === 'CI' ? 'near' : nearest?.label ?? null;
}

const overlap = (a, b) => a[0] <= b[2] && b[0] <= a[2] && a[1] <= b[3] && b[1] <= a[3];
const rounded = (ring) => ring.map(([lon, lat]) => [Number(lon.toFixed(4)), Number(lat.toFixed(4))]);

function main() {
  const parts = new Map();
  for (const { part, ring } of findIslets()) parts.set(part, [...parts.get(part) ?? [], [rounded(ring)]]);
  const features = [...parts].sort().map(([part, coordinates]) => ({ type: 'Feature', properties: { part }, geometry: { type: 'MultiPolygon', coordinates } }));
  for (const { properties, geometry } of features) console.log(properties.part, geometry.coordinates.length);
  writeFileSync(fileURLToPath(new URL('islets.geojson', import.meta.url)), JSON.stringify({ type: 'FeatureCollection', features }));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) main();
