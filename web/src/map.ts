// The map: the plane of the British National Grid, where squares are square.
import OpenLayersMap from 'ol/Map.js';
import View from 'ol/View.js';
import Attribution from 'ol/control/Attribution.js';
import Zoom from 'ol/control/Zoom.js';
import ScaleLine from 'ol/control/ScaleLine.js';
import type BaseLayer from 'ol/layer/Base.js';
import Projection from 'ol/proj/Projection.js';
import TileGrid from 'ol/tilegrid/TileGrid.js';
import { BRITISH_CODE } from './squares/planes.ts';
import { differs, type Store } from './store.ts';

/** The tile matrix set BritishNationalGrid: origin top left, 256 pixel tiles, cells of 10,000 m / 2^z, levels 0 to 12. */
const ORIGIN: [number, number] = [-640_000, 1_920_000];
const COARSEST_CELL = 10_000;
const LEVELS = 13;
const EXTENT: [number, number, number, number] = [ORIGIN[0], -640_000, 1_920_000, ORIGIN[1]];

export const plane = new Projection({ code: BRITISH_CODE, units: 'm', extent: EXTENT });

export const tileGrid = new TileGrid({
  extent: EXTENT,
  origin: ORIGIN,
  tileSize: 256,
  resolutions: Array.from({ length: LEVELS }, (_, z) => COARSEST_CELL / 2 ** z),
});

/** What can be scrolled to: the islands with a wide margin. */
const REACH: [number, number, number, number] = [-450_000, -300_000, 950_000, 1_400_000];

export function makeMap(target: HTMLElement, layers: BaseLayer[], store: Store): OpenLayersMap {
  const view = new View({
    projection: plane,
    center: [...store.state.centre],
    zoom: store.state.zoom,
    maxResolution: COARSEST_CELL,
    minZoom: 1.5,
    maxZoom: 11,
    extent: REACH,
    constrainOnlyCenter: true,
    enableRotation: false,
  });
  const map = new OpenLayersMap({ target, layers, view, controls: [new Zoom(), new ScaleLine({ minWidth: 80 }), new Attribution({ collapsible: false })] });

  map.on('moveend', () => {
    const [easting, northing] = view.getCenter() ?? [...store.state.centre];
    store.change({ centre: [Math.round(easting!), Math.round(northing!)], zoom: Number((view.getZoom() ?? store.state.zoom).toFixed(2)) });
  });
  store.follow((now, before) => {
    if (!differs(now, before, 'centre', 'zoom')) return;
    view.setCenter([...now.centre]);
    view.setZoom(now.zoom);
  });
  return map;
}
