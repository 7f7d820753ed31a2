// Which squares of a lattice a polygon touches: those its edges cross, and those whose centre lies inside it.

/** South-west corners of the squares of the given side (metres) that the polygon's rings touch. */
export function squaresTouched(rings, side) {
  const touched = new Map();
  const add = (column, row) => touched.set(`${column},${row}`, [column * side, row * side]);
  for (const ring of rings) for (let i = 1; i < ring.length; i++) crossed(ring[i - 1], ring[i], side, add);
  filled(rings, side, add);
  return touched.values();
}

/** Walks one edge in steps far shorter than a side would need; the cut points with the lattice lines are exact. */
function crossed([x0, y0], [x1, y1], side, add) {
  const cuts = [0, 1, ...lineCuts(x0, x1, side), ...lineCuts(y0, y1, side)].sort((a, b) => a - b);
  for (let i = 1; i < cuts.length; i++) {
    const middle = (cuts[i - 1] + cuts[i]) / 2;
    add(Math.floor((x0 + middle * (x1 - x0)) / side), Math.floor((y0 + middle * (y1 - y0)) / side));
  }
}

/** Fractions of the way from a to b at which a multiple of the side is passed. */
function lineCuts(a, b, side) {
  const cuts = [];
  const first = Math.floor(Math.min(a, b) / side) + 1, last = Math.ceil(Math.max(a, b) / side) - 1;
  for (let k = first; k <= last; k++) cuts.push((k * side - a) / (b - a));
  return cuts;
}

/** Scan line through the middle of each row: between each pair of crossings the centres are inside. */
function filled(rings, side, add) {
  const rows = new Map();
  for (const ring of rings) {
    for (let i = 1; i < ring.length; i++) {
      const [x0, y0] = ring[i - 1], [x1, y1] = ring[i];
      const first = Math.ceil(Math.min(y0, y1) / side - 0.5), last = Math.ceil(Math.max(y0, y1) / side - 0.5) - 1;
      for (let row = first; row <= last; row++) {
        const x = x0 + ((row + 0.5) * side - y0) / (y1 - y0) * (x1 - x0);
        if (!rows.has(row)) rows.set(row, []);
        rows.get(row).push(x);
      }
    }
  }
  for (const [row, xs] of rows) {
    xs.sort((a, b) => a - b);
    for (let i = 0; i + 1 < xs.length; i += 2) {
      for (let column = Math.ceil(xs[i] / side - 0.5); column + 0.5 < xs[i + 1] / side; column++) add(column, row);
    }
  }
}
