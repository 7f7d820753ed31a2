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
import { START, type ViewState } from './state.ts';
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

/** What is shown before anyone has moved the map. */
const ISLANDS: [number, number, number, number] = [-190_000, -115_000, 665_000, 1_225_000];

type Position = Pick<ViewState, 'centre' | 'zoom'>;

const positionOf = ({ centre, zoom }: ViewState): Position => ({ centre, zoom });

const isStart = ({ centre, zoom }: ViewState) => zoom === START.zoom && centre.join() === START.centre.join();

export function makeMap(target: HTMLElement, notices: HTMLElement, layers: BaseLayer[], store: Store): OpenLayersMap {
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
  const map = new OpenLayersMap({ target, layers, view, controls: [new Zoom(), new ScaleLine({ minWidth: 80 }), new Attribution({ collapsible: false, target: notices })] });

  // These buttons say plus and minus; their titles become their names.
  target.querySelectorAll('.ol-zoom button').forEach((button) => button.setAttribute('aria-label', button.getAttribute('title') ?? ''));

  // Until someone moves the map it shows all islands, whatever room it has, and the address stays short.
  let home: Position | null = isStart(store.state) ? positionOf(store.state) : null;
  map.on('change:size', goHome);
  goHome();
  map.on('moveend', () => {
    const now = seen();
    if (home !== null && String(now.centre) === String(home.centre) && now.zoom === home.zoom) return;
    home = null;
    store.change(now);
  });
  store.follow((now, before) => {
    if (now === before || !differs(now, before, 'centre', 'zoom')) return;
    if (isStart(now)) {
      home = positionOf(now);
      goHome();
      return;
    }
    view.setCenter([...now.centre]);
    view.setZoom(now.zoom);
  });
  return map;

  function goHome(): void {
    const size = map.getSize();
    if (home === null || size === undefined) return;
    view.fit(ISLANDS, { size, padding: [8, 8, 8, 8] });
    home = seen();
  }

  function seen(): Position {
    const [easting, northing] = view.getCenter()!;
    return { centre: [Math.round(easting!), Math.round(northing!)], zoom: Number(view.getZoom()!.toFixed(2)) };
  }
}
