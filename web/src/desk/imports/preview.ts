// The first rows as they would be read: what was understood before, the row's own cells after.
import { el } from '../../elements.ts';
import { count } from '../../words.ts';
import type { Preview, PreviewRow } from '../answers.ts';
import type { DoubtTitles } from '../doubts.ts';
import { days } from '../words.ts';

export function drawRows({ columns, rows, counts, problem }: Preview, titles: DoubtTitles): Node[] {
  const isRead = problem === null;
  const understood = isRead ? ['Taxon', 'Square', 'Date', 'Verdict'] : [];
  const head = el('tr', {}, el('th', { scope: 'col' }, 'Row'), ...understood.map((name) => el('th', { scope: 'col' }, name)),
    ...columns.map(({ name }) => el('th', { scope: 'col', class: 'cell' }, name)));
  return [
    el('h3', {}, el('span', {}, 'The first rows'), el('span', { class: 'aside' }, isRead ? countWords(counts) : '')),
    el('div', { class: 'wide', tabindex: 0, role: 'region', 'aria-label': 'The first rows as they would be read' },
      el('table', { class: 'rows' }, el('thead', {}, head), el('tbody', {}, ...rows.map((row) => rowLine(row, isRead, titles))))),
  ];
}

function countWords({ read, accepted, refused }: Preview['counts']): string {
  return `of the first ${count(read)}: ${count(accepted)} understood, ${count(refused)} refused`;
}

function rowLine(row: PreviewRow, isRead: boolean, titles: DoubtTitles): HTMLElement {
  const cells = row.cells.map((cell) => el('td', { class: 'cell' }, cell));
  return el('tr', { class: isRead && row.refused !== null ? 'refused' : null }, el('th', { scope: 'row' }, count(row.row)), ...(isRead ? understoodCells(row, titles) : []), ...cells);
}

function understoodCells({ taxon, square, dates, doubts, refused }: PreviewRow, titles: DoubtTitles): HTMLElement[] {
  if (refused !== null) return [el('td', { colspan: 4, class: 'reason' }, el('span', {}, el('strong', {}, `Refused (${refused.field}): `), refused.reason))];
  const [first, last] = (dates ?? '').split('/');
  return [
    el('td', {}, el('i', { class: 'scientific', lang: 'la' }, taxon ?? '')),
    el('td', {}, square ?? ''),
    el('td', { class: 'date' }, first ? days(first, last ?? first) : ''),
    el('td', {}, doubts.length === 0 ? 'good' : `to be looked at: ${doubts.map(titles.of).join('; ')}`),
  ];
}
