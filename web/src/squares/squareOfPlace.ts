// The square of a place that the server found, in the size that the map shows.
import type { Place } from '../api.ts';
import type { Size } from '../state.ts';
import { readReference, readSquare, squareName } from './names.ts';
import { fromDegrees, onGrid } from './planes.ts';

/** Null for a place on none of the three grids. A place that is itself a square stays what it is. */
export function squareOfPlace({ name, square, latitude, longitude }: Place, size: Size): string | null {
  const grid = square === null ? undefined : readReference(square)?.grid;
  if (grid === undefined) return null;
  if (name === square && readSquare(name) !== null) return name;
  return squareName(grid, onGrid(grid, fromDegrees([longitude, latitude])), size);
}
