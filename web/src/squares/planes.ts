// The planes of the three grids. The map is drawn on the British one; the others are shifted by the published seven parameters (EPSG operations
// 1314, 1954, 1138), good to a few metres: enough for an outline on a screen. Places of records are worked out by the server.
import proj4, { type Converter } from 'proj4';

export type GridCode = 'GB' | 'IE' | 'CI';
export type Point = [number, number];

export const BRITISH_CODE = 'EPSG:27700';

const DEFINITIONS: Record<GridCode, string> = {
  GB: '+proj=tmerc +lat_0=49 +lon_0=-2 +k=0.9996012717 +x_0=400000 +y_0=-100000 +a=6377563.396 +b=6356256.909'
    + ' +towgs84=446.448,-125.157,542.06,0.150,0.247,0.842,-20.489 +units=m +no_defs',
  IE: '+proj=tmerc +lat_0=53.5 +lon_0=-8 +k=1.000035 +x_0=200000 +y_0=250000 +a=6377340.189 +rf=299.3249646'
    + ' +towgs84=482.5,-130.6,564.6,-1.042,-0.214,-0.631,8.15 +units=m +no_defs',
  CI: '+proj=utm +zone=30 +ellps=intl +towgs84=-86,-96,-120,0,0,0,0 +units=m +no_defs',
};

const toMap: Record<GridCode, Converter | null> = {
  GB: null,
  IE: proj4(DEFINITIONS.IE, DEFINITIONS.GB),
  CI: proj4(DEFINITIONS.CI, DEFINITIONS.GB),
};

const degrees = proj4('EPSG:4326', DEFINITIONS.GB);

/** From longitude and latitude (WGS84) to the map's plane, in metres. */
export const fromDegrees = (lonLat: Point): Point => degrees.forward(lonLat);

/** From a grid's own plane to the map's, in metres. */
export const onMap = (grid: GridCode, point: Point): Point => toMap[grid]?.forward(point) ?? point;

/** From the map's plane to a grid's own, in metres. */
export const onGrid = (grid: GridCode, point: Point): Point => toMap[grid]?.inverse(point) ?? point;
