// Choosing a species by typing: a combobox (WAI-ARIA pattern) over the server's own search.
import { api, type TaxonLine } from '../api.ts';
import { el } from '../elements.ts';
import { question, type Loaded } from '../loading.ts';
import type { Store } from '../store.ts';
import { counted, scientific } from '../words.ts';

const LISTED = 12;
const PAUSE_MS = 150;

export function mountSearch(host: HTMLElement, store: Store): void {
  let found: TaxonLine[] = [];
  let active = -1;
  let timer = 0;

  const input = el('input', {
    id: 'species-input', type: 'search', role: 'combobox', placeholder: 'Type part of a name', autocomplete: 'off', spellcheck: 'false',
    'aria-expanded': 'false', 'aria-controls': 'species-list', 'aria-autocomplete': 'list', input: typed, focus: typed, keydown: pressed, blur: () => close(),
  });
  const list = el('ul', { id: 'species-list', role: 'listbox', 'aria-label': 'Species found', hidden: true });
  host.append(el('label', { for: 'species-input' }, 'Find a species'), input, list);

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
    return el('li', { id: `species-${index}`, role: 'option', 'aria-selected': 'false', mousedown: (event) => { event.preventDefault(); choose(taxon); } },
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
      const taxon = found[Math.max(active, 0)];
      if (taxon !== undefined) choose(taxon);
    } else if (key === 'Escape') close();
  }

  function mark(index: number): void {
    active = index;
    [...list.children].forEach((item, i) => item.setAttribute('aria-selected', String(i === active)));
    input.setAttribute('aria-activedescendant', `species-${active}`);
    list.children[active]?.scrollIntoView({ block: 'nearest' });
  }

  function choose(taxon: TaxonLine): void {
    input.value = '';
    close();
    input.blur();
    store.change({ taxon: taxon.id, year: null });
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
}
