// Makes nations.geojson: the land with lakes filled, cut into nations. Only Great Britain needs cutting: along the lines between England, Scotland and Wales of
// Natural Earth (../borders/borders.geojson), lengthened at both ends into the sea, so that no sliver of coast is left over.
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import mapshaper from 'mapshaper';
import { areaKm2, filledRings } from '../land/filledLand.mjs';
import { readLandPolygons } from '../land/make-land.mjs';

const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const TOLERANCE_METRES = 200, LEAST_KM2 = 0.01;

/** From the western end of the border down the Solway and round Scotland to its eastern end. */
const ROUND_SCOTLAND = [[-3.30, 54.92], [-3.60, 54.80], [-4.50, 54.40], [-5.50, 54.20], [-14, 54.20], [-14, 62], [2, 62], [2, 56.2]];
/** From the northern end of the border out of the Dee, round Wales and up the Bristol Channel: Flat Holm is in Wales, Steep Holm and Lundy are not. */
const ROUND_WALES = [[-3.24, 53.40], [-3.60, 53.60], [-6, 53.60], [-6, 51.25], [-4.50, 51.30], [-3.50, 51.35], [-3.12, 51.36], [-2.95, 51.42], [-2.74, 51.52]];
const NAME_OF_PART = { IM: 'Isle of Man', IE: 'Ireland', NI: 'Northern Ireland' };

const feature = (nation, coordinates) => ({ type: 'Feature', properties: { nation }, geometry: { type: 'Polygon', coordinates } });
const collection = (features) => JSON.stringify({ type: 'FeatureCollection', features });
const run = async (commands, input) => JSON.parse((await mapshaper.applyCommands(commands, input))['out.json']);

/** The two lines of Great Britain, each joined from its pieces. */
async function borderLines() {
  const borders = JSON.parse(readFileSync(here('../borders/borders.geojson'), 'utf8'));
  const pieces = borders.features.find((f) => f.properties.kind === 'nation').geometry.coordinates;
  return [pieces.filter(([[, lat]]) => lat > 54), pieces.filter(([[, lat]]) => lat <= 54)].map(joined);
}

function joined(pieces) {
  const same = ([x0, y0], [x1, y1]) => Math.hypot(x1 - x0, y1 - y0) < 1e-6;
  const rest = [...pieces], line = [...rest.shift()];
  for (;;) {
    const k = rest.findIndex((p) => [p[0], p.at(-1)].some((end) => same(end, line[0]) || same(end, line.at(-1))));
    if (k < 0) return line;
    const [piece] = rest.splice(k, 1);
    if (same(piece[0], line[0]) || same(piece.at(-1), line[0])) line.reverse();
    line.push(...(same(piece[0], line.at(-1)) ? piece : [...piece].reverse()).slice(1));
  }
}

/** A closed ring of the border line and the way round the nation, which begins where the line (turned if need be) ends. */
function mask(line, round) {
  const away = (end) => Math.hypot(end[0] - round[0][0], end[1] - round[0][1]);
  const turned = away(line[0]) < away(line.at(-1)) ? [...line].reverse() : line;
  return [[...turned, ...round, turned[0]]];
}

async function britishNations(rings) {
  const [scottish, welsh] = await borderLines();
  const masks = { Scotland: mask(scottish, ROUND_SCOTLAND), Wales: mask(welsh, ROUND_WALES) };
  const land = collection(rings.map((ring) => feature('England', [ring])));
  const parts = [];
  for (const [nation, ring] of Object.entries(masks))
    parts.push(...(await run('-i in.json -clip mask.json -o out.json format=geojson', { 'in.json': land, 'mask.json': collection([feature(nation, ring)]) })).features.map((f) => ({ ...f, properties: { nation } })));
  const rest = await run('-i in.json -erase mask.json -o out.json format=geojson', { 'in.json': land, 'mask.json': collection(Object.values(masks).map((ring) => feature('', ring))) });
  return [...rest.features, ...parts];
}

/** Jersey lies south of 49.35 N, with the Minquiers and the Ecrehous; the Bailiwick of Guernsey north of it. */
const islandOf = ([, lat]) => (lat < 49.35 ? 'Jersey' : 'Guernsey');

const polygons = readLandPolygons();
const filled = await filledRings(polygons);
const fixed = polygons.filter((f) => f.properties.part === 'NI' || f.properties.part === 'IE').map((f) => feature(NAME_OF_PART[f.properties.part], [f.geometry.coordinates[0]]));
const others = filled.filter(({ part }) => part === 'IM' || part === 'CI').map(({ part, ring }) => feature(NAME_OF_PART[part] ?? islandOf(ring[0]), [ring]));
const british = await britishNations(filled.filter(({ part }) => part === 'GB').map(({ ring }) => ring));
const made = await run(
  `-i in.json -clean -dissolve nation -simplify dp interval=${TOLERANCE_METRES} keep-shapes -clean -o out.json format=geojson precision=0.0001`, { 'in.json': collection([...british, ...fixed, ...others]) });
// Rounding can make a ring touch itself; a second cleaning of the rounded coordinates splits it there.
const valid = await run('-i in.json -clean -o out.json format=geojson precision=0.00001 rfc7946', { 'in.json': JSON.stringify(made) });
for (const { properties, geometry } of valid.features) {
  const parts = geometry.type === 'Polygon' ? [geometry.coordinates] : geometry.coordinates;
  const area = (rings) => rings.reduce((sum, ring, k) => sum + (k === 0 ? 1 : -1) * areaKm2(ring), 0);
  if (geometry.type === 'MultiPolygon') geometry.coordinates = parts.filter((rings) => area(rings) >= LEAST_KM2);
  console.log(properties.nation, Math.round(parts.reduce((sum, rings) => sum + area(rings), 0)));
}
writeFileSync(here('nations.geojson'), JSON.stringify(valid));
