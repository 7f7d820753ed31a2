// The queue as a list: the gravest doubts first, those decided marked, those selected ticked.
import { el } from '../../elements.ts';
import { count, counted, scientific } from '../../words.ts';
import type { RecordLine } from '../answers.ts';
import type { DoubtTitles } from '../doubts.ts';
import { days, STATUS_WORDS } from '../words.ts';
import { waiting, type Queue } from './queue.ts';

export interface ListActions {
  look(at: number): void;
  toggle(id: string): void;
  selectAll(): void;
  selectNone(): void;
  more(): void;
}

export function drawList(queue: Queue, doubts: DoubtTitles, actions: ListActions): Node[] {
  const { records, next, selected } = queue;
  const all = el('button', { type: 'button', class: 'link', click: selected.size > 0 ? actions.selectNone : actions.selectAll }, selected.size > 0 ? 'Select none' : 'Select all shown');
  const aside = selected.size > 0 ? `${count(selected.size)} selected` : `${count(waiting(queue))} of ${counted(records.length, 'record')} here`;
  return [
    el('p', { class: 'list-head' }, el('span', { class: 'aside' }, aside), all),
    el('ol', {}, ...records.map((record, i) => line(record, i, queue, doubts, actions))),
    ...(next === null ? [] : [el('button', { type: 'button', class: 'more', click: actions.more }, 'Show more')]),
  ];
}

function line(record: RecordLine, i: number, { at, selected, decided }: Queue, titles: DoubtTitles, { look, toggle }: ListActions): HTMLElement {
  const { id, scientificName, square, first, last, recorder, doubts, status } = record;
  const isDecided = decided.has(id);
  const tick = el('input', { type: 'checkbox', id: `select-${i}`, checked: selected.has(id), 'aria-label': `Select ${scientificName}, ${square}`, change: () => toggle(id) });
  const said = isDecided && status !== 'unreviewed' ? STATUS_WORDS[status] : doubts.map(titles.of).join('; ');
  return el('li', { class: [i === at ? 'current' : '', isDecided ? 'decided' : ''].join(' ').trim() || null, 'aria-current': i === at ? 'true' : null },
    tick,
    el('button', { type: 'button', id: `look-${i}`, click: () => look(i) },
      el('span', { class: 'name' }, scientific(scientificName)),
      el('span', { class: 'aside' }, [square, days(first, last), recorder].filter((text) => text).join(' · ')),
      el('span', { class: isDecided ? `said ${status}` : 'said' }, said)));
}

/** Scrolls the list, and only the list, from where it was to where the record that is looked at is seen whole. */
export function keepInSight(list: HTMLElement, passed: number): void {
  const [lines, current] = [list.querySelector('ol'), list.querySelector<HTMLElement>('.current')];
  if (lines === null || current === null) return;
  const [top, end] = [current.offsetTop, current.offsetTop + current.offsetHeight - lines.clientHeight];
  lines.scrollTop = Math.min(Math.max(passed, end), top);
}
