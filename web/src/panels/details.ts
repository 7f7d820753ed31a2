// The leaves under the legend: the species itself, the chosen square, the spread, where it may be next, and how its range changed.
import { el } from '../elements.ts';
import { PANELS, type Panel } from '../state.ts';
import { differs, type Store } from '../store.ts';
import { mountChange } from './change.ts';
import { mountForecast } from './forecast.ts';
import { mountSeason } from './season.ts';
import { mountSpread } from './spread.ts';
import { mountSquare } from './square.ts';

const TITLES: Record<Panel, string> = { species: 'Species', square: 'A square', spread: 'Spread', forecast: 'Next', change: 'Change' };

const MOUNT: Record<Panel, (host: HTMLElement, store: Store) => void> = { species: mountSeason, square: mountSquare, spread: mountSpread, forecast: mountForecast, change: mountChange };

/** How far each key moves along the leaves. */
const STEPS: Record<string, number> = { ArrowLeft: -1, ArrowRight: 1 };

export function mountDetails(host: HTMLElement, store: Store): void {
  const tabs = PANELS.map((panel) => el('button', {
    type: 'button', role: 'tab', id: `tab-${panel}`, 'aria-controls': `leaf-${panel}`, click: () => store.change({ panel }), keydown: move,
  }, TITLES[panel]));
  const leaves = PANELS.map((panel) => el('div', { role: 'tabpanel', id: `leaf-${panel}`, 'aria-labelledby': `tab-${panel}`, class: `leaf ${panel}` }));
  host.append(el('div', { role: 'tablist', class: 'tabs', 'aria-label': 'Details' }, ...tabs), ...leaves);
  PANELS.forEach((panel, i) => MOUNT[panel](leaves[i]!, store));

  store.follow((now, before) => {
    if (!differs(now, before, 'panel')) return;
    PANELS.forEach((panel, i) => {
      const isOpen = panel === now.panel;
      tabs[i]!.setAttribute('aria-selected', String(isOpen));
      tabs[i]!.tabIndex = isOpen ? 0 : -1;
      leaves[i]!.hidden = !isOpen;
    });
  });

  function move(event: Event): void {
    const step = STEPS[(event as KeyboardEvent).key];
    if (step === undefined) return;
    const next = PANELS[(PANELS.indexOf(store.state.panel) + step + PANELS.length) % PANELS.length]!;
    store.change({ panel: next });
    document.getElementById(`tab-${next}`)?.focus();
  }
}
