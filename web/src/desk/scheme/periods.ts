// The form of periods: a name and an interval each, oldest first. The server holds the rules and says what breaks them.
import { el } from '../../elements.ts';
import { periodInWords } from '../../periods.ts';
import type { NamedPeriod } from '../answers.ts';
import { once } from '../once.ts';

/** More than a map can tell apart. */
const MOST = 8;

export function periodForm(holds: readonly NamedPeriod[], save: (named: readonly NamedPeriod[], gapsAreMeant: boolean, reason: string) => Promise<void>): HTMLElement {
  const rows = el('ol', { class: 'period-rows' });
  const add = el('button', { type: 'button', click: () => { const row = append({ name: '', period: '' }); row.querySelector('input')!.focus(); } }, 'Add a period');
  const gaps = el('input', { type: 'checkbox', id: 'gaps' });
  const reason = el('input', { type: 'text', id: 'periods-reason', autocomplete: 'off' });
  const fault = el('p', { class: 'fault', role: 'alert' });
  const button = el('button', { type: 'submit', class: 'main' }, 'Save');
  const back = el('button', { type: 'button', click: fill }, 'As they were');
  fill();
  return el('form', { class: 'periods-form', submit },
    rows, el('p', { class: 'row' }, add),
    el('p', { class: 'note' }, 'Oldest first, without overlap: 2000/2009 is from 1 January 2000 to 31 December 2009, ../1999 all before 2000, 2010/.. all since 2010.'),
    el('label', { class: 'tick' }, gaps, el('span', {}, 'Days between the periods belong to none on purpose')),
    el('label', { for: 'periods-reason' }, 'Why are they changed?'), reason,
    el('p', { class: 'row' }, button, back), fault);

  function fill(): void {
    rows.replaceChildren();
    holds.forEach(append);
  }

  function append({ name, period }: NamedPeriod): HTMLElement {
    const named = el('input', { type: 'text', value: name, 'aria-label': 'Name of the period', placeholder: 'name', autocomplete: 'off' });
    const days = el('input', { type: 'text', value: period, 'aria-label': 'From and to', placeholder: '2000/2009', autocomplete: 'off', spellcheck: 'false', input: say });
    const words = el('span', { class: 'aside' });
    const remove = el('button', { type: 'button', class: 'link', 'aria-label': `Take away ${name || 'this period'}`, click: () => { row.remove(); count(); add.focus(); } }, 'Take away');
    const row = el('li', {}, named, days, words, remove);
    function say(): void {
      words.textContent = days.value.includes('/') ? periodInWords(days.value.trim()) : '';
    }
    rows.append(row);
    say();
    count();
    return row;
  }

  function count(): void {
    add.disabled = rows.children.length >= MOST;
  }

  function submit(event: Event): void {
    event.preventDefault();
    const named = [...rows.children].map((row) => {
      const [name, period] = [...row.querySelectorAll('input')].map((input) => input.value.trim());
      return { name: name!, period: period! };
    });
    void once(button, fault, () => save(named, gaps.checked, reason.value.trim()));
  }
}
