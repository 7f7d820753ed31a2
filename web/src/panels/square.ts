// The chosen square: what supports the species there, what else lives there, and the squares around it.
import { api, type SquarePage } from '../api.ts';
import { el } from '../elements.ts';
import { question } from '../loading.ts';
import { periodInWords } from '../periods.ts';
import { readSquare } from '../squares/names.ts';
import { differs, type Store } from '../store.ts';
import { count, counted, latLon, scientific, shownName, years } from '../words.ts';
import { shown } from './waiting.ts';

export function mountSquare(host: HTMLElement, store: Store): void {
  const fault = el('p', { class: 'fault', role: 'alert' });
  const input = el('input', { type: 'text', id: 'square-input', spellcheck: 'false', autocapitalize: 'characters', placeholder: 'such as TL45 or H87' });
  const form = el('form', { class: 'ask', submit: go }, el('label', { for: 'square-input' }, 'Grid reference of a square'), input, el('button', { type: 'submit' }, 'Show'), fault);
  const body = el('div', { class: 'body', 'aria-live': 'polite' });
  host.append(form, body);

  const empty = [el('p', { class: 'empty' }, 'Click a square on the map, or write its grid reference, to see what lives there and what the dot rests on.')];
  let isNewSquare = false;
  const asked = question<SquarePage>((answer) => {
    body.replaceChildren(...shown(answer, (page) => drawSquare(page, store), empty));
    if (answer.kind === 'ready' && isNewSquare) bringIntoView(host);
  });

  function go(event: Event): void {
    event.preventDefault();
    const name = input.value.toUpperCase().replaceAll(/\s/g, '');
    const isSquare = readSquare(name) !== null;
    fault.textContent = isSquare ? '' : 'That is no square of 100, 10, 5, 2 or 1 km. Write it like TL45, TL45NW, TL45K, TL4558 or H87.';
    if (isSquare) store.change({ square: name });
  }

  store.follow((now, before) => {
    if (!differs(now, before, 'square', 'taxon', 'periods', 'quality')) return;
    const { square, taxon, periods, quality } = now;
    isNewSquare = now !== before && square !== before.square;
    input.value = square ?? '';
    if (square === null) asked.clear();
    else asked.ask((signal) => api.square(square, taxon, periods, quality, signal));
  });
}

/** Beside the map the answer to a click is scrolled to; under the map (a narrow screen) that would take the map away. */
function bringIntoView(host: HTMLElement): void {
  if (window.matchMedia('(min-width: 821px)').matches) host.closest('.details')?.scrollIntoView({ block: 'nearest' });
}

function drawSquare(page: SquarePage, store: Store): Node[] {
  return [
    el('h3', {}, el('span', { class: 'reference' }, page.square), el('span', { class: 'aside' }, latLon(page.latitude, page.longitude))),
    el('p', {}, page.records === 0
      ? 'Nobody has sent a record from here yet. Perhaps nobody looked.'
      : `${counted(page.records, 'record')} of ${counted(page.taxa.length, 'species', 'species')} from ${counted(page.visits, 'visit')}.`),
    ...support(page),
    ...speciesTable(page, store),
    around(page, store),
  ];
}

function support({ supports }: SquarePage): Node[] {
  if (supports === null) return [];
  const rows = supports.perPeriod.map((p) => el('tr', {}, el('th', { scope: 'row' }, periodInWords(p.period)), el('td', {}, count(p.records)), el('td', {}, count(p.confirmed)),
    el('td', {}, p.records === 0 ? '–' : years(p.firstYear, p.lastYear))));
  return [
    el('h4', {}, 'What supports it'),
    el('table', {}, el('thead', {}, headers('Period', 'Records', 'Confirmed', 'Years')), el('tbody', {}, ...rows)),
    el('p', { class: 'note', hidden: !supports.note }, supports.note ?? ''),
    el('details', { hidden: supports.finerSquares.length === 0 }, el('summary', {}, `Known more closely in ${counted(supports.finerSquares.length, 'smaller square')}`),
      el('ul', { class: 'finer' }, ...supports.finerSquares.map((f) => el('li', {}, `${f.square}: ${counted(f.records, 'record')}, ${years(f.firstYear, f.lastYear)}`)))),
  ];
}

function speciesTable({ taxa }: SquarePage, store: Store): Node[] {
  if (taxa.length === 0) return [];
  const row = (t: SquarePage['taxa'][number]) => el('tr', { class: t.id === store.state.taxon ? 'current' : null },
    el('th', { scope: 'row' }, el('button', { type: 'button', class: 'link', click: () => store.change({ taxon: t.id, year: null }) }, !t.vernacularName ? scientific(t.scientificName) : shownName(t))),
    el('td', {}, count(t.records)), el('td', {}, years(t.firstYear, t.lastYear)));
  return [el('h4', {}, 'Species found here'), el('table', {}, el('thead', {}, headers('Species', 'Records', 'Years')), el('tbody', {}, ...taxa.map(row)))];
}

function around({ neighbours }: SquarePage, store: Store): HTMLElement {
  return el('p', { class: 'around', hidden: neighbours.length === 0 }, 'Around it: ',
    ...neighbours.map((name) => el('button', { type: 'button', class: 'link', click: () => store.change({ square: name }) }, name)));
}

const headers = (...names: string[]) => el('tr', {}, ...names.map((name) => el('th', { scope: 'col' }, name)));
