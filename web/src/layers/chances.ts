// Squares where a spreading species may be though it was never found there.
import Feature from 'ol/Feature.js';
import Polygon from 'ol/geom/Polygon.js';
import VectorLayer from 'ol/layer/Vector.js';
import VectorSource from 'ol/source/Vector.js';
import type { Foretold } from '../api.ts';
import { readSquare } from '../squares/names.ts';
import { outline } from '../squares/outline.ts';
import { chanceStyle } from '../styles/chances.ts';
import { followColours } from '../styles/colours.ts';

export interface ChanceLayer {
  layer: VectorLayer;
  /** Draws the squares; none for null. */
  show(foretold: Foretold | null): void;
}

export function makeChances(): ChanceLayer {
  const source = new VectorSource();
  const layer = new VectorLayer({ source });
  followColours((colours) => layer.setStyle(chanceStyle(colours)));
  return {
    layer,
    show(foretold) {
      source.clear();
      for (const { properties } of foretold?.features ?? []) {
        const square = readSquare(properties.square);
        if (square !== null) source.addFeature(new Feature({ ...properties, geometry: new Polygon([outline(square)]) }));
      }
    },
  };
}
