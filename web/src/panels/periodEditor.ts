// Periods: a few ready sets, or any written by hand.
import { el } from '../elements.ts';
import { PRESETS, readPeriodText } from '../periods.ts';
import { differs, type Store } from '../store.ts';

const OWN = 'own';

export function periodEditor(store: Store): HTMLElement {
  const fault = el('p', { class: 'fault', id: 'period-fault', role: 'alert' });
  const text = el('input', { type: 'text', id: 'period-text', spellcheck: 'false', 'aria-describedby': 'period-fault', change: use, keydown: (e) => { if ((e as KeyboardEvent).key === 'Enter') use(); } });
  const own = el('div', { class: 'own' }, el('label', { for: 'period-text' }, 'From/to, parted by commas; two dots for an open end'), text, fault);
  const select = el('select', { id: 'period-set', change: pick },
    ...PRESETS.map((preset, i) => el('option', { value: i }, preset.name)), el('option', { value: OWN }, 'Periods of my own …'));

  function pick(): void {
    const preset = PRESETS[Number(select.value)];
    own.hidden = preset !== undefined;
    if (preset !== undefined) store.change({ periods: preset.periods });
    else text.focus();
  }

  function use(): void {
    const read = readPeriodText(text.value);
    fault.textContent = 'fault' in read ? read.fault : '';
    text.setAttribute('aria-invalid', String('fault' in read));
    if ('periods' in read) store.change({ periods: read.periods });
  }

  store.follow((now, before) => {
    if (!differs(now, before, 'periods')) return;
    const preset = PRESETS.findIndex((p) => p.periods.join() === now.periods.join());
    if (now === before || preset < 0) {
      select.value = preset < 0 ? OWN : String(preset);
      own.hidden = preset >= 0;
    }
    text.value = now.periods.join(', ');
  });
  return el('div', { class: 'choice periods' }, el('label', { for: 'period-set' }, 'Periods'), el('div', { class: 'options' }, select, own));
}
