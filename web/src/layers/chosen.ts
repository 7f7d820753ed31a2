// The outline of the chosen square.
import Feature from 'ol/Feature.js';
import Polygon from 'ol/geom/Polygon.js';
import VectorLayer from 'ol/layer/Vector.js';
import VectorSource from 'ol/source/Vector.js';
import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import { readSquare } from '../squares/names.ts';
import { outline } from '../squares/outline.ts';
import { differs, type Store } from '../store.ts';
import { followColours } from '../styles/colours.ts';

export function makeChosen(store: Store): VectorLayer {
  const source = new VectorSource();
  const layer = new VectorLayer({ source });
  followColours((c) => layer.setStyle([
    new Style({ stroke: new Stroke({ color: c.halo, width: 6 }) }),
    new Style({ stroke: new Stroke({ color: c.mark, width: 3 }) }),
  ]));
  store.follow((now, before) => {
    if (!differs(now, before, 'square')) return;
    source.clear();
    const square = now.square === null ? null : readSquare(now.square);
    if (square !== null) source.addFeature(new Feature(new Polygon([outline(square)])));
  });
  return layer;
}
