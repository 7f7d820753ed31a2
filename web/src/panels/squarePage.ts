// What the leaf tells of a square.
import { fieldListAddress, ROOT, type SquarePage } from '../api.ts';
import { el } from '../elements.ts';
import { periodInWords } from '../periods.ts';
import type { Store } from '../store.ts';
import { table } from '../table.ts';
import { count, counted, latLon, scientific, shownName, years } from '../words.ts';
import { expected, howWellKnown, newLately } from './squareKnown.ts';
import { whatIs } from './whatIs.ts';

export function drawSquare(page: SquarePage, store: Store): Node[] {
  const species = page.taxa.filter((t) => !t.standsForOthers).length;
  return [
    el('h3', {}, el('span', { class: 'reference' }, page.square), el('span', { class: 'aside' }, latLon(page.latitude, page.longitude))),
    el('p', {}, page.records === 0
      ? 'Nobody has sent a record from here yet. Perhaps nobody looked.'
      : `${counted(page.records, 'record')} of ${counted(species, 'species', 'species')} from ${counted(page.visits, 'visit')}.`),
    whatIs('What recorders sent from this square. A visit is a day here by one recorder or party. What may be missing comes from the squares round it; what is not found may only not have been looked for.'),
    ...newLately(page),
    el('p', { class: 'take' }, 'Take this: ', el('a', { href: ROOT + fieldListAddress(page.square, store.state.quality), target: '_blank', rel: 'noopener' }, 'field list to print'), ', which needs no network once opened.'),
    ...support(page),
    ...expected(page, store),
    ...speciesTable(page, store),
    ...howWellKnown(page),
    around(page, store),
  ];
}

function support({ supports }: SquarePage): Node[] {
  if (supports === null) return [];
  const rows = supports.perPeriod.map((p) => [periodInWords(p.period), count(p.records), count(p.confirmed), p.records === 0 ? '–' : years(p.firstYear, p.lastYear)]);
  return [
    el('h4', {}, 'What supports it'),
    table(['Period', 'Records', 'Confirmed', 'Years'], rows),
    el('p', { class: 'note', hidden: !supports.note }, supports.note ?? ''),
    el('details', { hidden: supports.finerSquares.length === 0 }, el('summary', {}, `Known more closely in ${counted(supports.finerSquares.length, 'smaller square')}`),
      el('ul', { class: 'finer' }, ...supports.finerSquares.map((f) => el('li', {}, `${f.square}: ${counted(f.records, 'record')}, ${years(f.firstYear, f.lastYear)}`)))),
  ];
}

function speciesTable({ taxa, newLately: fresh }: SquarePage, store: Store): Node[] {
  if (taxa.length === 0) return [];
  const row = (t: SquarePage['taxa'][number]) => el('tr', { class: t.id === store.state.taxon ? 'current' : null },
    el('th', { scope: 'row' }, el('button', { type: 'button', class: 'link', click: () => store.change({ taxon: t.id, year: null }) }, !t.vernacularName ? scientific(t.scientificName) : shownName(t)),
      fresh.includes(t.id) && el('span', { class: 'fresh' }, 'new')),
    el('td', {}, count(t.records)), el('td', {}, years(t.firstYear, t.lastYear)));
  return [el('h4', {}, 'Species found here'), el('table', { class: 'found' }, el('thead', {}, headers('Species', 'Records', 'Years')), el('tbody', {}, ...taxa.map(row)))];
}

function around({ around: squares }: SquarePage, store: Store): HTMLElement {
  return el('div', { hidden: squares.length === 0 }, el('h4', {}, 'Around it, with species found'),
    el('p', { class: 'around' }, ...squares.map(({ square, species }) => el('span', {}, el('button', { type: 'button', class: 'link', click: () => store.change({ square }) }, square), ' ', el('span', { class: 'aside' }, count(species))))));
}

const headers = (...names: string[]) => el('tr', {}, ...names.map((name) => el('th', { scope: 'col' }, name)));
