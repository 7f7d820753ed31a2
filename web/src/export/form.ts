// The choices. Those that do not count for what is asked are out of sight, and kept for when they do.
import { api, type TaxonLine } from '../api.ts';
import { day } from '../desk/words.ts';
import { el } from '../elements.ts';
import { question } from '../loading.ts';
import { taxonBox } from '../panels/taxonBox.ts';
import { QUALITIES } from '../state.ts';
import { scientific, shownName } from '../words.ts';
import { counts, EXPORT_SIZES, faultOfBox, faultOfYears, FORMATS, formatsOf, WHATS, type ExportQuery } from './query.ts';
import type { ExportStore } from './store.ts';
import type { Tell } from './tell.ts';
import { tokenField } from './tokenField.ts';
import { FORMAT_WORDS, QUALITY_WORDS, SIZE_WORDS, WHAT_WORDS } from './words.ts';

export function mountForm(form: HTMLElement, store: ExportStore, tell: Tell): void {
  form.addEventListener('submit', (event) => event.preventDefault());
  const group = choice(store, 'group', 'Group', 'All groups');
  const region = choice(store, 'region', 'Region', 'Everywhere');
  const edition = choice(store, 'edition', 'State of the data', 'As they are now');
  const box = typed(store, 'box', 'Box, degrees', 'west,south,east,north', faultOfBox);
  const size = labelled('Squares', 'size', el('select', { id: 'size', change: (e) => store.change({ size: (e.target as HTMLSelectElement).value as ExportQuery['size'] }) }, ...EXPORT_SIZES.map((of) => el('option', { value: of }, SIZE_WORDS[of]))));
  const quality = radios(store, 'quality', 'Records that count', QUALITIES, QUALITY_WORDS);
  const format = radios(store, 'format', 'Format', FORMATS, FORMAT_WORDS);
  const full = tokenField(store, tell);
  form.append(
    radios(store, 'what', 'What', WHATS, WHAT_WORDS), species(store), group.whole, years(store), size, quality, full, region.whole, box, edition.whole, format);

  question<void>(() => {}).ask(async (signal) => {
    const [groups, regions, editions] = await Promise.all([api.groups(signal), api.regions(signal), api.editions(signal)]);
    group.offer(groups.groups.flatMap(({ name }) => name === null ? [] : [[name, name] as const]));
    region.offer(regions.regions.map((name) => [name, name] as const));
    edition.offer(editions.editions.filter(({ withdrawn }) => !withdrawn).map(({ id, title, frozenAt }) => [id, `${title}, frozen ${day(frozenAt)} (${id.slice(0, 8)})`] as const));
  });

  store.follow((now) => {
    const may = counts(now);
    for (const [whole, isShown] of [[group.whole, may.group], [size, may.size], [quality, may.quality], [full, may.full], [region.whole, may.place], [box, may.box], [edition.whole, may.edition]] as const) whole.hidden = !isShown;
    size.querySelector('select')!.value = now.size;
    for (const option of format.querySelectorAll('label')) option.hidden = !formatsOf(now.what).some((of) => of === option.querySelector('input')!.value);
  });
}

function species(store: ExportStore): HTMLElement {
  const { box, input } = taxonBox({ id: 'taxon', label: 'Species', choose: (taxon) => store.change({ taxon: taxon.id }) });
  const chosen = el('p', { class: 'chosen-taxon', 'aria-live': 'polite' });
  const asked = question<TaxonLine>((answer) => {
    if (answer.kind === 'ready') chosen.replaceChildren(el('span', {}, shownName(answer.value), ' (', scientific(answer.value.scientificName), ')'), away());
    // A name that the server does not know is told where the size stands; here it can be taken away.
    else chosen.replaceChildren(store.state.taxon ?? '', away());
  });
  const away = () => el('button', { type: 'button', class: 'link', click: () => { store.change({ taxon: null }); input.focus(); } }, 'All species');
  store.follow((now, before) => {
    if (now !== before && now.taxon === before.taxon && now.what === before.what) return;
    if (now.taxon === null) {
      asked.clear();
      chosen.replaceChildren(now.what === 'fronts' ? 'None chosen yet' : 'All species');
    } else asked.ask((signal) => api.taxon(now.taxon!, signal));
  });
  return el('div', { class: 'field' }, box, chosen);
}

