// The one way to draw a chart: Observable Plot, fetched when the first chart is wanted, so that nobody waits for it who only looks at the map.
// Each mark has a class, and look/charts.css gives the class its colour: light and dark follow without drawing anew.
import type { PlotOptions } from '@observablehq/plot';
import { el } from '../elements.ts';

export type Plot = typeof import('./marks.ts');

/** Pixels across before the column makes it wider or narrower. */
export const WIDTH = 380;

export interface ChartOptions {
  /** Class of the chart, for the style sheet. */
  kind: string;
  /** The finding in words, for those who listen; a table of the same numbers stands beside every chart. */
  said: string;
  /** Pixels, at {@link WIDTH}. */
  height: number;
}

/** A place that is as large as the chart from the start, so that nothing jumps when it comes. */
export function chart({ kind, said, height }: ChartOptions, options: (plot: Plot) => PlotOptions): HTMLElement {
  const host = el('div', { class: `chart ${kind}`, role: 'img', 'aria-label': said });
  host.style.aspectRatio = `${WIDTH} / ${height}`;
  import('./marks.ts').then(
    (plot) => host.replaceChildren(hushed(plot.plot({ ...options(plot), width: WIDTH, height }))),
    () => host.replaceWith(el('p', { class: 'note' }, 'The chart could not be fetched from the server. The table holds the same numbers.')));
  return host;
}

/** The place of the drawing says what it shows; the names of its parts would only be read out between. */
function hushed(drawing: Element): Element {
  drawing.setAttribute('aria-hidden', 'true');
  return drawing;
}
