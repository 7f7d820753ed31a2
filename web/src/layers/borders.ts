import VectorLayer from 'ol/layer/Vector.js';
import VectorSource from 'ol/source/Vector.js';
import GeoJSON from 'ol/format/GeoJSON.js';
import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import { plane } from '../map.ts';
import { followColours } from '../styles/colours.ts';

export function makeBorders(): VectorLayer {
  const format = new GeoJSON({ dataProjection: plane, featureProjection: plane });
  const layer = new VectorLayer({ source: new VectorSource({ url: '/gis/borders.json', format }) });
  followColours((c) => layer.setStyle(new Style({ stroke: new Stroke({ color: c.border, width: 1.1, lineDash: [5, 4] }) })));
  return layer;
}
