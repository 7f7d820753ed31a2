// One record with all that a reviewer weighs: what was seen, why it is asked, how to tell it, the row as it was sent, what was decided before.
import { el } from '../../elements.ts';
import { count, scientific } from '../../words.ts';
import type { Doubt, HistoryStep, Mark, Marks, RecordDetail, RecordLine } from '../answers.ts';
import { writeRoute } from '../route.ts';
import { days, moment, seen, STATUS_WORDS } from '../words.ts';

export function drawHead({ record }: RecordDetail): Node[] {
  const facts: [string, string | null][] = [
    ['When', days(record.first, record.last)], ['What', seen(record) || null], ['Recorder', record.recorder], ['Determiner', record.determiner],
    ['Evidence', record.evidence], ['On', record.host], ['Behaviour', record.behaviour], ['List', record.onCompleteList ? 'complete: what it lacks was looked for' : null], ['Data set', record.dataset],
  ];
  return [
    el('h2', { tabindex: -1 }, scientific(record.scientificName)),
    el('p', { class: 'subtitle' }, status(record), record.sentTaxon === null ? '' : el('span', {}, 'sent as ', scientific(record.sentTaxon))),
    el('dl', { class: 'remarks' }, ...facts.flatMap(([name, value]) => value === null ? [] : [el('dt', {}, name), el('dd', {}, value)])),
  ];
}

export const status = ({ status: word, sentStatus }: RecordLine) =>
  el('span', { class: `status ${word}` }, STATUS_WORDS[word], sentStatus === null || sentStatus === word ? '' : ` (sent as ${sentStatus})`);

export function drawBody(detail: RecordDetail, takeBack: (decision: number) => void): Node[] {
  return [drawDoubts(detail.doubts), ...(detail.marks === null ? [] : [drawMarks(detail.marks, detail.record)]), drawSent(detail), drawHistory(detail.history, takeBack)];
}

function drawDoubts(doubts: Doubt[]): HTMLElement {
  const line = ({ title, words, why, help }: Doubt) => el('li', {}, el('h4', {}, title), el('p', {}, words), el('p', { class: 'note' }, `${why} ${help}`));
  return el('section', { class: 'doubt-list', 'aria-label': 'Doubts' }, el('h3', {}, 'Why it is asked'),
    doubts.length === 0 ? el('p', { class: 'empty' }, 'Nothing was noticed about this record.') : el('ul', {}, ...doubts.map(line)));
}

function drawMarks({ marks, evidence, confusedWith, aggregate }: Marks, { scientificName }: RecordLine): HTMLElement {
  const words = (said: Mark[]) => said.map(({ stage, words: text }) => stage === null ? text : `${stage}: ${text}`).join('; ') || 'nothing in the list';
  const rows = [el('dt', {}, scientific(scientificName)), el('dd', {}, words(marks)),
    ...confusedWith.flatMap((other) => [el('dt', {}, scientific(other.scientificName)), el('dd', {}, words(other.marks))])];
  return el('section', { class: 'marks', 'aria-label': 'How to tell it' }, el('h3', {}, 'How to tell it'), el('dl', { class: 'remarks' }, ...rows),
    evidence.length === 0 ? null : el('p', {}, el('strong', {}, 'What suffices: '), words(evidence)),
    aggregate === null ? null : el('p', { class: 'note' }, 'Where it cannot be told apart, the record belongs to the aggregate: ', scientific(aggregate)));
}

function drawSent({ sent, record }: RecordDetail): HTMLElement {
  const said = Object.entries(sent).filter(([, value]) => value !== '');
  const lines = said.map(([column, value]) => el('tr', {}, el('th', { scope: 'row' }, column), el('td', { class: 'words' }, value)));
  return el('section', { class: 'as-sent', 'aria-label': 'As it was sent' }, el('h3', {}, 'As it was sent'),
    said.length === 0 ? el('p', { class: 'empty' }, 'The row as it was sent is not at hand.') : el('table', {}, el('tbody', {}, ...lines)),
    el('p', { class: 'note' }, `Row ${count(record.row)} of `, el('a', { href: writeRoute({ place: 'import', id: String(record.batch) }) }, `import ${record.batch}`), '.'));
}

function drawHistory(history: HistoryStep[], takeBack: (decision: number) => void): HTMLElement {
  const reversed = new Set(history.map(({ reverses }) => reverses));
  const newest = [...history].reverse();
  const open = newest.find(({ decision, reverses }) => reverses === null && !reversed.has(decision));
  return el('section', { class: 'history', 'aria-label': 'History' }, el('h3', {}, 'What was decided'),
    history.length === 0 ? el('p', { class: 'empty' }, 'Nobody has decided on it yet.') : el('ol', {}, ...newest.map((step) => el('li', {},
      el('p', {}, historyWords(step), step.reason === '' ? '' : ` – ${step.reason}`, step.holds ? '' : el('span', { class: 'note' }, ' (the record said something else then)')),
      el('p', { class: 'aside' }, `${step.by}, ${moment(step.at)}`),
      step !== open ? null : el('button', { type: 'button', class: 'link', click: () => takeBack(step.decision) }, 'Take this decision back')))));
}

function historyWords({ status: word, taxon, reverses }: HistoryStep): string {
  if (reverses !== null) return 'A decision was taken back';
  return [word === null ? null : STATUS_WORDS[word], taxon === null ? null : `identified as ${taxon}`].filter((text) => text !== null).join(', ');
}
