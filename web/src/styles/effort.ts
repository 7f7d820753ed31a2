// How a square is drawn by the visits that recorders made to it, on the map and in the legend.
import type { FeatureLike } from 'ol/Feature.js';
import Point from 'ol/geom/Point.js';
import type Polygon from 'ol/geom/Polygon.js';
import CircleStyle from 'ol/style/Circle.js';
import Fill from 'ol/style/Fill.js';
import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import type { EffortSquare } from '../api.ts';
import { centreOfRing } from '../squares/outline.ts';
import type { Colours } from './colours.ts';
import { mixed, rampColours } from './ramp.ts';

/** Least visits of each class, fewest first. */
export const VISIT_CLASSES = [1, 3, 10, 30] as const;

/** Index of the class of a square that was visited. */
export const visitClass = (visits: number) => VISIT_CLASSES.findLastIndex((least) => visits >= least);

export const visitColours = ({ land, ramp }: Pick<Colours, 'land' | 'ramp'>) => rampColours([mixed(land, ramp[1]!, 0.25), ramp[1]!, ramp[3]!], VISIT_CLASSES.length);

/** Shade by visits, a pale dot in squares that were well surveyed, a hollow dot where nobody came back. */
export function effortStyle(colours: Colours): (feature: FeatureLike) => Style[] {
  const edge = new Stroke({ color: colours.land, width: 0.6 });
  const byVisits = visitColours(colours).map((color) => new Style({ fill: new Fill({ color }), stroke: edge }));
  const inTheMiddle = (image: CircleStyle, zIndex = 0) => new Style({ geometry: (feature) => new Point(centreOfRing((feature.getGeometry() as Polygon).getCoordinates()[0]!)), image, zIndex });
  const wellSurveyed = inTheMiddle(new CircleStyle({ radius: 1.5, fill: new Fill({ color: colours.land }) }), 1);
  const notAgain = inTheMiddle(new CircleStyle({ radius: 2.2, stroke: new Stroke({ color: colours.label, width: 1 }) }));
  return (feature) => {
    const { visitsAfter, wellSurveyedAfter } = feature.getProperties() as unknown as EffortSquare;
    if (visitsAfter === 0) return [notAgain];
    const shade = byVisits[visitClass(visitsAfter)]!;
    return wellSurveyedAfter ? [shade, wellSurveyed] : [shade];
  };
}
