// The review: the queue beside the record that is looked at, and the decisions between.
import { el } from '../../elements.ts';
import { question } from '../../loading.ts';
import { shown } from '../../panels/waiting.ts';
import { counted } from '../../words.ts';
import type { QueueSummary, RecordDetail, RecordPage } from '../answers.ts';
import type { Desk, Leave } from '../desk.ts';
import type { Filter } from '../route.ts';
import { makeDecisions } from './decisions.ts';
import { drawFilters } from './filters.ts';
import { makeHelp } from './help.ts';
import { listen, type Command } from './keys.ts';
import { drawList, keepInSight } from './list.ts';
import { makePlace } from './place.ts';
import { current, EMPTY, meant, moved, toggled, withAllSelected, withNoneSelected, withPage, type Queue } from './queue.ts';
import { drawBody, drawHead } from './record.ts';
import { drawSheet } from './sheet.ts';
import { commandButton, makeVerdictBar } from './verdict.ts';

const PAGE = 50;

export function mountReview(host: HTMLElement, desk: Desk, filter: Filter): Leave {
  let queue: Queue = EMPTY;
  let detail: RecordDetail | null = null;
  let shownId: string | null = null;

  const [head, body, list, waits, said] = [el('header', { 'aria-live': 'polite' }), el('div', { class: 'record-body' }), el('div', { class: 'queue' }), el('span', { class: 'aside' }), el('div')];
  const filters = el('div', { class: 'filter-row' });
  const isNarrowed = Object.values(filter).some((value) => value !== null);
  const narrow = el('details', { class: 'filters', open: isNarrowed || window.matchMedia('(min-width: 821px)').matches }, el('summary', {}, 'Narrow the queue'), filters);
  const place = makePlace();
  const commands: Command[] = [
    { key: 'c', name: 'Confirm', about: 'Confirm the record', run: () => void decisions.decide({ status: 'confirmed', reason: '' }) },
    { key: 'd', name: 'Doubtful', about: 'Call it doubtful, with a reason', run: () => bar.open('doubtful') },
    { key: 'r', name: 'Reject', about: 'Reject it, with a reason', run: () => bar.open('rejected') },
    { key: 'i', name: 'Identify', about: 'Name it as another taxon', run: () => bar.open('name') },
    { key: 'u', name: 'Undo last', about: 'Take your last decision back', run: () => void decisions.undo() },
    { key: 'x', name: 'Select', about: 'Select it, or not, for a decision on many at once', run: () => { const one = current(queue); if (one !== null) change(toggled(queue, one.id)); } },
    { key: 'k', also: 'ArrowUp', name: 'Previous', about: 'Look at the one before', run: () => change(moved(queue, -1)) },
    { key: 'j', also: 'ArrowDown', name: 'Next', about: 'Look at the next one', run: () => change(moved(queue, 1)) },
  ];
  const helpKey: Command = { key: '?', name: 'Keys', about: 'Show this list', run: () => help.open() };
  const help = makeHelp([...commands, helpKey]);
  const bar = makeVerdictBar(commands, (verdict) => decisions.decide(verdict));
  const decisions = makeDecisions(desk, bar, { queue: () => queue, detail: () => detail, change, look });
  const article = el('article', { class: 'record', 'aria-label': 'The record' }, head, place.panel, said, body);

  host.append(el('header', { class: 'review-head' }, el('h2', {}, 'Review ', waits), commandButton(helpKey)), narrow,
    el('div', { class: 'desk-grid' }, el('aside', { 'aria-label': 'Queue' }, list), el('div', { class: 'middle' }, bar.panel, article)), help.dialog);
  filters.replaceChildren(...drawFilters(desk, filter, null));

  const summary = question<QueueSummary>((answer) => {
    // The queue works without its counts.
    if (answer.kind !== 'ready') return;
    waits.textContent = `${counted(answer.value.waiting, 'record waits', 'records wait')} in all`;
    if (!filters.contains(document.activeElement)) filters.replaceChildren(...drawFilters(desk, filter, answer.value));
  });
  const pages = question<RecordPage>((answer) => {
    if (answer.kind === 'ready') change(withPage(queue, answer.value));
    else if (queue.records.length === 0 || answer.kind === 'failed') list.replaceChildren(...shown(answer, () => []), ...(queue.records.length > 0 ? drawList(queue, desk.doubts, actions) : []));
    article.hidden = queue.records.length === 0;
  });
  const details = question<RecordDetail>((answer) => {
    detail = answer.kind === 'ready' ? answer.value : null;
    said.replaceChildren(...(answer.kind === 'loading' ? [] : shown(answer, () => [])));
    if (answer.kind === 'ready') drawDetail(answer.value);
  });

  const actions = {
    look: (at: number) => change({ ...queue, at }),
    toggle: (id: string) => change(toggled(queue, id)),
    selectAll: () => change(withAllSelected(queue)),
    selectNone: () => change(withNoneSelected(queue)),
    more,
  };

  function more(): void {
    pages.ask((signal) => desk.questions.queue(filter, PAGE, queue.next, signal));
  }

  function change(next: Queue): void {
    const before = current(queue)?.id;
    queue = next;
    drawQueue();
    bar.show(meant(queue), queue.selected.size > 0);
    if (current(queue)?.id !== before) look();
  }

  function look(): void {
    const one = current(queue);
    if (one !== null) details.ask((signal) => desk.questions.record(one.id, signal));
  }

  function drawQueue(): void {
    const focused = list.contains(document.activeElement) ? document.activeElement!.id : '';
    const passed = list.querySelector('ol')?.scrollTop ?? 0;
    list.replaceChildren(...(queue.records.length === 0 ? [el('p', { class: 'empty' }, emptyWords(filter))] : drawList(queue, desk.doubts, actions)));
    if (focused.startsWith('look-')) document.getElementById(`look-${queue.at}`)?.focus({ preventScroll: true });
    else if (focused !== '') document.getElementById(focused)?.focus({ preventScroll: true });
    keepInSight(list, passed);
  }

  function drawDetail(value: RecordDetail): void {
    article.hidden = false;
    head.replaceChildren(...drawHead(value));
    body.replaceChildren(...drawBody(value, (decision) => void decisions.takeBack(decision, [value.record.id])), ...(value.record.recorder === null ? [] : [drawSheet(desk, value.record.recorder)]));
    place.show(value.record);
    if (shownId !== null && shownId !== value.record.id) bringUp(article);
    shownId = value.record.id;
  }

  article.hidden = true;
  bar.show([], false);
  more();
  summary.ask((signal) => desk.questions.summary(signal));
  const deaf = listen([...commands, helpKey]);
  return () => {
    deaf();
    place.leave();
    [summary, pages, details].forEach((asked) => asked.clear());
  };
}

/** The next record begins at its beginning, wherever in the one before the reader stood; on a phone it lies below the queue. */
function bringUp(article: HTMLElement): void {
  const underBar = article.getBoundingClientRect().top < Number.parseFloat(getComputedStyle(article).scrollMarginTop);
  if (underBar || window.matchMedia('(max-width: 820px)').matches) article.scrollIntoView({ block: 'start' });
}

const emptyWords = (filter: Filter) => Object.values(filter).some((value) => value !== null)
  ? 'No record waits here. “Show everything” widens the view.'
  : 'Nothing waits: every record with a doubt has been looked at. New imports bring new ones.';

