// The changes of the periods, newest first; each can be gone back to, with a reason, which is a change like any other.
import { el } from '../../elements.ts';
import { periodInWords } from '../../periods.ts';
import type { NamedPeriod, PeriodChange, Scheme } from '../answers.ts';
import { once } from '../once.ts';
import { moment } from '../words.ts';

/** What the program brings, before any change. */
const PROGRAMS_OWN = 0;

export function historyList({ history }: Scheme, restore: (number: number, reason: string) => Promise<void>): HTMLElement {
  if (history.length === 0) return el('p', { class: 'empty' }, 'They were never changed: these are what the program brings.');
  const [newest, ...earlier] = history;
  return el('ol', { class: 'changes' },
    el('li', {}, told(newest!)),
    ...earlier.map((change) => el('li', {}, told(change), goBack(change.number, restore))),
    newest!.isOwn ? null : el('li', {}, el('p', {}, 'What the program brings'), goBack(PROGRAMS_OWN, restore)));
}

function told({ at, by, reason, periods, isOwn }: PeriodChange): HTMLElement {
  return el('div', {},
    el('p', {}, el('span', { class: 'moment' }, moment(at)), `, ${by}: ${reason}`),
    el('p', { class: 'note' }, `${isOwn ? 'What the program brings: ' : ''}${inWords(periods)}`));
}

const inWords = (periods: readonly NamedPeriod[]) => periods.map(({ name, period }) => name === periodInWords(period) ? name : `${name} (${periodInWords(period)})`).join(' · ');

function goBack(number: number, restore: (number: number, reason: string) => Promise<void>): HTMLElement {
  const fault = el('p', { class: 'fault', role: 'alert' });
  const reason = el('input', { type: 'text', id: `back-${number}`, autocomplete: 'off' });
  const ask = el('button', { type: 'button', class: 'link', 'aria-expanded': 'false', click: () => turn(true) }, 'Go back to these …');
  const yes = el('button', { type: 'button', click: () => void once(yes, fault, () => restore(number, reason.value.trim())) }, 'Go back');
  const no = el('button', { type: 'button', click: () => turn(false) }, 'Leave it');
  const sure = el('div', { class: 'sure', hidden: true, role: 'group', 'aria-label': 'Go back to these periods' }, el('label', { for: `back-${number}` }, 'Why?'), reason, el('p', { class: 'row' }, yes, no));
  return el('div', {}, ask, sure, fault);

  function turn(isOpen: boolean): void {
    sure.hidden = !isOpen;
    ask.hidden = isOpen;
    ask.setAttribute('aria-expanded', String(isOpen));
    (isOpen ? reason : ask).focus();
  }
}
