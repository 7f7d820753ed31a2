// The first page of the imports: sending a file, and everything that was sent.
import { el } from '../../elements.ts';
import { question } from '../../loading.ts';
import { shown } from '../../panels/waiting.ts';
import { count } from '../../words.ts';
import type { ImportLine, ImportList } from '../answers.ts';
import type { Desk, Leave } from '../desk.ts';
import { writeRoute } from '../route.ts';
import { moment, stateWords } from '../words.ts';
import { makeSendForm } from './send.ts';

export function mountImports(host: HTMLElement, desk: Desk): Leave {
  const send = makeSendForm(desk.session, ({ id }) => desk.go({ place: 'import', id }));
  const list = el('div', { class: 'imports' });
  host.append(
    el('section', { class: 'sending', 'aria-labelledby': 'send-title' }, el('h2', { id: 'send-title' }, 'Send records'), send.form),
    el('section', { class: 'sent', 'aria-labelledby': 'sent-title' }, el('h2', { id: 'sent-title' }, 'Imports'), list));

  const asked = question<ImportList>((answer) => {
    if (answer.kind === 'ready') send.offer([...new Set(answer.value.imports.map(({ dataset }) => dataset))], answer.value.mostBytes);
    list.replaceChildren(...shown(answer, ({ imports }) => draw(imports)));
  });
  asked.ask((signal) => desk.questions.imports(signal));
  return () => {
    asked.clear();
    send.stop();
  };
}

const COLUMNS = ['File', 'Data set', 'When', 'By', 'Rows', 'New', 'Changed', 'Known', 'Refused', 'State'];
const WORDS = ['Data set', 'When', 'By', 'State'];

function draw(told: ImportLine[]): Node[] {
  // An import that was taken back just now is told as a file and as an import.
  const imports = told.filter(({ id, batch }) => batch === null || id === String(batch));
  if (imports.length === 0) return [el('p', { class: 'empty' }, 'No file was sent yet. The first one shows here, with what became of every row.')];
  return [el('table', { class: 'stacked' }, el('thead', {}, el('tr', {}, ...COLUMNS.map((name) => el('th', { scope: 'col', class: WORDS.includes(name) ? 'words' : null }, name)))), el('tbody', {}, ...imports.map(line)))];
}

function line(sent: ImportLine): HTMLElement {
  const { report } = sent;
  const isOver = report !== null && !report.dryRun;
  const number = (n: number | undefined) => isOver && n !== undefined ? count(n) : '–';
  const cells: [string, string | Node][] = [
    ['Data set', sent.dataset], ['When', el('span', { class: 'moment' }, moment(sent.at))], ['By', sent.by ?? 'command line'], ['Rows', number(report?.read)], ['New', number(report?.accepted)],
    ['Changed', number(report?.updated)], ['Known', number(report?.unchanged)], ['Refused', number(report?.refused)],
  ];
  return el('tr', { class: sent.state },
    el('th', { scope: 'row' }, el('a', { href: writeRoute({ place: 'import', id: sent.id }) }, sent.file), sent.batch === null ? null : el('span', { class: 'aside' }, ` import ${sent.batch}`)),
    ...cells.map(([name, value]) => el('td', { 'data-name': name, class: WORDS.includes(name) ? 'words' : null }, value)),
    el('td', { 'data-name': 'State', class: 'words' }, stateWords(sent)));
}
