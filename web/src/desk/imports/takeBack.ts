// Taking an import back: said plainly before, told exactly after.
import { el } from '../../elements.ts';
import { counted } from '../../words.ts';
import type { ImportLine, Undone } from '../answers.ts';
import type { Desk } from '../desk.ts';
import { once } from '../once.ts';

export function takeBackForm(desk: Desk, sent: ImportLine, show: (sent: ImportLine) => void): HTMLElement {
  const fault = el('p', { class: 'fault', role: 'alert' });
  const ask = el('button', { type: 'button', 'aria-expanded': 'false', click: () => turn(true) }, 'Take this import back …');
  const yes = el('button', { type: 'button', class: 'grave', click: () => void once(yes, fault, takeBack) }, 'Take it back');
  const no = el('button', { type: 'button', click: () => turn(false) }, 'Leave it');
  const sure = el('div', { class: 'sure', hidden: true, role: 'group', 'aria-label': 'Take this import back' }, el('p', {}, whatWillHappen(sent)), el('p', { class: 'row' }, yes, no));
  const whole = el('section', { class: 'take-back' }, ask, sure, fault);
  return whole;

  function turn(isOpen: boolean): void {
    sure.hidden = !isOpen;
    ask.hidden = isOpen;
    ask.setAttribute('aria-expanded', String(isOpen));
    (isOpen ? no : ask).focus();
  }

  async function takeBack(): Promise<void> {
    const undone = await desk.questions.takeBack(sent.id);
    show(await desk.questions.import(sent.id));
    if (undone !== null) document.querySelector('.taken-back')?.append(` ${whatHappened(undone)}`);
  }
}

function whatWillHappen({ report }: ImportLine): string {
  const { accepted, updated } = report!;
  const parts = [
    accepted > 0 && `${counted(accepted, 'record that it brought leaves', 'records that it brought leave')} the maps`,
    updated > 0 && `${counted(updated, 'record that it changed says', 'records that it changed say')} again what ${updated === 1 ? 'it' : 'they'} said before`,
  ].filter((text) => text !== false);
  const what = parts.length === 0 ? 'It brought nothing new, so no record changes' : parts.join(', and ');
  return `${what}. Records that a later import changed stay. The file’s rows and this report are kept, and the same file can be sent again.`;
}

function whatHappened({ removed, restored, changedLater, repeatedBy }: Undone): string {
  const parts = [
    `${counted(removed, 'record')} left the maps`, restored > 0 && `${counted(restored, 'record')} went back to what was said before`,
    changedLater > 0 && `${counted(changedLater, 'record')} stayed, as later imports had changed them`,
  ].filter((text) => text !== false);
  const also = repeatedBy.length === 0 ? '' : ` Import ${repeatedBy.join(', ')} had some of the same rows; send that file again if they shall count.`;
  return `${parts.join(', ')}.${also}`;
}
