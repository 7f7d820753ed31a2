// Makes lakes.geojson: the holes of ../land/land.geojson, less the islands in them. Land and lakes so share every shore, point for point.
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import mapshaper from 'mapshaper';
import { areaKm2, dissolved } from '../land/filledLand.mjs';

const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const LEAST_KM2 = 1;

const text = readFileSync(here('../land/land.geojson'), 'utf8');
const land = JSON.parse(text);
const holes = (await dissolved(land.features)).flatMap(({ part, rings }) => rings.slice(1).map((ring) => ({ part, ring: [...ring].reverse() })));
const filled = holes.filter(({ ring }) => areaKm2(ring) >= LEAST_KM2 / 2)
  .map(({ part, ring }) => ({ type: 'Feature', properties: { part }, geometry: { type: 'Polygon', coordinates: [ring] } }));
const ours = { ...land, features: land.features.filter((f) => f.properties.part !== 'near') };
const made = await mapshaper.applyCommands('-i lakes.json -erase land.json -o out.json format=geojson rfc7946', {
  'lakes.json': JSON.stringify({ type: 'FeatureCollection', features: filled }), 'land.json': JSON.stringify(ours) });

const lakes = JSON.parse(made['out.json']).features.map((f) => ({ ...f, properties: { ...f.properties, km2: km2Of(f.geometry) } }));
writeFileSync(here('lakes.geojson'), JSON.stringify({ type: 'FeatureCollection', features: lakes }));
const total = lakes.reduce((sum, lake) => sum + lake.properties.km2, 0);
console.log(`${lakes.length} lakes, ${total.toFixed(0)} km2, largest ${Math.max(...lakes.map((lake) => lake.properties.km2))}`);

function km2Of(geometry) {
  const polygons = geometry.type === 'Polygon' ? [geometry.coordinates] : geometry.coordinates;
  const area = polygons.flatMap((rings) => rings.map((ring, k) => (k === 0 ? areaKm2(ring) : -areaKm2(ring)))).reduce((a, b) => a + b, 0);
  return Number(area.toFixed(2));
}
