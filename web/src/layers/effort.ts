// Where recorders looked in the later of two periods.
import Feature from 'ol/Feature.js';
import Polygon from 'ol/geom/Polygon.js';
import VectorLayer from 'ol/layer/Vector.js';
import VectorSource from 'ol/source/Vector.js';
import type { Effort } from '../api.ts';
import { readSquare } from '../squares/names.ts';
import { outline } from '../squares/outline.ts';
import { followColours } from '../styles/colours.ts';
import { effortStyle } from '../styles/effort.ts';

export interface EffortLayer {
  layer: VectorLayer;
  /** Draws the squares; none for null. */
  show(effort: Effort | null): void;
}

export function makeEffort(): EffortLayer {
  const source = new VectorSource();
  const layer = new VectorLayer({ source });
  followColours((colours) => layer.setStyle(effortStyle(colours)));
  return {
    layer,
    show(effort) {
      source.clear();
      for (const { properties } of effort?.features ?? []) {
        const square = readSquare(properties.square);
        if (square !== null && properties.visitsBefore + properties.visitsAfter > 0) source.addFeature(new Feature({ ...properties, geometry: new Polygon([outline(square)]) }));
      }
    },
  };
}
