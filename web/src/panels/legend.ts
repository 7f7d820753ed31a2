// The legend, and with it the painting of the squares: both come from the same classes, so they cannot differ.
import { api, type Arrivals, type Effort, type Fates, type Foretold, type Presence } from '../api.ts';
import { changeQuestion } from '../changePeriods.ts';
import { el } from '../elements.ts';
import { question } from '../loading.ts';
import { periodInWords } from '../periods.ts';
import { SHADINGS, sideMetres, type ViewState } from '../state.ts';
import { differs, type Store } from '../store.ts';
import { tableTwin } from '../table.ts';
import { followColours, type Colours } from '../styles/colours.ts';
import { rampColours } from '../styles/ramp.ts';
import type { Painting } from '../styles/squares.ts';
import { classOf, yearClasses, type YearClass } from '../styles/yearClasses.ts';
import { count, counted, omittedInWords } from '../words.ts';
import { chanceLegend } from './chanceLegend.ts';
import { changeLegend, NEEDS_TWO_PERIODS } from './changeLegend.ts';
import { effortLegend } from './effortLegend.ts';
import { shown } from './waiting.ts';

const SHADING_WORDS = { latest: 'last found', first: 'first found' };

/** What else is drawn from the answers that the legend tells of. */
export interface Drawn {
  paint(painting: Painting): void;
  tellYears(years: number[]): void;
  showFates(fates: Fates | null): void;
  showEffort(effort: Effort | null): void;
  showChances(foretold: Foretold | null): void;
}

export function mountLegend(host: HTMLElement, store: Store, { paint, tellYears, showFates, showEffort, showChances }: Drawn): void {
  let colours: Colours;
  let classes: YearClass[] = [];
  let draw = (): Node[] => [];
  const redraw = () => host.replaceChildren(...draw());
  const repaint = () => paint(painting(store.state, classes, colours));

  const presence = question<Presence>((answer) => {
    draw = () => shown(answer, (value) => presenceLegend(value, store, colours));
    redraw();
  });
  const arrivals = question<Arrivals>((answer) => {
    if (answer.kind === 'ready') useYears(answer.value);
    draw = () => shown(answer, (value) => arrivalLegend(value, classes, colours));
    redraw();
  });

  const fates = question<Fates>((answer) => {
    showFates(answer.kind === 'ready' ? answer.value : null);
    const asked = changeQuestion(store.state);
    draw = () => shown(answer, (value) => asked === null ? [] : changeLegend(value, asked, colours));
    redraw();
  });

  const effort = question<Effort>((answer) => {
    showEffort(answer.kind === 'ready' ? answer.value : null);
    const asked = changeQuestion(store.state);
    draw = () => shown(answer, (value) => asked === null ? [] : effortLegend(value, asked, colours));
    redraw();
  });

  const foretold = question<Foretold>((answer) => {
    showChances(answer.kind === 'ready' ? answer.value : null);
    const { taxon, size } = store.state;
    draw = () => shown(answer, (value) => taxon === null ? [] : chanceLegend(value, taxon, size, colours, () => store.change({ panel: 'forecast' })));
    redraw();
  });

  function needsTwoPeriods(): void {
    draw = () => [el('p', { class: 'empty' }, NEEDS_TWO_PERIODS)];
    redraw();
  }

  function useYears({ features }: Arrivals): void {
    const years = features.map((f) => f.properties.year).sort((a, b) => a - b);
    classes = years.length === 0 ? [] : yearClasses(years[0]!, years.at(-1)!);
    tellYears(years);
    repaint();
  }

  function ask({ taxon, size, periods, quality, mode }: ViewState): void {
    presence.clear();
    arrivals.clear();
    fates.clear();
    effort.clear();
    foretold.clear();
    if (taxon === null) return;
    const twoPeriods = changeQuestion(store.state);
    if (mode === 'change' || mode === 'effort') {
      if (twoPeriods === null) needsTwoPeriods();
      else if (mode === 'change') fates.ask((signal) => api.fates(twoPeriods, signal));
      else effort.ask((signal) => api.effort(twoPeriods, signal));
    } else if (mode === 'arrival') arrivals.ask((signal) => api.arrivals(taxon, size, quality, signal));
    else if (mode === 'forecast') foretold.ask((signal) => api.foretold(taxon, size, signal));
    else presence.ask((signal) => api.presence({ taxon, size, periods, quality }, signal));
  }

  store.follow((now, before) => {
    host.hidden = now.taxon === null;
    if (differs(now, before, 'taxon', 'size', 'periods', 'quality', 'mode')) ask(now);
    if (differs(now, before, 'mode', 'shading', 'year', 'periods', 'size')) repaint();
    if (differs(now, before, 'shading')) redraw();
  });
  followColours((read) => {
    colours = read;
    repaint();
    redraw();
  });
}

