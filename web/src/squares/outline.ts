import type { GridSquare } from './names.ts';
import { onMap, type Point } from './planes.ts';

/** The square's ring on the map's plane. Off the British grid its edges are very nearly straight there: four corners do up to 100 km. */
export function outline({ grid, easting, northing, side }: GridSquare): Point[] {
  const corners: Point[] = [[0, 0], [side, 0], [side, side], [0, side], [0, 0]];
  return corners.map(([e, n]) => onMap(grid, [easting + e, northing + n]));
}

/** The middle of a square's ring. */
export function centreOfRing(ring: readonly number[][]): number[] {
  const [a, , c] = ring;
  return [(a![0]! + c![0]!) / 2, (a![1]! + c![1]!) / 2];
}
