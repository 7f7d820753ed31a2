// Distances to a coast on a plane, by a lattice of buckets that hold its edges. Metres.
const BUCKET = 500;

/** An index of the edges of rings, to ask how far off they are. */
export class CoastIndex {
  #buckets = new Map();

  /** Adds a ring on the plane under a label. */
  add(ring, label) {
    for (let i = 1; i < ring.length; i++) {
      const edge = { from: ring[i - 1], to: ring[i], label };
      const west = bucket(Math.min(edge.from[0], edge.to[0])), east = bucket(Math.max(edge.from[0], edge.to[0]));
      const south = bucket(Math.min(edge.from[1], edge.to[1])), north = bucket(Math.max(edge.from[1], edge.to[1]));
      for (let column = west; column <= east; column++) for (let row = south; row <= north; row++) this.#put(column, row, edge);
    }
  }

  /** The label and the distance of the nearest edge within `most` metres; null when there is none. */
  nearest(point, most) {
    let best = null;
    const reach = Math.ceil(most / BUCKET);
    for (let ring = 0; ring <= reach && !(best !== null && best.metres < (ring - 1) * BUCKET); ring++) {
      for (const edge of this.#around(bucket(point[0]), bucket(point[1]), ring)) {
        const metres = distance(point, edge.from, edge.to);
        if (metres <= most && (best === null || metres < best.metres)) best = { metres, label: edge.label };
      }
    }
    return best;
  }

  #put(column, row, edge) {
    const name = column * 1e6 + row;
    if (!this.#buckets.has(name)) this.#buckets.set(name, []);
    this.#buckets.get(name).push(edge);
  }

  /** The edges in the buckets that lie `ring` buckets away. */
  * #around(column, row, ring) {
    for (let c = column - ring; c <= column + ring; c++) {
      const step = Math.abs(c - column) === ring ? 1 : Math.max(2 * ring, 1);
      for (let r = row - ring; r <= row + ring; r += step) yield* this.#buckets.get(c * 1e6 + r) ?? [];
    }
  }
}

const bucket = (metres) => Math.floor(metres / BUCKET);

function distance([x, y], [x0, y0], [x1, y1]) {
  const dx = x1 - x0, dy = y1 - y0, length = dx * dx + dy * dy;
  const part = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - x0) * dx + (y - y0) * dy) / length));
  return Math.hypot(x - x0 - part * dx, y - y0 - part * dy);
}

/** True when the point lies within the ring (even-odd rule). */
export function isInside([x, y], ring) {
  let inside = false;
  for (let i = 1; i < ring.length; i++) {
    const [x0, y0] = ring[i - 1], [x1, y1] = ring[i];
    if (y0 > y !== y1 > y && x < x0 + (y - y0) / (y1 - y0) * (x1 - x0)) inside = !inside;
  }
  return inside;
}

/** West, south, east, north of a ring. */
export function boxOf(ring) {
  const box = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of ring) {
    box[0] = Math.min(box[0], x); box[1] = Math.min(box[1], y);
    box[2] = Math.max(box[2], x); box[3] = Math.max(box[3], y);
  }
  return box;
}
