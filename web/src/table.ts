// Tables of figures: the first column names the rows.
import { el } from './elements.ts';

type Cell = Node | string;

/** A heading that is clear to the eye without words, and is told to those who listen. */
export const unseen = (words: string): HTMLElement => el('span', { class: 'unseen' }, words);

export interface TableOptions { class?: string; caption?: string }

export function table(head: readonly Cell[], rows: readonly (readonly Cell[])[], { class: name, caption }: TableOptions = {}): HTMLTableElement {
  const row = ([title, ...cells]: readonly Cell[]) => el('tr', {}, el('th', { scope: 'row' }, title), ...cells.map((cell) => el('td', {}, cell)));
  return el('table', { class: name }, caption === undefined ? null : el('caption', { class: 'unseen' }, caption),
    el('thead', {}, el('tr', {}, ...head.map((title) => el('th', { scope: 'col' }, title)))), el('tbody', {}, ...rows.map(row)));
}

/** The numbers of a chart, folded away under it. */
export const tableTwin = (head: readonly Cell[], rows: readonly (readonly Cell[])[], summary = 'The same as a table'): HTMLElement =>
  el('details', {}, el('summary', {}, summary), table(head, rows));
