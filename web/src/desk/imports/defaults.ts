// Values for what the file does not say: one recorder, one place, for all rows where the column is missing or the cell is empty.
import { el } from '../../elements.ts';
import type { Preview } from '../answers.ts';
import { termWords } from './columnTable.ts';
import { withDefault, type Saying } from './mapping.ts';

export function drawDefaults({ terms }: Preview, saying: () => Saying, change: (next: Saying) => void): HTMLElement {
  const said = [...saying().defaults];
  const body = el('div', { class: 'default-lines' }, ...said.map(([term, value]) => line(term, value)), adder());
  return el('details', { open: said.length > 0 }, el('summary', {}, 'Values for what the file does not say'),
    el('p', { class: 'note' }, 'Such as the recorder of a whole notebook. They stand wherever the column is missing or its cell is empty.'), body);

  function line(term: string, value: string): HTMLElement {
    const input = el('input', { type: 'text', id: `default-${term}`, value, input: () => change(withDefault(saying(), term, input.value)) });
    const drop = el('button', { type: 'button', 'aria-label': `No value for ${termWords(term)}`, click: away }, '×');
    const whole = el('p', { class: 'row' }, el('label', { for: `default-${term}` }, termWords(term)), input, drop);
    return whole;

    function away(): void {
      whole.remove();
      change(withDefault(saying(), term, null));
    }
  }

  function adder(): HTMLElement {
    const free = terms.filter(({ name }) => !saying().defaults.has(name));
    const select = el('select', { id: 'default-term', 'aria-label': 'Give a value for', change: add },
      el('option', { value: '' }, 'Give a value for …'), ...free.map(({ name, about }) => el('option', { value: name, title: about }, termWords(name))));
    return el('p', { class: 'row' }, select);

    function add(): void {
      const term = select.value;
      if (term === '') return;
      const added = line(term, '');
      select.closest('p')!.before(added);
      select.querySelector(`option[value="${term}"]`)?.remove();
      select.value = '';
      added.querySelector('input')!.focus();
    }
  }
}
