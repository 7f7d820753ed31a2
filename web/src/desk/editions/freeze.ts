// Freezing: a reason is owed, and it is asked once more, since an edition is for good.
import { el } from '../../elements.ts';
import type { Edition } from '../answers.ts';
import type { Desk } from '../desk.ts';
import { once } from '../once.ts';
import { day } from '../words.ts';

export function freezeForm(desk: Desk, known: () => readonly Edition[], frozen: () => void): HTMLElement {
  const title = el('input', { type: 'text', id: 'edition-title', autocomplete: 'off' });
  const reason = el('textarea', { id: 'edition-reason', rows: 2, 'aria-describedby': 'edition-about' });
  const fault = el('p', { class: 'fault', role: 'alert' });
  const told = el('p', { class: 'told', role: 'status' });
  const ask = el('button', { type: 'submit', 'aria-expanded': 'false' }, 'Freeze …');
  const yes = el('button', { type: 'button', class: 'main', click: () => void once(yes, fault, freeze) }, 'Freeze it');
  const no = el('button', { type: 'button', click: () => turn(false) }, 'Not yet');
  const sure = el('div', { class: 'sure', hidden: true, role: 'group', 'aria-label': 'Freeze the data as they are now' },
    el('p', {}, 'The data as they are now, with places of sensitive species made coarse, are kept for good under a name of their own. Everyone may read them and the reason. An edition cannot be changed; whoever runs the server can withdraw one that should not have been published, and that it was there stays known.'),
    el('p', { class: 'row' }, yes, no));
  return el('form', { class: 'freeze', submit },
    el('label', { for: 'edition-title' }, 'Title'), title, el('p', { class: 'note' }, 'Such as “Invented atlas 2026”. Empty for the title of the data.'),
    el('label', { for: 'edition-reason' }, 'Why is it frozen?'), reason, el('p', { class: 'note', id: 'edition-about' }, 'A sentence for those who cite it, such as “Figures of the annual report 2026”.'),
    ask, sure, told, fault);

  function submit(event: Event): void {
    event.preventDefault();
    told.textContent = '';
    fault.textContent = reason.value.trim() === '' ? 'Say why first, in a sentence.' : '';
    if (fault.textContent === '') turn(true);
    else reason.focus();
  }

  function turn(isOpen: boolean): void {
    sure.hidden = !isOpen;
    ask.hidden = isOpen;
    ask.setAttribute('aria-expanded', String(isOpen));
    (isOpen ? no : ask).focus();
  }

  async function freeze(): Promise<void> {
    const before = known().map(({ id }) => id);
    const edition = await desk.questions.freeze(title.value.trim() || null, reason.value.trim());
    told.textContent = before.includes(edition.id)
      ? `These very data were frozen on ${day(edition.frozenAt)} already, as ${edition.id.slice(0, 8)}. That edition stays as it is, with its own title and reason.`
      : `Frozen as ${edition.id.slice(0, 8)}.`;
    title.value = reason.value = '';
    turn(false);
    frozen();
  }
}
