// The same place in squares of another size.
import { sideMetres, type Size } from '../state.ts';
import { readSquare, squareName, type GridSquare } from './names.ts';
import type { Point } from './planes.ts';

/**
 * The square of a size at the place of another: the one that holds its middle. Where a finer square within it was looked at before,
 * that is the place, so that going up and down again leads back.
 * @returns Null for what is no square, or where the grid has none.
 */
export function resized(name: string, size: Size, finerBefore: string | null): string | null {
  const square = readSquare(name);
  if (square === null) return null;
  if (square.side === sideMetres(size)) return name;
  const before = finerBefore === null ? null : readSquare(finerBefore);
  const place = before !== null && holds(square, middle(before)) && before.grid === square.grid && before.side < square.side ? before : square;
  return squareName(square.grid, middle(place), size);
}

const middle = ({ easting, northing, side }: GridSquare): Point => [easting + side / 2, northing + side / 2];

const holds = ({ easting, northing, side }: GridSquare, [e, n]: Point) => e >= easting && e < easting + side && n >= northing && n < northing + side;
