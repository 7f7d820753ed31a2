// Names of squares, both ways, for the four sizes the map shows. Letters follow the 5 by 5 lattice without I that the national grids share.
import type { Size } from '../state.ts';
import type { GridCode, Point } from './planes.ts';

export interface GridSquare { grid: GridCode; easting: number; northing: number; side: number }

const LATTICE = 'ABCDEFGHJKLMNOPQRSTUVWXYZ';
/** Tetrads run from the south-west corner up each column; O is left out and I is used. */
const TETRADS = 'ABCDEFGHIJKLMNPQRSTUVWXYZ';
const QUADRANTS = ['SW', 'NW', 'SE', 'NE'];
const HUNDRED_KM = 100_000;
const SIDES: Record<Size, number> = { '10km': 10_000, '5km': 5_000, '2km': 2_000, '1km': 1_000 };

/** The name of the square of this size that holds a point of the grid's plane; null outside the grid's letters. */
export function squareName(grid: GridCode, [easting, northing]: Point, size: Size): string | null {
  const letters = lettersAt(grid, easting, northing);
  if (letters === null) return null;
  const hectad = letters + digit(easting, 10_000) + digit(northing, 10_000);
  const step = SIDES[size];
  const column = Math.floor((easting % 10_000) / step), row = Math.floor((northing % 10_000) / step);
  switch (size) {
    case '10km': return hectad;
    case '5km': return hectad + QUADRANTS[column * 2 + row]!;
    case '2km': return hectad + TETRADS[column * 5 + row]!;
    case '1km': return letters + digit(easting, 10_000) + digit(easting, 1_000) + digit(northing, 10_000) + digit(northing, 1_000);
  }
}

/** Reads a name of a 100, 10, 5, 2 or 1 km square; null when it is none. Spaces and small letters are taken. */
export function readSquare(text: string): GridSquare | null {
  const match = /^([A-HJ-Z]{1,2})(?:(\d)(\d)(NW|NE|SW|SE|[A-NP-Z])?|(\d\d)(\d\d))?$/.exec(text.toUpperCase().replaceAll(/\s/g, ''));
  const corner = match === null ? null : lettersCorner(match[1]!);
  if (match === null || corner === null) return null;
  const [grid, e, n] = corner;
  if (match[5] !== undefined) return { grid, easting: e + Number(match[5]) * 1_000, northing: n + Number(match[6]) * 1_000, side: 1_000 };
  if (match[2] === undefined) return { grid, easting: e, northing: n, side: HUNDRED_KM };
  const [side, east, north] = withinHectad(match[4]);
  return { grid, easting: e + Number(match[2]) * 10_000 + east, northing: n + Number(match[3]) * 10_000 + north, side };
}

/** Reads a reference of any precision, such as a record has: also squares of 100, 10 and 1 m. Null when it is none. */
export function readReference(text: string): GridSquare | null {
  const match = /^([A-HJ-Z]{1,2})(\d{6}|\d{8}|\d{10})$/.exec(text.toUpperCase().replaceAll(/\s/g, ''));
  const corner = match === null ? null : lettersCorner(match[1]!);
  if (match === null || corner === null) return readSquare(text);
  const figures = match[2]!.length / 2, side = HUNDRED_KM / 10 ** figures;
  const [grid, e, n] = corner;
  return { grid, easting: e + Number(match[2]!.slice(0, figures)) * side, northing: n + Number(match[2]!.slice(figures)) * side, side };
}

const digit = (metres: number, unit: number) => String(Math.floor(metres / unit) % 10);

function withinHectad(suffix: string | undefined): [number, number, number] {
  if (suffix === undefined) return [10_000, 0, 0];
  const quadrant = QUADRANTS.indexOf(suffix);
  if (quadrant >= 0) return [5_000, Math.floor(quadrant / 2) * 5_000, (quadrant % 2) * 5_000];
  const tetrad = TETRADS.indexOf(suffix);
  return [2_000, Math.floor(tetrad / 5) * 2_000, (tetrad % 5) * 2_000];
}

function lettersAt(grid: GridCode, easting: number, northing: number): string | null {
  const e = Math.floor(easting / HUNDRED_KM), n = Math.floor(northing / HUNDRED_KM);
  const within = (columns: number, rows: number) => e >= 0 && e < columns && n >= 0 && n < rows;
  if (grid === 'IE') return within(5, 5) ? letter(e, n) : null;
  if (grid === 'GB') return within(7, 13) ? letter(2 + Math.floor(e / 5), 1 + Math.floor(n / 5)) + letter(e % 5, n % 5) : null;
  return e === 5 && (n === 54 || n === 55) ? (n === 54 ? 'WV' : 'WA') : null;
}

function lettersCorner(letters: string): [GridCode, number, number] | null {
  if (letters === 'WV' || letters === 'WA') return ['CI', 500_000, letters === 'WV' ? 5_400_000 : 5_500_000];
  const [first, second] = [...letters].map((l) => LATTICE.indexOf(l));
  if (second === undefined) return ['IE', (first! % 5) * HUNDRED_KM, southRow(first!) * HUNDRED_KM];
  const e = (first! % 5 - 2) * 5 + second % 5, n = (southRow(first!) - 1) * 5 + southRow(second);
  return e >= 0 && e < 7 && n >= 0 && n < 13 ? ['GB', e * HUNDRED_KM, n * HUNDRED_KM] : null;
}

const southRow = (index: number) => 4 - Math.floor(index / 5);
const letter = (column: number, row: number) => LATTICE[(4 - row) * 5 + column]!;
