// How a square is painted: later is stronger. The oldest class is hollow, so that it is told apart without colour too.
import type { FeatureLike } from 'ol/Feature.js';
import Fill from 'ol/style/Fill.js';
import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import type { Mode, Shading } from '../state.ts';
import { mixed } from './ramp.ts';
import { classOf, type YearClass } from './yearClasses.ts';

/** Share of its own colour that a hollow square is filled with. */
const HOLLOW_TINT = 0.3;

export interface Painting {
  mode: Mode;
  shading: Shading;
  /** Last year shown in arrival mode; null for all. */
  year: number | null;
  classes: readonly YearClass[];
  /** One colour a class (arrival mode) or a period (presence mode), oldest first. */
  colours: readonly string[];
  land: string;
  ink: string;
}

/** A style function with one ready style a class. */
export function squareStyle(painting: Painting): (feature: FeatureLike) => Style | undefined {
  const { mode, shading, year, classes, colours } = painting;
  const styles = colours.map((colour, i) => i === 0 && colours.length > 1 ? hollow(colour, painting.land) : solid(colour, painting.land));
  if (mode === 'presence') return (feature) => styles[Number(feature.get(shading === 'latest' ? 'latest' : 'period'))];

  const fresh = colours.map((colour) => arrivedNow(colour, painting.ink));
  return (feature) => {
    const first = Number(feature.get('first'));
    if (year !== null && first > year) return undefined;
    return (first === year ? fresh : styles)[classOf(classes, first)];
  };
}

const solid = (colour: string, land: string) => new Style({ fill: new Fill({ color: colour }), stroke: new Stroke({ color: land, width: 0.6 }) });

const hollow = (colour: string, land: string) => new Style({ fill: new Fill({ color: mixed(land, colour, HOLLOW_TINT) }), stroke: new Stroke({ color: colour, width: 1.4 }) });

const arrivedNow = (colour: string, ink: string) => new Style({ fill: new Fill({ color: colour }), stroke: new Stroke({ color: ink, width: 1.4 }), zIndex: 1 });
