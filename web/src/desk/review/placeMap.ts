// The map beside a record, fetched only when a record is looked at: its square, and the squares where its taxon is known.
import 'ol/ol.css';
import Feature from 'ol/Feature.js';
import OpenLayersMap from 'ol/Map.js';
import View from 'ol/View.js';
import Attribution from 'ol/control/Attribution.js';
import ScaleLine from 'ol/control/ScaleLine.js';
import Zoom from 'ol/control/Zoom.js';
import PointGeometry from 'ol/geom/Point.js';
import Polygon from 'ol/geom/Polygon.js';
import VectorLayer from 'ol/layer/Vector.js';
import VectorSource from 'ol/source/Vector.js';
import Circle from 'ol/style/Circle.js';
import Fill from 'ol/style/Fill.js';
import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import { makeLand } from '../../layers/land.ts';
import { makeLattice } from '../../layers/lattice.ts';
import { makePlaces } from '../../layers/places.ts';
import { plane } from '../../map.ts';
import { readReference, readSquare } from '../../squares/names.ts';
import { outline } from '../../squares/outline.ts';
import { followColours } from '../../styles/colours.ts';
import { middle } from './nearby.ts';

/** Half the side of what is shown at first, metres: a county around the record. */
const AROUND = 70_000;

export interface PlaceMap {
  /** Moves to a record's square. */
  show(square: string): void;
  /** The 10 km squares where the taxon is known. */
  know(squares: readonly string[]): void;
  leave(): void;
}

export function makePlaceMap(target: HTMLElement): PlaceMap {
  const [known, place] = [new VectorSource(), new VectorSource()];
  const view = new View({ projection: plane, center: [400_000, 500_000], zoom: 2, maxResolution: 10_000, minZoom: 1.5, maxZoom: 13, enableRotation: false });
  const layers = [makeLand().layer, makeLattice(), knownLayer(known), placeLayer(place), makePlaces()];
  const map = new OpenLayersMap({ target, layers, view, controls: [new Zoom(), new ScaleLine({ minWidth: 60 }), new Attribution({ collapsible: false })] });
  target.querySelectorAll('.ol-zoom button').forEach((button) => button.setAttribute('aria-label', button.getAttribute('title') ?? ''));

  return {
    show(text) {
      const square = readReference(text);
      place.clear();
      if (square === null) return;
      const [x, y] = middle(square);
      place.addFeatures([new Feature(new Polygon([outline(square)])), new Feature(new PointGeometry([x, y]))]);
      view.fit([x - AROUND, y - AROUND, x + AROUND, y + AROUND]);
    },
    know(squares) {
      known.clear();
      known.addFeatures(squares.map(readSquare).flatMap((square) => square === null ? [] : [new Feature(new Polygon([outline(square)]))]));
    },
    leave: () => map.dispose(),
  };
}

function knownLayer(source: VectorSource): VectorLayer {
  const layer = new VectorLayer({ source });
  followColours(({ ramp, land }) => layer.setStyle(new Style({ fill: new Fill({ color: ramp[1]! }), stroke: new Stroke({ color: land, width: 0.6 }) })));
  return layer;
}

/** The square's outline, and a ring that shows where it is when it is smaller than a dot. */
function placeLayer(source: VectorSource): VectorLayer {
  const layer = new VectorLayer({ source });
  followColours(({ halo, mark }) => layer.setStyle([
    new Style({ stroke: new Stroke({ color: halo, width: 6 }), image: new Circle({ radius: 11, stroke: new Stroke({ color: halo, width: 6 }) }) }),
    new Style({ stroke: new Stroke({ color: mark, width: 3 }), image: new Circle({ radius: 11, stroke: new Stroke({ color: mark, width: 3 }) }) }),
  ]));
  return layer;
}
