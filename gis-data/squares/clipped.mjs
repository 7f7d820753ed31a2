// How much of each square of a lattice lies within a ring, by cutting the ring into columns and the columns into rows (Sutherland and Hodgman,
// Communications of the ACM 17, 1974). A ring that leaves a cell and comes back is joined along the cut, back and forth: that has no area.

/** Adds to `areas` (by "column,row") the square metres of the ring in each square. */
export function addAreas(ring, side, areas) {
  for (const [column, strip] of cut(ring, 0, side)) {
    for (const [row, cell] of cut(strip, 1, side)) {
      const name = `${column},${row}`;
      areas.set(name, (areas.get(name) ?? 0) + area(cell));
    }
  }
}

/** The pieces of a closed ring between the lattice lines across an axis (0 east, 1 north), by the number of the strip. */
function* cut(ring, axis, side) {
  const along = ring.map((point) => point[axis] / side);
  let least = Infinity, most = -Infinity;
  for (const value of along) { least = Math.min(least, value); most = Math.max(most, value); }
  let rest = ring;
  for (let strip = Math.floor(least); strip < most; strip++) {
    const line = (strip + 1) * side;
    const piece = half(rest, axis, line, -1);
    if (piece.length > 3) yield [strip, piece];
    rest = half(rest, axis, line, 1);
  }
}

/** The part of a closed ring on one side of a line across an axis. */
function half(ring, axis, line, sign) {
  const kept = [];
  for (let i = 1; i < ring.length; i++) {
    const from = sign * (ring[i - 1][axis] - line), to = sign * (ring[i][axis] - line);
    if (from >= 0) kept.push(ring[i - 1]);
    if (from >= 0 !== to >= 0) {
      const part = from / (from - to);
      kept.push([0, 1].map((k) => ring[i - 1][k] + part * (ring[i][k] - ring[i - 1][k])));
    }
  }
  if (kept.length > 0) kept.push(kept[0]);
  return kept;
}

function area(ring) {
  const [x0, y0] = ring[0];
  let twice = 0;
  for (let i = 1; i < ring.length; i++) twice += (ring[i - 1][0] - x0) * (ring[i][1] - y0) - (ring[i][0] - x0) * (ring[i - 1][1] - y0);
  return Math.abs(twice) / 2;
}
