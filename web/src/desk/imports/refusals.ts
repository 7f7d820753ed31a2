// Refused rows: what is wrong with each, and the two ways on: mend the file, or send the rows again after the list was mended.
import { el } from '../../elements.ts';
import { question } from '../../loading.ts';
import { shown } from '../../panels/waiting.ts';
import { count, counted } from '../../words.ts';
import type { ImportLine, Refusal } from '../answers.ts';
import type { Desk, Leave } from '../desk.ts';
import { saveFile } from '../saveFile.ts';
import { once } from '../once.ts';

const PAGE = 50;

export function mountRefusals(host: HTMLElement, desk: Desk, { id, batch, report }: ImportLine): Leave {
  const refused = report!.refused;
  const fault = el('p', { class: 'fault', role: 'alert' });
  const get = el('button', { type: 'button', class: 'main', click: () => void once(get, fault, download) }, 'Download them to mend');
  const again = el('button', { type: 'button', click: () => void once(again, fault, retry) }, 'Send them again as they are');
  const body = el('tbody');
  const more = el('div', {});
  let last = 0;

  host.append(
    el('h3', {}, el('span', {}, 'Refused rows'), el('span', { class: 'aside' }, counted(refused, 'row'))),
    el('p', {}, 'The download has the file’s own columns with the reason beside each row. Mend it, send it under the same data set, and have it read like this import.'),
    el('p', { class: 'row' }, get, again),
    el('p', { class: 'note' }, 'Sending them again as they are helps after names were accepted or the taxon list was mended.'), fault,
    el('table', { class: 'stacked refusal-rows' }, el('thead', {}, el('tr', {}, ...['Line', 'Column', 'It says', 'What is wrong'].map((name) => el('th', { scope: 'col', class: 'words' }, name)))), body), more);

  const asked = question<{ refusals: Refusal[] }>((answer) => {
    more.replaceChildren(...shown(answer, ({ refusals }) => {
      body.append(...refusals.map(line));
      last = refusals.at(-1)?.row ?? last;
      const left = refused - body.childElementCount;
      return left <= 0 || refusals.length === 0 ? [] : [el('button', { type: 'button', click: next }, `Show more (${count(left)} left)`)];
    }));
  });
  const next = () => asked.ask((signal) => desk.questions.refusals(id, last, PAGE, signal));
  next();

  async function download(): Promise<void> {
    saveFile(await desk.questions.refusedFile(id), `refused-${batch}.csv`);
  }

  async function retry(): Promise<void> {
    const sent = await desk.questions.retry(id);
    desk.go({ place: 'import', id: sent.id });
  }

  return () => asked.clear();
}

function line({ line: number, field, value, reason, text }: Refusal): HTMLElement {
  return el('tr', {}, el('th', { scope: 'row', title: text }, el('span', { class: 'only-narrow' }, 'Line '), count(number)),
    el('td', { class: 'words', 'data-name': 'Column' }, field), el('td', { class: 'words said', 'data-name': 'It says' }, value === '' ? '(empty)' : value),
    el('td', { class: 'words', 'data-name': 'What is wrong' }, reason));
}
