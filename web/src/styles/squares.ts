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

/** Share of ink in a square of known presence beside a forecast. */
const KNOWN_TINT = 0.22;

/** Below this many pixels a square has no room for an edge: the gaps between squares would hide the squares. */
const LEAST_EDGED_PIXELS = 4;

export interface Painting {
  mode: Mode;
  shading: Shading;
  /** Last year shown in arrival mode; null for all. */
  year: number | null;
  /** Side of a square, metres. */
  side: number;
  classes: readonly YearClass[];
  /** One colour a class (arrival mode) or a period (presence mode), oldest first. */
  colours: readonly string[];
  land: string;
  ink: string;
}

/** A style function with one ready style a class. */
export function squareStyle(painting: Painting): (feature: FeatureLike, resolution: number) => Style | undefined {
  const { mode, shading, year, side, classes, colours } = painting;
  const edged = colours.map((colour, i) => i === 0 && colours.length > 1 ? hollow(colour, painting.land) : solid(colour, painting.land));
  const tiny = colours.map(speck);
  const styles = (resolution: number) => side / resolution < LEAST_EDGED_PIXELS ? tiny : edged;
  if (mode === 'presence') return (feature, resolution) => styles(resolution)[Number(feature.get(shading === 'latest' ? 'latest' : 'period'))];

  // Beside a forecast what is known stays quiet.
  if (mode === 'forecast') {
    const known = solid(mixed(painting.land, painting.ink, KNOWN_TINT), painting.land);
    return () => known;
  }

  const fresh = colours.map((colour) => arrivedNow(colour, painting.ink));
  return (feature, resolution) => {
    const first = Number(feature.get('first'));
    if (year !== null && first > year) return undefined;
    return (first === year ? fresh : styles(resolution))[classOf(classes, first)];
  };
}

/** A square too small to see the shape of; at least a pixel wide, the newer over the older. */
const speck = (colour: string, age: number) => new Style({ fill: new Fill({ color: colour }), stroke: new Stroke({ color: colour, width: 0.8 }), zIndex: age });

const solid = (colour: string, land: string) => new Style({ fill: new Fill({ color: colour }), stroke: new Stroke({ color: land, width: 0.6 }) });

const hollow = (colour: string, land: string) => new Style({ fill: new Fill({ color: mixed(land, colour, HOLLOW_TINT) }), stroke: new Stroke({ color: colour, width: 1.4 }) });

const arrivedNow = (colour: string, ink: string) => new Style({ fill: new Fill({ color: colour }), stroke: new Stroke({ color: ink, width: 1.4 }), zIndex: 1 });
