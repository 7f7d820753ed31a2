// What the map shows: presence or arrival, size of squares, trust, periods.
import { el } from '../elements.ts';
import { MODES, QUALITIES, SIZES, type ViewState } from '../state.ts';
import { differs, type Store } from '../store.ts';
import { periodEditor } from './periodEditor.ts';

interface Choice<K extends keyof ViewState> { part: K; title: string; options: readonly ViewState[K][]; words: Record<string, string>; hint?: Record<string, string> }

const MODE: Choice<'mode'> = { part: 'mode', title: 'Map of', options: MODES, words: { presence: 'Presence', arrival: 'Arrival', forecast: 'Next', change: 'Change', effort: 'Visits' }, hint: { presence: 'Squares by period', arrival: 'Squares by the year of the first record', forecast: 'Where the species may be next year, though it was never found there', change: 'Squares gained, lost and kept between the first and the last period', effort: 'Where recorders of the group looked, and how thoroughly' } };
const SIZE: Choice<'size'> = { part: 'size', title: 'Squares', options: SIZES, words: { '10km': '10 km', '5km': '5 km', '2km': '2 km', '1km': '1 km' } };
const QUALITY: Choice<'quality'> = {
  part: 'quality', title: 'Records', options: QUALITIES, words: { usable: 'Usable', confirmed: 'Confirmed', all: 'All' },
  hint: {
    usable: 'Confirmed, or not yet reviewed and without a serious doubt',
    confirmed: 'Confirmed by a reviewer',
    all: 'Everything but rejected records',
  },
};

export function mountChoices(host: HTMLElement, store: Store): void {
  const periods = periodEditor(store);
  host.append(radios(MODE, store), radios(SIZE, store), radios(QUALITY, store), periods);
  store.follow((now, before) => {
    if (!differs(now, before, 'taxon', 'mode')) return;
    host.hidden = now.taxon === null;
    periods.hidden = now.mode === 'arrival' || now.mode === 'forecast';
  });
}

function radios<K extends keyof ViewState>(choice: Choice<K>, store: Store): HTMLElement {
  const inputs = choice.options.map((option) => el('input', {
    type: 'radio', name: choice.part, value: String(option), id: `${choice.part}-${String(option)}`, change: () => store.change({ [choice.part]: option } as Partial<ViewState>),
  }));
  store.follow((now) => inputs.forEach((input) => { input.checked = input.value === String(now[choice.part]); }));
  return el('fieldset', { class: `choice ${choice.part}` }, el('legend', {}, choice.title),
    el('div', { class: 'options' }, ...inputs.map((input) =>
      el('label', { title: choice.hint?.[input.value] }, input, el('span', {}, choice.words[input.value] ?? input.value)))));
}
