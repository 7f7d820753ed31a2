// Makes land-squares.csv: every 10 km square that land touches, each island group on its own grid, with its share of land and its 1 km squares.
// The land is the full-detail coast before any simplifying, lakes filled, and the islets of GSHHG that this coast leaves out.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { filledRings } from '../land/filledLand.mjs';
import { findIslets } from '../land/make-islets.mjs';
import { readLandPolygons } from '../land/make-land.mjs';
import { toBritish, toIrish, toChannelIslands } from '../planes.mjs';
import { addAreas } from './clipped.mjs';
import { squareName } from './names.mjs';
import { squaresTouched } from './touched.mjs';

const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const HECTAD = 10_000, MONAD = 1_000, ALL_MONADS = (1n << 100n) - 1n;
const GRID_OF = { GB: ['GB', toBritish], IM: ['GB', toBritish], IE: ['IE', toIrish], NI: ['IE', toIrish], CI: ['CI', toChannelIslands] };

const coast = (await filledRings(readLandPolygons())).map((land) => ({ ...land, source: 'coast' }));
const islets = findIslets().map((islet) => ({ ...islet, source: 'islet' }));

/** By grid: the 1 km squares of each 10 km square as bits (the first the south-western, then eastwards), its area of land, and whether the coast itself touches it. */
const grids = new Map([['CI', new Map()], ['GB', new Map()], ['IE', new Map()]]);
const hectadsOf = (grid, column, row) => {
  const hectads = grids.get(grid), name = `${column},${row}`;
  if (!hectads.has(name)) hectads.set(name, { easting: column * HECTAD, northing: row * HECTAD, monads: 0n, area: 0, source: 'islet' });
  return hectads.get(name);
};

for (const { part, ring: degrees, source } of [...coast, ...islets]) {
  const [grid, project] = GRID_OF[part];
  const ring = degrees.map(project);
  for (const [easting, northing] of squaresTouched([ring], MONAD)) {
    const hectad = hectadsOf(grid, Math.floor(easting / HECTAD), Math.floor(northing / HECTAD));
    hectad.monads |= 1n << BigInt((easting - hectad.easting) / MONAD + 10 * (northing - hectad.northing) / MONAD);
    if (source === 'coast') hectad.source = source;
  }
  const areas = new Map();
  addAreas(ring, HECTAD, areas);
  for (const [name, area] of areas) if (grids.get(grid).has(name)) grids.get(grid).get(name).area += area;
}

/** Per cent to three decimals, 10 m2 in a thousand million; a square that land only just touches is not left with nothing. */
const percent = (area) => Math.min(100, Math.max(0.001, area / HECTAD ** 2 * 100)).toFixed(3).replace(/\.?0+$/, '');
const bits = (monads) => (monads === ALL_MONADS ? 'all' : monads.toString(16));

const rows = [...grids].flatMap(([grid, hectads]) => [...hectads.values()]
  .map((h) => ({ ...h, name: squareName(grid, h.easting, h.northing) }))
  .filter((h) => h.name !== null)
  .sort((a, b) => (a.name < b.name ? -1 : 1))
  .map((h) => [grid, h.name, h.easting, h.northing, percent(h.area), h.source, bits(h.monads)].join(',')));
writeFileSync(here('land-squares.csv'), ['grid,square,easting,northing,land,source,monads', ...rows, ''].join('\n'));
for (const grid of grids.keys()) console.log(grid, rows.filter((r) => r.startsWith(`${grid},`)).length);
