// Land with its lakes filled: what is not sea. Northern Ireland and Ireland are one here, as border lakes are holes in neither of the two alone.
import mapshaper from 'mapshaper';
import { toBritish } from '../planes.mjs';
import { boxOf, isInside } from './nearCoast.mjs';

const WHOLE = { GB: 'GB', IM: 'IM', IE: 'IE', NI: 'IE', CI: 'CI' };

/** The polygons of the parts GB, IM, IE (with NI) and CI, dissolved, as lists of rings in longitude and latitude. */
export async function dissolved(features) {
  const wanted = features.filter((f) => f.properties.part in WHOLE)
    .map((f) => ({ ...f, properties: { part: WHOLE[f.properties.part] } }));
  const made = await mapshaper.applyCommands('-i in.json -dissolve part -o out.json format=geojson', { 'in.json': JSON.stringify({ type: 'FeatureCollection', features: wanted }) });
  return JSON.parse(made['out.json']).features.flatMap(({ properties, geometry }) =>
    (geometry.type === 'Polygon' ? [geometry.coordinates] : geometry.coordinates).map((rings) => ({ part: properties.part, rings })));
}

/** The outer rings alone; islands in lakes lie within another ring and are left out. */
export async function filledRings(features) {
  const rings = (await dissolved(features)).map(({ part, rings }) => ({ part, ring: rings[0], box: boxOf(rings[0]) }));
  const within = (inner, outer) => inner !== outer && holds(outer.box, inner.box) && isInside(inner.ring[0], outer.ring);
  return rings.filter((inner) => !rings.some((outer) => within(inner, outer))).map(({ part, ring }) => ({ part, ring }));
}

const holds = (outer, inner) => outer[0] <= inner[0] && outer[1] <= inner[1] && outer[2] >= inner[2] && outer[3] >= inner[3];

/** Square kilometres of a ring in longitude and latitude, on the plane of the British grid with its scale taken off at the ring's first point. */
export function areaKm2(ring) {
  const plane = ring.map(toBritish);
  let twice = 0;
  for (let i = 1; i < plane.length; i++) twice += (plane[i - 1][0] - plane[0][0]) * (plane[i][1] - plane[0][1]) - (plane[i][0] - plane[0][0]) * (plane[i - 1][1] - plane[0][1]);
  const fromMeridian = plane.reduce((sum, [easting]) => sum + easting - 400_000, 0) / plane.length;
  const scale = 0.9996012717 * (1 + (fromMeridian / 6_381_000) ** 2 / 2);
  return Math.abs(twice) / 2 / scale ** 2 / 1e6;
}
