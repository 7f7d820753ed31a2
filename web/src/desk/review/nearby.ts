// Where a taxon is known, and how that lies to a record: the map's words.
import { type GridSquare, readReference, readSquare } from '../../squares/names.ts';
import { onMap, type Point } from '../../squares/planes.ts';
import type { Presence, SquareProperties } from '../../api.ts';
import { count, counted, years } from '../../words.ts';

/** The middle of a square on the map's plane. */
export const middle = ({ grid, easting, northing, side }: GridSquare): Point => onMap(grid, [easting + side / 2, northing + side / 2]);

/** How the squares that are known lie to a record, in one sentence. */
export function nearbyInWords(square: string, { features }: Pick<Presence, 'features'>): string {
  const place = readReference(square);
  if (place === null) return '';
  const at = middle(place);
  const known = features.map(({ properties }) => ({ properties, square: readSquare(properties.square) }))
    .flatMap(({ properties, square: known }) => known === null ? [] : [{ properties, km: distanceKm(at, middle(known)), isOwn: holds(known, place) }]);
  const own = known.find(({ isOwn }) => isOwn);
  if (own !== undefined) return `Its own 10 km square ${own.properties.square} has ${ofSquare(own.properties)}.`;
  const nearest = known.reduce<typeof known[number] | null>((best, next) => best === null || next.km < best.km ? next : best, null);
  if (nearest === null) return 'No usable record of it is known from anywhere yet.';
  return `It is not known from this 10 km square. The nearest that has it is ${nearest.properties.square}, about ${count(Math.max(1, Math.round(nearest.km)))} km away, with ${ofSquare(nearest.properties)}.`;
}

const ofSquare = ({ records, first, last }: SquareProperties) => `${counted(records, 'usable record')} (${years(first, last)})`;

const distanceKm = ([x, y]: Point, [u, v]: Point) => Math.hypot(u - x, v - y) / 1000;

const holds = (outer: GridSquare, inner: GridSquare) => outer.grid === inner.grid && inner.side <= outer.side
  && inner.easting >= outer.easting && inner.easting < outer.easting + outer.side && inner.northing >= outer.northing && inner.northing < outer.northing + outer.side;
