// What an import did, row for row; and from here its refused rows, its names, its doubts, and the way back.
import { el } from '../../elements.ts';
import { count, counted } from '../../words.ts';
import type { ImportLine, ImportReport } from '../answers.ts';
import type { Desk, Leave } from '../desk.ts';
import type { DoubtTitles } from '../doubts.ts';
import { EVERYTHING, writeRoute } from '../route.ts';
import { saveFile } from '../saveFile.ts';
import { moment } from '../words.ts';
import { termWords } from './columnTable.ts';
import { mountNames } from './names.ts';
import { once } from '../once.ts';
import { mountRefusals } from './refusals.ts';
import { takeBackForm } from './takeBack.ts';

export function mountReport(host: HTMLElement, desk: Desk, sent: ImportLine, show: (sent: ImportLine) => void): Leave {
  const report = sent.report!;
  const fault = el('p', { class: 'fault', role: 'alert' });
  const save = el('button', { type: 'button', class: 'link', click: () => void once(save, fault, keepMapping) }, 'Save the mapping for the next file of this kind');
  const isUndone = sent.state === 'undone';
  const leaves: Leave[] = [];

  host.append(
    ...(isUndone ? [el('p', { class: 'taken-back', role: 'status' }, `This import was taken back${report.undoneAt === null ? '' : ` on ${moment(report.undoneAt)}`}. Its records do not count.`)] : []),
    el('section', { class: 'figures', 'aria-label': 'What it did' }, el('h3', {}, 'What it did'), ...drawFigures(report, desk.doubts, isUndone ? null : sent.batch)));
  if (report.refused > 0 && !isUndone) {
    const names = el('section', { class: 'names', hidden: true, 'aria-label': 'Names' });
    const refusals = el('section', { class: 'refusals', 'aria-label': 'Refused rows' });
    host.append(names, refusals);
    leaves.push(mountNames(names, desk, sent), mountRefusals(refusals, desk, sent));
  }
  host.append(mappingTable(report), el('p', {}, save), fault);
  if (!isUndone) host.append(takeBackForm(desk, sent, show));

  async function keepMapping(): Promise<void> {
    const mapping = await desk.questions.mapping(sent.id);
    saveFile(new Blob([JSON.stringify(mapping, null, 2)], { type: 'application/json' }), `mapping-${sent.batch}.json`);
  }

  return () => leaves.forEach((leave) => leave());
}

/** Every row is in one of the four. Doubts lead to the review of this import, where it has a number. */
export function drawFigures(report: ImportReport, titles: DoubtTitles, batch: number | null = null): Node[] {
  const { read, accepted, updated, unchanged, refused, seconds, form } = report;
  const figure = (n: number, words: string, kind: string) => el('div', { class: `figure ${kind}` }, el('dt', {}, words), el('dd', {}, count(n)));
  const doubts = Object.entries(report.doubts).filter(([, n]) => n > 0).sort((a, b) => b[1] - a[1]);
  return [
    el('dl', { class: 'figure-row' }, figure(read, read === 1 ? 'row read' : 'rows read', 'read'), figure(accepted, 'new', 'new'), figure(updated, 'changed', 'changed'),
      figure(unchanged, 'known already', 'known'), figure(refused, 'refused', refused > 0 ? 'refused' : 'none')),
    el('p', { class: 'note' }, [form === null ? null : `Read as ${form}`, seconds === null ? null : seconds < 1 ? 'in less than a second' : `in ${counted(Math.round(seconds), 'second')}`].filter((t) => t !== null).join(' '), '.'),
    doubts.length === 0 ? el('p', {}, 'No record needs a second look.') : el('div', { class: 'doubts' },
      el('p', {}, 'Records to look at again, by what was noticed (one record can be under several):'),
      el('ul', {}, ...doubts.map(([code, n]) => el('li', {}, batch === null ? titles.of(code) : reviewLink(code, titles.of(code), batch), el('span', { class: 'aside' }, ` ${count(n)}`))))),
    ...(report.notes.length === 0 ? [] : [el('ul', { class: 'notes', 'aria-label': 'What was noticed about the file' }, ...report.notes.map((note) => el('li', {}, note)))]),
  ];
}

const reviewLink = (code: string, title: string, batch: number) =>
  el('a', { href: writeRoute({ place: 'review', filter: { ...EVERYTHING, batch: String(batch), doubt: code } }) }, title);

function mappingTable({ mapping }: ImportReport): HTMLElement {
  const lines = Object.entries(mapping).map(([column, use]) => el('tr', {}, el('th', { scope: 'row' }, column), el('td', { class: 'words' }, use.includes(' ') ? use : termWords(use))));
  return el('details', { class: 'mapping-report' }, el('summary', {}, `How its ${counted(lines.length, 'column')} were read`), el('table', {}, el('tbody', {}, ...lines)));
}
