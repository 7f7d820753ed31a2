// Choosing by typing: a combobox (WAI-ARIA pattern) over one of the server's searches.
import { el } from '../elements.ts';
import { question, type Loaded } from '../loading.ts';
import { count } from '../words.ts';

const PAUSE_MS = 150;

/** What a search found: some of it, and how many there are in all. */
export interface Found<T> { items: T[]; total: number }

export interface ComboBoxOptions<T> {
  /** Of the input; the list and its lines take theirs from it. */
  id: string;
  label: string;
  placeholder: string;
  listLabel: string;
  /** Said where nothing is found. */
  nothing: string;
  /** Gives no more than a list has room for, whatever the number in all. */
  find(text: string, signal: AbortSignal): Promise<Found<T>>;
  /** What a line shows. */
  line(found: T): Node[];
  choose(found: T): void;
  /** True for text that needs no choosing: the Enter key then sends the form, and no list is opened. */
  isComplete?(text: string): boolean;
}

export function comboBox<T>(options: ComboBoxOptions<T>): { box: HTMLElement; input: HTMLInputElement } {
  const { id, label, placeholder, listLabel, nothing, find, line, choose: chosen, isComplete } = options;
  let found: T[] = [];
  let active = -1;
  let timer = 0;

  const input = el('input', {
    id: `${id}-input`, type: 'search', role: 'combobox', placeholder, autocomplete: 'off', spellcheck: 'false',
    'aria-expanded': 'false', 'aria-controls': `${id}-list`, 'aria-autocomplete': 'list', input: typed, focus: typed, keydown: pressed, blur: () => close(),
  });
  const list = el('ul', { id: `${id}-list`, role: 'listbox', 'aria-label': listLabel, hidden: true });
  // The list holds choices only; how many there are is told to those who listen here, and shown at its foot.
  const told = el('span', { class: 'unseen', role: 'status' });
  const box = el('div', { class: 'search' }, el('label', { for: `${id}-input` }, label), input, list, told);

  const asked = question<Found<T>>(show);

  function typed(): void {
    window.clearTimeout(timer);
    if (isComplete?.(input.value)) return close();
    timer = window.setTimeout(() => asked.ask((signal) => find(input.value.trim(), signal)), PAUSE_MS);
  }

  function show(answer: Loaded<Found<T>>): void {
    if (answer.kind === 'loading' || answer.kind === 'nothing' || document.activeElement !== input) return;
    found = answer.kind === 'ready' ? answer.value.items : [];
    const total = answer.kind === 'ready' ? answer.value.total : 0;
    active = -1;
    const said = answer.kind === 'failed' ? answer.problem.message : nothing;
    const more = total > found.length ? `${count(found.length)} of ${count(total)} shown. Type more of the name to find the others.` : '';
    list.replaceChildren(...found.map(option), ...(found.length === 0 ? [el('li', { class: 'none' }, said)] : []), ...(more === '' ? [] : [el('li', { class: 'more', 'aria-hidden': 'true' }, more)]));
    told.textContent = more;
    open(true);
  }

  function option(item: T, index: number): HTMLElement {
    return el('li', { id: `${id}-${index}`, role: 'option', 'aria-selected': 'false', mousedown: (event) => { event.preventDefault(); choose(item); } }, ...line(item));
  }

  function pressed(event: Event): void {
    const { key } = event as KeyboardEvent;
    if (key === 'ArrowDown' || key === 'ArrowUp') {
      event.preventDefault();
      mark(key === 'ArrowDown' ? Math.min(active + 1, found.length - 1) : Math.max(active - 1, 0));
    } else if (key === 'Enter') {
      // In a form the key chooses what is offered; it sends the form only where the text is enough, or nothing is offered that could be.
      const item = list.hidden && isComplete !== undefined ? undefined : found[Math.max(active, 0)];
      if (isComplete === undefined || item !== undefined) event.preventDefault();
      if (item !== undefined) choose(item);
    } else if (key === 'Escape') {
      // A search box would empty itself, and so begin to search anew.
      event.preventDefault();
      close();
    }
  }

  function mark(index: number): void {
    active = index;
    list.querySelectorAll('[role=option]').forEach((item, i) => item.setAttribute('aria-selected', String(i === active)));
    input.setAttribute('aria-activedescendant', `${id}-${active}`);
    list.children[active]?.scrollIntoView({ block: 'nearest' });
  }

  function choose(item: T): void {
    input.value = '';
    close();
    input.blur();
    chosen(item);
  }

  function close(): void {
    window.clearTimeout(timer);
    // An answer still on its way would open the list again.
    asked.clear();
    open(false);
  }

  function open(isOpen: boolean): void {
    list.hidden = !isOpen;
    if (!isOpen) told.textContent = '';
    input.setAttribute('aria-expanded', String(isOpen));
    if (!isOpen) input.removeAttribute('aria-activedescendant');
  }

  return { box, input };
}
