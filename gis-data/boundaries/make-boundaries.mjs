// Makes boundaries.csv: the rims of the parts of the sea and land that lie nearest to Ireland, to the Channel Islands and to other countries. What is in none of them lies
// nearest to Great Britain or Man. And ../../tests/RangeMap.Grids.Tests/Land/foreign-shore.csv: the foreign points from which these rims were found.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Delaunay } from 'd3-delaunay';
import mapshaper from 'mapshaper';
import proj4 from 'proj4';
import { filledRings } from '../land/filledLand.mjs';
import { findIslets } from '../land/make-islets.mjs';
import { readLandPolygons } from '../land/make-land.mjs';

const here = (name) => fileURLToPath(new URL(name, import.meta.url));
/** A plane on which nearness is compared: a conic one, whose scale over the region differs by less than 0.5 % and nearby hardly at all. */
const plane = proj4('+proj=lcc +lat_0=55 +lon_0=-4 +lat_1=51 +lat_2=59.5 +ellps=GRS80 +units=m +no_defs');
/** West, south, east, north in degrees: all places of the lettered grids. */
const WINDOW = [-16, 48, 6, 63];
const SPACING_METRES = 300, SIMPLIFIED_METRES = 250;
const REGION_OF = { GB: 'GB', IM: 'GB', IE: 'IE', NI: 'IE', CI: 'CI', near: 'none' };

/** Points of every shore, at most the spacing apart, as [x, y] with the region and the place of each. */
async function shorePoints() {
  const polygons = readLandPolygons({ allForeign: true });
  const foreign = polygons.filter((f) => f.properties.part === 'near').map((f) => ({ part: 'near', ring: f.geometry.coordinates[0] }));
  const points = [];
  for (const { part, ring } of [...await filledRings(polygons), ...foreign, ...findIslets({ foreign: true })])
    for (const point of densified(ring.filter(isNear).map((place) => plane.forward(place)))) points.push({ point, region: REGION_OF[part] });
  return points;
}

const isNear = ([lon, lat]) => lon > WINDOW[0] - 1 && lon < WINDOW[2] + 1 && lat > WINDOW[1] - 1 && lat < WINDOW[3] + 1;

function* densified(line) {
  for (let i = 0; i < line.length; i++) {
    yield line[i];
    if (i + 1 === line.length) return;
    const [x0, y0] = line[i], [x1, y1] = line[i + 1];
    const pieces = Math.ceil(Math.hypot(x1 - x0, y1 - y0) / SPACING_METRES);
    // A long gap is no shore but where points outside the window were left out.
    if (pieces < 100) for (let k = 1; k < pieces; k++) yield [x0 + (x1 - x0) * k / pieces, y0 + (y1 - y0) * k / pieces];
  }
}

const shore = await shorePoints();
const delaunay = Delaunay.from(shore.map(({ point }) => point));
// The plane's box round the window, whose northern and southern rims bend.
const corners = [[WINDOW[0], WINDOW[1]], [WINDOW[2], WINDOW[1]], [WINDOW[0], WINDOW[3]], [WINDOW[2], WINDOW[3]], [-4, WINDOW[1]], [-4, WINDOW[3]]].map((c) => plane.forward(c));
const [xs, ys] = [0, 1].map((axis) => corners.map((corner) => corner[axis]));
const voronoi = delaunay.voronoi([Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]);

const cells = shore.map(({ region }, k) => ({ type: 'Feature', properties: { region }, geometry: { type: 'Polygon', coordinates: [voronoi.cellPolygon(k)] } }))
  .filter((f) => f.geometry.coordinates[0] !== null);
const run = async (commands, features) =>
  JSON.parse((await mapshaper.applyCommands(`-i in.json ${commands} -o out.json format=geojson`, { 'in.json': JSON.stringify({ type: 'FeatureCollection', features }) }))['out.json']).features;
const regions = await run(`-dissolve region -simplify dp interval=${SIMPLIFIED_METRES} planar -filter 'region !== "GB"' -explode`, cells);
const inDegrees = regions.map((f) => ({ ...f, geometry: { type: 'Polygon', coordinates: f.geometry.coordinates.map((ring) => ring.map((point) => plane.inverse(point))) } }));
const inWindow = await run(`-clip bbox=${WINDOW.join(',')} -explode`, inDegrees);

const rings = inWindow.flatMap(({ properties, geometry }) => geometry.coordinates.map((ring) => ({ region: properties.region, ring })));
const rows = rings.flatMap(({ region, ring }, k) => ring.map(([lon, lat]) => [region, k + 1, lat.toFixed(4), lon.toFixed(4)].join(',')));
writeFileSync(here('boundaries.csv'), ['region,ring,latitude,longitude', ...rows, ''].join('\n'));
for (const { region, ring } of rings) console.log(region, ring.length);

const atRim = (k) => [...voronoi.neighbors(k)].some((other) => shore[other].region !== shore[k].region);
const foreign = shore.filter(({ region }, k) => region === 'none' && atRim(k)).map(({ point }) => plane.inverse(point));
writeFileSync(here('../../tests/RangeMap.Grids.Tests/Land/foreign-shore.csv'), ['latitude,longitude', ...foreign.map(([lon, lat]) => `${lat.toFixed(4)},${lon.toFixed(4)}`), ''].join('\n'));
console.log('points', shore.length, 'foreign at the rim', foreign.length);
