import VectorLayer from 'ol/layer/Vector.js';
import VectorSource from 'ol/source/Vector.js';
import TopoJSON from 'ol/format/TopoJSON.js';
import Fill from 'ol/style/Fill.js';
import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import { plane } from '../map.ts';
import type { GridCode, Point } from '../squares/planes.ts';
import { followColours } from '../styles/colours.ts';

const GRID_OF: Record<string, GridCode> = { GB: 'GB', IM: 'GB', IE: 'IE', NI: 'IE', CI: 'CI' };

export interface Land {
  layer: VectorLayer;
  /** The national grid of the land at a point of the map; null at sea and abroad. */
  gridAt(point: Point): GridCode | null;
}

export function makeLand(): Land {
  const source = new VectorSource({
    url: '/gis/land.json',
    format: new TopoJSON({ dataProjection: plane }),
    attributions: ['Coast © OpenStreetMap contributors, ODbL', 'Inner borders: Natural Earth', 'Place names © GeoNames, CC BY 4.0'],
  });
  const layer = new VectorLayer({ source });
  followColours((c) => {
    const home = new Style({ fill: new Fill({ color: c.land }), stroke: new Stroke({ color: c.shore, width: 0.8 }) });
    const near = new Style({ fill: new Fill({ color: c.near }) });
    layer.setStyle((feature) => feature.get('part') === 'near' ? near : home);
  });
  const gridAt = (point: Point) => source.getFeaturesAtCoordinate(point).map((f) => GRID_OF[f.get('part') as string]).find((g) => g !== undefined) ?? null;
  return { layer, gridAt };
}
