// Makes land-squares.csv: every 10 km square that any land of the full-detail coast touches, each island group on its own grid.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readLandPolygons } from '../land/make-land.mjs';
import { toBritish, toIrish, toChannelIslands } from '../planes.mjs';
import { squareName } from './names.mjs';
import { squaresTouched } from './touched.mjs';

const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const SIDE = 10_000;
const GRID_OF = { GB: ['GB', toBritish], IM: ['GB', toBritish], IE: ['IE', toIrish], NI: ['IE', toIrish], CI: ['CI', toChannelIslands] };

const found = new Map();
for (const { properties, geometry } of readLandPolygons()) {
  if (!(properties.part in GRID_OF)) continue;
  const [grid, project] = GRID_OF[properties.part];
  const rings = geometry.coordinates.map((ring) => ring.map(project));
  for (const [easting, northing] of squaresTouched(rings, SIDE)) {
    const name = squareName(grid, easting, northing);
    if (name !== null) found.set(`${grid},${name}`, `${grid},${name},${easting},${northing}`);
  }
}

const rows = [...found.values()].sort();
writeFileSync(here('land-squares.csv'), ['grid,square,easting,northing', ...rows, ''].join('\n'));
for (const grid of ['GB', 'IE', 'CI']) console.log(grid, rows.filter((r) => r.startsWith(`${grid},`)).length);
