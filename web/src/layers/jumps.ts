// Squares found far ahead of the front, ringed, up to the year shown.
import Feature from 'ol/Feature.js';
import PointGeometry from 'ol/geom/Point.js';
import VectorLayer from 'ol/layer/Vector.js';
import VectorSource from 'ol/source/Vector.js';
import CircleStyle from 'ol/style/Circle.js';
import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import type { Jump } from '../api.ts';
import { differs, type Store } from '../store.ts';
import { followColours } from '../styles/colours.ts';

export interface JumpLayer {
  layer: VectorLayer;
  /** Draws the rings; none for an empty list. */
  show(jumps: Jump[]): void;
}

export function makeJumps(store: Store): JumpLayer {
  const source = new VectorSource();
  const layer = new VectorLayer({ source });
  let all: Jump[] = [];
  followColours(({ mark, halo }) => layer.setStyle([
    new Style({ image: new CircleStyle({ radius: 9, stroke: new Stroke({ color: halo, width: 5 }) }) }),
    new Style({ image: new CircleStyle({ radius: 9, stroke: new Stroke({ color: mark, width: 2.4 }) }) }),
  ]));

  function draw(): void {
    source.clear();
    const until = store.state.year ?? Infinity;
    source.addFeatures(all.filter((j) => j.year <= until).map((j) => new Feature(new PointGeometry([j.easting, j.northing]))));
  }

  store.follow((now, before) => {
    if (differs(now, before, 'year')) draw();
  });
  return { layer, show: (jumps) => { all = jumps; draw(); } };
}
