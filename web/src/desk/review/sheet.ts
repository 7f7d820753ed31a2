// What goes back to a recorder: a page with the questions, the decisions and their reasons, to be read through and sent by a person.
import { el } from '../../elements.ts';
import type { Desk } from '../desk.ts';
import { once } from '../once.ts';
import { saveFile } from '../saveFile.ts';

export function drawSheet(desk: Desk, recorder: string): HTMLElement {
  const fault = el('p', { class: 'fault', role: 'alert' });
  const save = el('button', { type: 'button', class: 'link', click: () => void once(save, fault, keep) }, `Save the sheet for ${recorder}`);
  return el('section', { 'aria-label': 'For the recorder' }, el('h3', {}, 'For the recorder'),
    el('p', { class: 'note' }, 'All records of that name: first what is asked, then what was decided and why. Read it before you send it; two people may share a name.'), el('p', {}, save), fault);

  async function keep(): Promise<void> {
    saveFile(await desk.questions.sheet(recorder), `records of ${recorder}.html`);
  }
}
