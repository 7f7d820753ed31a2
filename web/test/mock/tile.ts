// Vector tiles of the invented world, on the tile matrix set BritishNationalGrid.
import vtpbf from 'vt-pbf';
import { outline } from '../../src/squares/outline.ts';
import { propertiesOf, type Occupied } from './world.ts';

const EXTENT = 4096;
const BUFFER = 0.05;

export function tile(squares: Occupied[], periods: string[], z: number, x: number, y: number): Uint8Array {
  const side = 256 * 10_000 / 2 ** z;
  const west = -640_000 + x * side, north = 1_920_000 - y * side;
  const features = squares.flatMap((occupied) => {
    const ring = outline(occupied.square).map(([e, n]) => [(e - west) / side, (north - n) / side] as [number, number]);
    const properties = propertiesOf(occupied, periods);
    const touches = [0, 1].every((axis) => ring.some((p) => p[axis]! > -BUFFER) && ring.some((p) => p[axis]! < 1 + BUFFER));
    if (properties === null || !touches) return [];
    return [{ type: 3, tags: properties, geometry: [ring.map(([a, b]) => [Math.round(a * EXTENT), Math.round(b * EXTENT)]).reverse()] }];
  });
  return vtpbf.fromGeojsonVt({ presence: { features } }, { version: 2, extent: EXTENT });
}
