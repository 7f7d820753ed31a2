// How the fate of a square is drawn, on the map and in the legend.
import type { FeatureLike } from 'ol/Feature.js';
import LineString from 'ol/geom/LineString.js';
import Point from 'ol/geom/Point.js';
import type Polygon from 'ol/geom/Polygon.js';
import CircleStyle from 'ol/style/Circle.js';
import Fill from 'ol/style/Fill.js';
import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import type { Fate } from '../api.ts';
import { centreOfRing } from '../squares/outline.ts';
import type { Colours } from './colours.ts';
import { mixed } from './ramp.ts';

/** Share of the ramp's oldest colour in a square that was kept. */
const KEPT_TINT = 0.45;

/** The colour of each fate: what is new is strong, what is gone is an outline, what is not known is quiet. */
export function fateColours({ ramp, land, label }: Pick<Colours, 'ramp' | 'land' | 'label'>): Record<Fate, string> {
  return { gained: ramp[3]!, lost: ramp[1]!, kept: mixed(land, ramp[0]!, KEPT_TINT), 'not-surveyed-before': label, 'not-surveyed-after': label };
}

export function fateStyle(colours: Colours): (feature: FeatureLike) => Style[] {
  const colour = fateColours(colours);
  const edge = (c: string, width: number) => new Stroke({ color: c, width });
  const dot = (filled: boolean) => new Style({
    geometry: (feature) => new Point(centreOfRing(ring(feature as FeatureLike))),
    image: new CircleStyle({ radius: 2.2, stroke: edge(colours.label, 1), ...(filled ? { fill: new Fill({ color: colours.label }) } : {}) }),
  });
  const styles: Record<Fate, Style[]> = {
    gained: [new Style({ fill: new Fill({ color: colour.gained }), stroke: edge(colours.land, 0.6) })],
    lost: [
      new Style({ fill: new Fill({ color: colours.land }), stroke: edge(colour.lost, 1.4) }),
      new Style({ geometry: (feature) => diagonal(feature as FeatureLike), stroke: edge(colour.lost, 1.4) }),
    ],
    kept: [new Style({ fill: new Fill({ color: colour.kept }), stroke: edge(colours.land, 0.6) })],
    'not-surveyed-before': [dot(true)],
    'not-surveyed-after': [dot(false)],
  };
  return (feature) => styles[feature.get('change') as Fate] ?? [];
}

const ring = (feature: FeatureLike) => (feature.getGeometry() as Polygon).getCoordinates()[0]!;

/** From the south-west corner to the north-east one. */
const diagonal = (feature: FeatureLike) => new LineString([ring(feature)[0]!, ring(feature)[2]!]);