function years(store: ExportStore): HTMLElement {
  const fault = el('p', { class: 'fault', id: 'years-fault', role: 'alert' });
  const input = (part: 'from' | 'to', label: string) => {
    const box = el('input', { type: 'text', id: part, autocomplete: 'off', placeholder: 'any', 'aria-describedby': 'years-about years-fault', change: () => store.change({ [part]: box.value.trim() || null }) });
    store.follow((now) => fill(box, now[part]));
    return el('div', {}, el('label', { for: part }, label), box);
  };
  const whole = el('fieldset', { class: 'field' }, el('legend', {}, 'Years'), el('div', { class: 'pair' }, input('from', 'From'), input('to', 'To')),
    el('p', { class: 'note', id: 'years-about' }, 'A year such as 2005, or a day such as 2005-06-30. Empty for all.'), fault);
  store.follow((now) => {
    fault.textContent = faultOfYears(now.from, now.to);
    for (const box of whole.querySelectorAll('input')) box.setAttribute('aria-invalid', String(fault.textContent !== ''));
  });
  return whole;
}

function typed(store: ExportStore, part: 'box', label: string, example: string, faultIn: (text: string | null) => string): HTMLElement {
  const fault = el('p', { class: 'fault', id: `${part}-fault`, role: 'alert' });
  const input = el('input', { type: 'text', id: part, autocomplete: 'off', placeholder: example, 'aria-describedby': `${part}-fault`, change: () => store.change({ [part]: input.value.trim() || null }) });
  store.follow((now) => {
    fill(input, now[part]);
    fault.textContent = faultIn(now[part]);
    input.setAttribute('aria-invalid', String(fault.textContent !== ''));
  });
  return el('div', { class: 'field' }, el('label', { for: part }, label), input, fault);
}

/** Shows what is chosen, unless somebody is typing there: what is half written is not the page's to change. */
function fill(input: HTMLInputElement, text: string | null): void {
  if (document.activeElement !== input || input.value.trim() === '') input.value = text ?? '';
}

/** A list that the server fills; what the address names stays chosen even where the list lacks it. */
function choice(store: ExportStore, part: 'group' | 'region' | 'edition', label: string, all: string): { whole: HTMLElement; offer(options: readonly (readonly [string, string])[]): void } {
  const select = el('select', { id: part, change: () => store.change({ [part]: select.value || null }) }, el('option', { value: '' }, all));
  const show = (value: string | null) => {
    if (value !== null && ![...select.options].some((option) => option.value === value)) select.append(el('option', { value }, value));
    select.value = value ?? '';
  };
  store.follow((now) => show(now[part]));
  return {
    whole: labelled(label, part, select),
    offer: (options) => {
      select.replaceChildren(el('option', { value: '' }, all), ...options.map(([value, name]) => el('option', { value }, name)));
      show(store.state[part]);
    },
  };
}

const labelled = (label: string, id: string, control: HTMLElement) => el('div', { class: 'field' }, el('label', { for: id }, label), control);

function radios<P extends 'what' | 'quality' | 'format'>(store: ExportStore, part: P, title: string, options: readonly ExportQuery[P][], words: Record<ExportQuery[P], { name: string; about: string }>): HTMLElement {
  const inputs = options.map((option) => el('input', { type: 'radio', name: part, value: option, change: () => store.change(withFormat({ ...store.state, [part]: option })) }));
  store.follow((now) => inputs.forEach((input) => { input.checked = input.value === now[part]; }));
  return el('fieldset', { class: 'field picks' }, el('legend', {}, title),
    ...inputs.map((input, i) => el('label', {}, input, el('span', {}, words[options[i]!].name, el('span', { class: 'aside' }, ` ${words[options[i]!].about}`)))));
}

/** What is asked for may not come in the format that was chosen for something else. */
const withFormat = (query: ExportQuery): ExportQuery => formatsOf(query.what).includes(query.format) ? query : { ...query, format: formatsOf(query.what)[0]! };
