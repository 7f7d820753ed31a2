// Which way the species moves through each square, and how fast.
import Feature from 'ol/Feature.js';
import PointGeometry from 'ol/geom/Point.js';
import VectorLayer from 'ol/layer/Vector.js';
import VectorSource from 'ol/source/Vector.js';
import type { Modelled } from '../api.ts';
import { readSquare } from '../squares/names.ts';
import { centreOfRing, outline } from '../squares/outline.ts';
import { arrowStyle, type Arrow } from '../styles/arrows.ts';
import { followColours } from '../styles/colours.ts';

export interface ArrowLayer {
  layer: VectorLayer;
  /** Draws the arrows; none for null. */
  show(modelled: Modelled | null): void;
}

export function makeArrows(): ArrowLayer {
  const source = new VectorSource();
  const layer = new VectorLayer({ source });
  followColours((colours) => layer.setStyle(arrowStyle(colours)));
  return {
    layer,
    show(modelled) {
      source.clear();
      const squares = (modelled?.features ?? []).map((f) => f.properties);
      const fastest = Math.max(1, ...squares.map((s) => s.kmPerYear ?? 0));
      for (const { square: name, kmPerYear, bearing } of squares) {
        const square = readSquare(name);
        if (square === null) continue;
        const { easting, northing, side } = square;
        const arrow: Arrow = { column: easting / side, row: northing / side, side, bearing: kmPerYear === null ? null : bearing, share: (kmPerYear ?? 0) / fastest };
        source.addFeature(new Feature({ ...arrow, geometry: new PointGeometry(centreOfRing(outline(square))) }));
      }
    },
  };
}
