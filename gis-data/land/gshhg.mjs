// The shore of GSHHG 2.3.7 (full detail) as closed rings, by way of the program gmt (Debian packages gmt and gmt-gshhg-full).
import { execFileSync } from 'node:child_process';
import { tmpdir } from 'node:os';

/** West, east, south, north in degrees: the islands with some sea round them. */
const WINDOW = '-15/6/47/62';
const LAND = 1;

/** Rings of land in longitude and latitude. Coasts that the window cuts (the continent, Norway) are left out: they do not close. */
export function readShoreRings() {
  // gmt leaves a history file where it runs.
  const text = execFileSync('gmt', ['coast', `-R${WINDOW}`, '-Df', '-W1', '-M'], { cwd: tmpdir(), maxBuffer: 1 << 28, encoding: 'utf8' });
  return joined(pieces(text));
}

/** gmt prints the shore in pieces, each under a line "> Shore Bin # n, Level k", cut at whole degrees. */
function pieces(text) {
  const found = [];
  let current = null;
  for (const line of text.split('\n')) {
    if (line.startsWith('>')) {
      current = Number(/Level (\d)/.exec(line)?.[1]) === LAND ? [] : null;
      if (current !== null) found.push(current);
    } else if (current !== null && line !== '') {
      current.push(line.split('\t').map(Number));
    }
  }
  return found;
}

const key = ([lon, lat]) => `${lon.toFixed(6)},${lat.toFixed(6)}`;

/** Joins the pieces where one ends and another begins. */
function joined(parts) {
  const byStart = new Map(parts.map((part) => [key(part[0]), part]));
  const rings = [], used = new Set();
  for (const part of parts) {
    if (used.has(part)) continue;
    const ring = [...part];
    used.add(part);
    while (key(ring.at(-1)) !== key(ring[0])) {
      const next = byStart.get(key(ring.at(-1)));
      if (next === undefined || used.has(next)) break;
      used.add(next);
      ring.push(...next.slice(1));
    }
    if (ring.length > 3 && key(ring.at(-1)) === key(ring[0])) rings.push([...ring.slice(0, -1), ring[0]]);
  }
  return rings;
}