function painting(state: ViewState, classes: YearClass[], { ramp, land, ink }: Colours): Painting {
  const number = state.mode === 'presence' ? state.periods.length : classes.length;
  return { mode: state.mode, shading: state.shading, year: state.year, side: sideMetres(state.size), classes, colours: rampColours(ramp, number), land, ink };
}

function presenceLegend({ features, omitted }: Presence, store: Store, { ramp }: Colours): Node[] {
  const { periods, shading } = store.state;
  const key = shading === 'latest' ? 'latest' as const : 'period' as const;
  const counts = periods.map((_, i) => features.filter((f) => f.properties[key] === i).length);
  const rows = periods.map((period, i) => ({ name: periodInWords(period), squares: counts[i]! })).reverse();
  if (features.length === 0) return [el('p', { class: 'empty' }, 'No square has a record that meets these choices. Try larger squares, other periods or “All” records.')];
  return [
    heading(periods.length > 1 ? ['Colour: ', switcher(store)] : ['Found'], counted(features.length, 'square')),
    keyList(rows, rampColours(ramp, periods.length).reverse()),
    note(omittedInWords(omitted)),
    countsByPeriod(features, periods),
  ];
}

/** A square counts in each period in which it has a record, whatever colour it has on the map. */
function countsByPeriod(features: Presence['features'], periods: readonly string[]): HTMLElement {
  const rows = periods.map((period, i) => {
    const records = features.map(({ properties }) => properties[`p${i}`] ?? 0).filter((n) => n > 0);
    return [periodInWords(period), count(records.length), count(records.reduce((sum, n) => sum + n, 0))];
  });
  return tableTwin(['Period', 'Squares with records', 'Records'], rows.reverse(), 'Squares and records in each period');
}

function arrivalLegend({ features }: Arrivals, classes: YearClass[], { ramp }: Colours): Node[] {
  if (features.length === 0) return [el('p', { class: 'empty' }, 'No square has a dated first record.')];
  const rows = classes.map((c) => ({ name: c.from === c.to ? `${c.from}` : `${c.from}–${c.to}`, squares: 0 }));
  for (const f of features) rows[classOf(classes, f.properties.year)]!.squares++;
  return [
    heading(['First found'], counted(features.length, 'square')),
    keyList(rows.reverse(), rampColours(ramp, classes.length).reverse()),
    note('A first record is not the arrival itself: a species may live in a square for years before anyone looks there.'),
  ];
}

const heading = (words: (Node | string)[], aside: string) => el('h3', {}, el('span', {}, ...words), el('span', { class: 'aside' }, aside));

const note = (text: string) => el('p', { class: 'note', hidden: text === '' }, text);

/** Newest first, as the eye seeks it; the last row is the hollow class. */
function keyList(rows: { name: string; squares: number }[], colours: string[]): HTMLElement {
  return el('ul', { class: 'key' }, ...rows.map(({ name, squares }, i) => {
    const isHollow = i === rows.length - 1 && rows.length > 1;
    const swatch = el('span', { class: isHollow ? 'swatch hollow' : 'swatch' });
    swatch.style.setProperty('--swatch', colours[i]!);
    return el('li', {}, swatch, el('span', {}, name), el('span', { class: 'aside' }, count(squares)));
  }));
}

function switcher(store: Store): HTMLElement {
  const select = el('select', { 'aria-label': 'What the colour tells', change: () => store.change({ shading: SHADINGS.find((s) => s === select.value) ?? 'latest' }) },
    ...SHADINGS.map((shading) => el('option', { value: shading, selected: shading === store.state.shading }, SHADING_WORDS[shading])));
  return select;
}
