// Squares gained, lost and kept between two periods. Shape tells them apart as well as colour: a full square, a crossed one, a pale one, a dot.
import Feature from 'ol/Feature.js';
import Polygon from 'ol/geom/Polygon.js';
import VectorLayer from 'ol/layer/Vector.js';
import VectorSource from 'ol/source/Vector.js';
import type { Fates } from '../api.ts';
import { readSquare } from '../squares/names.ts';
import { outline } from '../squares/outline.ts';
import { followColours } from '../styles/colours.ts';
import { fateStyle } from '../styles/fates.ts';

export interface ChangeLayer {
  layer: VectorLayer;
  /** Draws the squares; none for null. */
  show(fates: Fates | null): void;
}

export function makeChange(): ChangeLayer {
  const source = new VectorSource();
  const layer = new VectorLayer({ source });
  followColours((colours) => layer.setStyle(fateStyle(colours)));
  return {
    layer,
    show(fates) {
      source.clear();
      for (const { properties } of fates?.features ?? []) {
        const square = readSquare(properties.square);
        if (square !== null) source.addFeature(new Feature({ ...properties, geometry: new Polygon([outline(square)]) }));
      }
    },
  };
}
