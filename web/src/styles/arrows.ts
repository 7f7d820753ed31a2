// Local speed and direction: an arrow a square, the longer the faster; a hollow dot where neither can be measured. On a small scale only some of the squares are drawn.
import type { FeatureLike } from 'ol/Feature.js';
import LineString from 'ol/geom/LineString.js';
import Point from 'ol/geom/Point.js';
import CircleStyle from 'ol/style/Circle.js';
import RegularShape from 'ol/style/RegularShape.js';
import Fill from 'ol/style/Fill.js';
import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import type { Colours } from './colours.ts';

export interface Arrow {
  /** Column and row of the square on its grid, for drawing every second, every third and so on. */
  column: number;
  row: number;
  /** Side of the square, metres. */
  side: number;
  /** Degrees clockwise from grid north; null where not measurable. */
  bearing: number | null;
  /** Speed as a share of the fastest shown, 0 to 1. */
  share: number;
}

/** Pixels that an arrow needs. */
const ROOM = 20;
/** The shortest arrow as a share of the longest. */
const SHORTEST = 0.4;

/** Every how manieth square has an arrow at a scale. */
export const thinning = (side: number, resolution: number): number => Math.max(1, Math.ceil(ROOM * resolution / side));

export function arrowStyle({ ink, halo, label }: Colours): (feature: FeatureLike, resolution: number) => Style[] {
  const unknown = [new Style({ image: new CircleStyle({ radius: 2, stroke: new Stroke({ color: label, width: 1 }), fill: new Fill({ color: halo }) }) })];
  return (feature, resolution) => {
    const { column, row, side, bearing, share } = feature.getProperties() as unknown as Arrow;
    const every = thinning(side, resolution);
    if (column % every !== 0 || row % every !== 0) return [];
    if (bearing === null) return unknown;
    const angle = bearing * Math.PI / 180;
    const half = every * side * (SHORTEST + (1 - SHORTEST) * share) / 2;
    const [x, y] = (feature.getGeometry() as Point).getCoordinates() as [number, number];
    const tip = [x + half * Math.sin(angle), y + half * Math.cos(angle)];
    const shaft = new LineString([[x - half * Math.sin(angle), y - half * Math.cos(angle)], tip]);
    return [
      new Style({ geometry: shaft, stroke: new Stroke({ color: halo, width: 4 }) }),
      new Style({ geometry: shaft, stroke: new Stroke({ color: ink, width: 1.6 }), zIndex: 1 }),
      new Style({ geometry: new Point(tip), image: new RegularShape({ points: 3, radius: 5, rotation: angle, rotateWithView: true, fill: new Fill({ color: ink }), stroke: new Stroke({ color: halo, width: 1 }) }), zIndex: 1 }),
    ];
  };
}
