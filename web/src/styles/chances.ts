// How a square is drawn by the chance that the species will be there, on the map and in the legend.
import type { FeatureLike } from 'ol/Feature.js';
import Fill from 'ol/style/Fill.js';
import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import type { ForetoldSquare } from '../api.ts';
import type { Colours } from './colours.ts';
import { mixed, rampColours } from './ramp.ts';

/** Least chance of each class, the least likely first. */
export const CHANCES = [0.01, 0.1, 0.33, 0.67] as const;

/** Index of the class of a chance. */
export const chanceClass = (chance: number) => Math.max(0, CHANCES.findLastIndex((least) => chance >= least));

export const chanceColours = ({ land, ramp }: Pick<Colours, 'land' | 'ramp'>) => rampColours([mixed(land, ramp[0]!, 0.35), ramp[0]!, ramp[1]!, ramp[2]!], CHANCES.length);

/** Shade by chance; an edge of ink round squares that are named to be searched. */
export function chanceStyle(colours: Colours): (feature: FeatureLike) => Style {
  const shades = chanceColours(colours);
  const style = (color: string, edge: string, width: number, zIndex: number) => new Style({ fill: new Fill({ color }), stroke: new Stroke({ color: edge, width }), zIndex });
  const plain = shades.map((shade) => style(shade, colours.land, 0.6, 0));
  const named = shades.map((shade) => style(shade, colours.ink, 1.6, 1));
  return (feature) => {
    const { byYear, search } = feature.getProperties() as unknown as ForetoldSquare;
    return (search === null ? plain : named)[chanceClass(byYear)]!;
  };
}
