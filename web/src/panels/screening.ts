// Every species by one measure of change, sortable, with what chance alone would show.
import { api, changeOfAllAddress, ROOT, type ChangeOfAll, type ChangeQuestion, type Screening } from '../api.ts';
import { el } from '../elements.ts';
import { question } from '../loading.ts';
import type { Store } from '../store.ts';
import { scientific } from '../words.ts';
import { shown } from './waiting.ts';

interface Row { taxon: string; name: string; value: number; low: number; high: number; adjusted: number; standsOut: boolean }

const COLUMNS: { title: string; of: (row: Row) => number | string; hint?: string }[] = [
  { title: 'Species', of: (row) => row.name },
  { title: 'Change', of: (row) => row.value },
  { title: 'Interval', of: (row) => row.low },
  { title: 'By chance', of: (row) => row.adjusted, hint: 'Share of false alarms to expect among the species at least as striking as this one' },
];

/** A fold that asks for all species when it is opened first. */
export function screeningFold(asked: ChangeQuestion, store: Store): HTMLElement {
  const host = el('div');
  const answer = question<ChangeOfAll>((loaded) => host.replaceChildren(...shown(loaded, (all) => draw(all, asked, store))));
  let held = false;
  const fold: HTMLDetailsElement = el('details', { toggle: () => {
    if (!fold.open || held) return;
    held = true;
    answer.ask((signal) => api.changeOfAll(asked, signal));
  } }, el('summary', {}, 'All species between these periods'), host);
  return fold;
}

function draw(all: ChangeOfAll, asked: ChangeQuestion, store: Store): Node[] {
  if (all.screenings.length === 0) return [el('p', { class: 'empty' }, 'No measure that allows for effort can be given for these periods.')];
  const body = el('div');
  const select = el('select', { 'aria-label': 'Measure of change', change: () => show(select.selectedIndex) },
    ...all.screenings.map((s) => el('option', {}, s.group === null ? s.label : `${s.label} (${s.group})`)));
  const show = (index: number) => body.replaceChildren(...table(all, all.screenings[index]!, store));
  show(0);
  return [select, body, el('p', { class: 'take' }, 'Take this: ', el('a', { href: ROOT + changeOfAllAddress(asked, 'csv'), download: true }, 'all measures of all species as CSV'))];
}

function table(all: ChangeOfAll, screening: Screening, store: Store): Node[] {
  const rows = screening.taxa.flatMap(({ taxon, adjusted, standsOut }): Row[] => {
    const found = all.taxa.find((e) => e.taxon === taxon && e.method === screening.method);
    return found === undefined || found.value === null ? [] : [{ taxon, name: found.scientificName, value: found.value, low: found.low!, high: found.high!, adjusted, standsOut }];
  });
  const unit = all.taxa.find((e) => e.method === screening.method)?.unit ?? '';
  const body = el('tbody');
  const head = COLUMNS.map((column, i) => el('th', { scope: 'col', 'aria-sort': i === 3 ? 'ascending' : 'none' },
    el('button', { type: 'button', class: 'link', title: column.hint, click: () => sortBy(i) }, i === 1 ? `Change, ${unit}` : column.title)));

  function sortBy(index: number): void {
    const down = head[index]!.getAttribute('aria-sort') === 'ascending';
    head.forEach((th, i) => th.setAttribute('aria-sort', i === index ? (down ? 'descending' : 'ascending') : 'none'));
    const of = COLUMNS[index]!.of;
    const sorted = rows.toSorted((a, b) => compare(of(a), of(b)));
    fill(down ? sorted.reverse() : sorted);
  }

  const fill = (sorted: Row[]) => body.replaceChildren(...sorted.map((row) => el('tr', { class: row.standsOut ? 'current' : null },
    el('th', { scope: 'row' }, el('button', { type: 'button', class: 'link', click: () => store.change({ taxon: row.taxon }) }, scientific(row.name))),
    el('td', {}, figure(row.value)), el('td', {}, `${figure(row.low)} to ${figure(row.high)}`), el('td', {}, row.adjusted < 0.001 ? '< 0.001' : row.adjusted.toFixed(3)))));
  fill(rows);
  return [el('p', { class: 'note' }, screening.caution), el('table', {}, el('thead', {}, el('tr', {}, ...head)), body)];
}

const compare = (a: number | string, b: number | string) => typeof a === 'string' ? a.localeCompare(String(b)) : a - Number(b);

const figure = (v: number) => Math.abs(v) < 1 ? v.toFixed(2) : v.toFixed(1);
