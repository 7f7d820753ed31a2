// Choosing a taxon by typing: a combobox (WAI-ARIA pattern) over the server's own search.
import { api, type TaxonLine } from '../api.ts';
import { el } from '../elements.ts';
import { question, type Loaded } from '../loading.ts';
import { counted, scientific } from '../words.ts';

const LISTED = 12;
const PAUSE_MS = 150;

export interface TaxonBoxOptions {
  /** Of the input; the list and its lines take theirs from it. */
  id: string;
  label: string;
  choose(taxon: TaxonLine): void;
}

export function taxonBox({ id, label, choose: chosen }: TaxonBoxOptions): { box: HTMLElement; input: HTMLInputElement } {
  let found: TaxonLine[] = [];
  let active = -1;
  let timer = 0;

  const input = el('input', {
    id: `${id}-input`, type: 'search', role: 'combobox', placeholder: 'Type part of a name', autocomplete: 'off', spellcheck: 'false',
    'aria-expanded': 'false', 'aria-controls': `${id}-list`, 'aria-autocomplete': 'list', input: typed, focus: typed, keydown: pressed, blur: () => close(),
  });
  const list = el('ul', { id: `${id}-list`, role: 'listbox', 'aria-label': 'Species found', hidden: true });
  const box = el('div', { class: 'search' }, el('label', { for: `${id}-input` }, label), input, list);

  const asked = question<{ taxa: TaxonLine[] }>(show);

  function typed(): void {
    window.clearTimeout(timer);
    timer = window.setTimeout(() => asked.ask((signal) => api.taxa(input.value.trim(), LISTED, signal)), PAUSE_MS);
  }

  function show(answer: Loaded<{ taxa: TaxonLine[] }>): void {
    if (answer.kind === 'loading' || answer.kind === 'nothing' || document.activeElement !== input) return;
    found = answer.kind === 'ready' ? answer.value.taxa : [];
    active = -1;
    const said = answer.kind === 'failed' ? answer.problem.message : 'No species of that name. Try fewer letters.';
    list.replaceChildren(...found.map(option), ...(found.length === 0 ? [el('li', { class: 'none' }, said)] : []));
    open(true);
  }

  function option(taxon: TaxonLine, index: number): HTMLElement {
    return el('li', { id: `${id}-${index}`, role: 'option', 'aria-selected': 'false', mousedown: (event) => { event.preventDefault(); choose(taxon); } },
      el('span', { class: 'name' }, taxon.vernacularName || scientific(taxon.scientificName)),
      !taxon.vernacularName ? null : scientific(taxon.scientificName),
      el('span', { class: 'aside' }, counted(taxon.records, 'record')));
  }

  function pressed(event: Event): void {
    const { key } = event as KeyboardEvent;
    if (key === 'ArrowDown' || key === 'ArrowUp') {
      event.preventDefault();
      mark(key === 'ArrowDown' ? Math.min(active + 1, found.length - 1) : Math.max(active - 1, 0));
    } else if (key === 'Enter') {
      // In a form the key chooses; it does not send.
      event.preventDefault();
      const taxon = found[Math.max(active, 0)];
      if (taxon !== undefined) choose(taxon);
    } else if (key === 'Escape') close();
  }

  function mark(index: number): void {
    active = index;
    [...list.children].forEach((item, i) => item.setAttribute('aria-selected', String(i === active)));
    input.setAttribute('aria-activedescendant', `${id}-${active}`);
    list.children[active]?.scrollIntoView({ block: 'nearest' });
  }

  function choose(taxon: TaxonLine): void {
    input.value = '';
    close();
    input.blur();
    chosen(taxon);
  }

  function close(): void {
    window.clearTimeout(timer);
    // An answer still on its way would open the list again.
    asked.clear();
    open(false);
  }

  function open(isOpen: boolean): void {
    list.hidden = !isOpen;
    input.setAttribute('aria-expanded', String(isOpen));
    if (!isOpen) input.removeAttribute('aria-activedescendant');
  }

  return { box, input };
}
