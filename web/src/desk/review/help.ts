// The keys, listed; and the switch for those whom single keys trouble.
import { el } from '../../elements.ts';
import { areKeysOn, turnKeys, type Command } from './keys.ts';

export function makeHelp(commands: readonly Command[]): { dialog: HTMLDialogElement; open(): void } {
  const isOn = el('input', { type: 'checkbox', id: 'keys-on', change: () => turnKeys(isOn.checked) });
  const dialog = el('dialog', { class: 'help', 'aria-labelledby': 'help-title' },
    el('h2', { id: 'help-title' }, 'Keys'),
    el('dl', {}, ...commands.flatMap(({ key, about }) => [el('dt', {}, el('kbd', {}, key)), el('dd', {}, about)])),
    el('p', { class: 'note' }, 'In the list the arrow keys move too. In the box for a reason, Enter sends and Escape closes.'),
    el('p', {}, isOn, ' ', el('label', { for: 'keys-on' }, 'Single keys decide (turn this off if keys are pressed by accident)')),
    el('form', { method: 'dialog' }, el('button', { type: 'submit' }, 'Close')));
  return { dialog, open: () => { isOn.checked = areKeysOn(); dialog.showModal(); } };
}
