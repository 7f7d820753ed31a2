// How a file would be read, before anything is imported: a choice for every column, and the first rows under those choices.
import { el } from '../../elements.ts';
import { question } from '../../loading.ts';
import { shown } from '../../panels/waiting.ts';
import type { ImportLine, Preview } from '../answers.ts';
import type { Desk, Leave } from '../desk.ts';
import type { DoubtTitles } from '../doubts.ts';
import { drawColumns } from './columnTable.ts';
import { drawDefaults } from './defaults.ts';
import { asSaid, NOTHING_SAID, statements, type Saying } from './mapping.ts';
import { mappingFiles } from './mappingFiles.ts';
import { once } from '../once.ts';
import { drawRows } from './preview.ts';
import { drawFigures } from './report.ts';

/** Long enough for a second choice to be made before the first is asked about. */
const PAUSE_MS = 250;

export function mountMapping(host: HTMLElement, desk: Desk, sent: ImportLine, show: (sent: ImportLine) => void): Leave {
  let saying: Saying = remembered.get(sent.id) ?? NOTHING_SAID;
  let preview: Preview | null = null;
  let timer = 0;

  const columns = el('div', { class: 'columns' });
  const rows = el('div', { class: 'preview', 'aria-live': 'polite' });
  const defaults = el('div', { class: 'defaults' });
  const problem = el('div', { class: 'problem', role: 'status' });
  const fault = el('p', { class: 'fault', role: 'alert' });
  const start = el('button', { type: 'button', class: 'main', disabled: true, click: () => void once(start, fault, () => begin(false)) }, 'Import');
  const trial = el('button', { type: 'button', disabled: true, click: () => void once(trial, fault, () => begin(true)) }, 'Try it, keep nothing');
  const away = el('button', { type: 'button', class: 'link', click: () => void once(away, fault, takeAway) }, 'Take the file away');
  const order = el('select', { id: 'date-order', change: () => change({ ...saying, dateOrder: order.value as Saying['dateOrder'] }) },
    ...ORDERS.map(([value, words]) => el('option', { value, selected: value === saying.dateOrder }, words)));
  const files = mappingFiles(desk, sent, () => preview, () => saying, takeMapping);

  host.append(...beforehand(sent, desk.doubts), el('h3', {}, el('span', {}, 'What the columns mean'), el('span', { class: 'aside', id: 'form' })),
    files.bar, problem, columns, defaults, general(), rows, el('p', { class: 'row final' }, start, trial, away), fault);

  const asked = question<Preview>((answer) => {
    rows.classList.toggle('stale', answer.kind === 'loading' && preview !== null);
    start.disabled = trial.disabled = answer.kind !== 'ready' || answer.value.problem !== null;
    if (answer.kind === 'loading' && preview !== null) return;
    if (answer.kind === 'ready') draw(answer.value);
    else problem.replaceChildren(...shown(answer, () => []));
  });
  const ask = () => asked.ask((signal) => desk.questions.preview(sent.id, statements(saying), signal));

  function change(next: Saying): void {
    saying = next;
    remembered.set(sent.id, saying);
    window.clearTimeout(timer);
    timer = window.setTimeout(ask, PAUSE_MS);
  }

  function takeMapping(next: Saying): void {
    defaults.replaceChildren();
    order.value = next.dateOrder;
    change(next);
  }

  function draw(answer: Preview): void {
    const value = preview = asSaid(answer, saying);
    document.getElementById('form')!.textContent = value.form;
    const focused = document.activeElement?.id;
    columns.replaceChildren(drawColumns(value, () => saying, change));
    // What is being typed there must not be drawn anew under the typing hand.
    if (defaults.childElementCount === 0) defaults.append(drawDefaults(value, () => saying, change));
    if (focused) document.getElementById(focused)?.focus();
    problem.replaceChildren(...(value.problem === null ? [] : [
      el('div', { class: 'failed' }, el('p', {}, el('strong', {}, 'Not ready yet. '), value.problem.what), el('p', {}, missingHint(value) ?? value.problem.mend)),
    ]));
    rows.replaceChildren(...drawRows(value, desk.doubts));
  }

  function general(): HTMLElement {
    const newTaxa = el('input', { type: 'checkbox', id: 'new-taxa', checked: saying.newTaxa, change: () => change({ ...saying, newTaxa: newTaxa.checked }) });
    return el('div', { class: 'general' }, el('p', {}, el('label', { for: 'date-order' }, 'A date such as 3/6/1998 is read '), order),
      el('p', {}, newTaxa, ' ', el('label', { for: 'new-taxa' }, 'Add names that the taxon list lacks (else their rows are refused, with the nearest names)')));
  }

  async function begin(dryRun: boolean): Promise<void> {
    const started = await desk.questions.start(sent.id, statements(saying, dryRun));
    show(started);
  }

  async function takeAway(): Promise<void> {
    await desk.questions.takeBack(sent.id);
    remembered.delete(sent.id);
    desk.go({ place: 'imports' });
  }

  ask();
  return () => {
    window.clearTimeout(timer);
    asked.clear();
  };
}

/** What was said of a file stays said while the page is open, through trials and failures. */
const remembered = new Map<string, Saying>();

const ORDERS: [Saying['dateOrder'], string][] = [
  ['notStated', 'as the file itself proves, else refused'], ['dmy', 'day first: 3 June 1998'], ['mdy', 'month first: 6 March 1998'],
];

/** What a trial did, or why the last attempt failed. */
function beforehand({ report, problem }: ImportLine, titles: DoubtTitles): Node[] {
  if (problem !== null) return [el('div', { class: 'failed', role: 'alert' }, el('p', {}, el('strong', {}, 'The import failed; nothing of it was kept. '), problem.what), el('p', {}, `${problem.where}. ${problem.mend}`))];
  return report?.dryRun ? [el('section', { class: 'trial', 'aria-label': 'The trial' }, el('h3', {}, 'The trial: importing it would give'), ...drawFigures(report, titles))] : [];
}

/** On this page the remedy is at hand, and not a mapping file. */
const missingHint = ({ columns }: Preview) =>
  columns.every(({ term }) => term === null) ? 'No header was recognised. Choose below, at least for the name, the date and the place, what each column means.' : null;
