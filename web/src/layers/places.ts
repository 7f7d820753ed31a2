// Town names: the larger the town, the earlier it shows; names that would overlap give way to the larger.
import Feature from 'ol/Feature.js';
import type { FeatureLike } from 'ol/Feature.js';
import PointGeometry from 'ol/geom/Point.js';
import VectorLayer from 'ol/layer/Vector.js';
import VectorSource from 'ol/source/Vector.js';
import Circle from 'ol/style/Circle.js';
import Fill from 'ol/style/Fill.js';
import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import Text from 'ol/style/Text.js';
import { readPlaces } from '../api.ts';
import { followColours, type Colours } from '../styles/colours.ts';

/** People that a town must have to be named, by metres a pixel. */
const SHOWN_FROM: [number, number][] = [[2600, Infinity], [900, 450_000], [500, 200_000], [250, 90_000], [120, 40_000], [60, 15_000], [0, 0]];

const leastPopulation = (metresPerPixel: number) => SHOWN_FROM.find(([from]) => metresPerPixel > from)![1];

export function makePlaces(): VectorLayer {
  const source = new VectorSource({ loader: () => void load(source) });
  const layer = new VectorLayer({ source, declutter: true, renderOrder: (a, b) => population(b) - population(a) });
  followColours((c) => layer.setStyle(placeStyle(c)));
  return layer;
}

async function load(source: VectorSource): Promise<void> {
  const places = await readPlaces();
  source.addFeatures(places.map(({ name, population, at }) => new Feature({ geometry: new PointGeometry(at), name, population })));
}

const population = (feature: FeatureLike) => Number(feature.get('population'));

function placeStyle(c: Colours): (feature: FeatureLike, resolution: number) => Style | undefined {
  const text = new Text({ font: '12px "Iowan Old Style", Palatino, "DejaVu Serif", serif', textAlign: 'left', offsetX: 6, fill: new Fill({ color: c.label }), stroke: new Stroke({ color: c.halo, width: 3 }) });
  const style = new Style({ image: new Circle({ radius: 2, fill: new Fill({ color: c.label }) }), text });
  return (feature, resolution) => {
    if (population(feature) < leastPopulation(resolution)) return undefined;
    text.setText(feature.get('name') as string);
    return style;
  };
}
