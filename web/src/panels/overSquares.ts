// What lies over the squares of the map of arrivals: lines of the front, squares far ahead of it, arrows of local speed. Their legend, and the switch of the arrows.
import { api, type Jump, type Modelled, type Spread } from '../api.ts';
import { el } from '../elements.ts';
import { question, type Loaded } from '../loading.ts';
import { differs, type Store } from '../store.ts';
import { count, counted, speed } from '../words.ts';
import { shown } from './waiting.ts';

export interface OverSquares {
  showArrows(modelled: Modelled | null): void;
  showJumps(jumps: Jump[]): void;
}

export function mountOverSquares(host: HTMLElement, store: Store, { showArrows, showJumps }: OverSquares): void {
  const box = el('input', { type: 'checkbox', id: 'over-arrows', change: () => store.change({ overlay: box.checked ? 'arrows' : 'none' }) });
  const key = el('ul', { class: 'key' });
  const told = el('div', { 'aria-live': 'polite' });
  host.append(el('h3', {}, 'Over the squares'), key, el('p', {}, box, ' ', el('label', { for: 'over-arrows' }, 'Arrows: local speed and direction')), told,
    el('p', {}, el('button', { type: 'button', class: 'link', click: () => store.change({ panel: 'forecast' }) }, 'How good were forecasts of the next front?')));

  const spread = question<Spread>((answer) => {
    const jumps = answer.kind === 'ready' ? answer.value.jumps : [];
    showJumps(jumps);
    key.replaceChildren(...keyOf(jumps));
  });
  const modelled = question<Modelled>((answer) => {
    showArrows(answer.kind === 'ready' ? answer.value : null);
    told.replaceChildren(...shownArrows(answer));
  });

  store.follow((now, before) => {
    if (!differs(now, before, 'taxon', 'size', 'mode', 'overlay')) return;
    const { taxon, size, mode, overlay } = now;
    const isArrival = taxon !== null && mode === 'arrival';
    host.hidden = !isArrival;
    box.checked = overlay === 'arrows';
    if (differs(now, before, 'taxon', 'size', 'mode')) {
      if (isArrival) spread.ask((signal) => api.spread(taxon, size, signal));
      else spread.clear();
    }
    if (isArrival && overlay === 'arrows') modelled.ask((signal) => api.modelled(taxon, size, signal));
    else modelled.clear();
  });
}

function keyOf(jumps: Jump[]): Node[] {
  const row = (kind: string, words: string, number: number | null) => el('li', {}, el('span', { class: `swatch ${kind}` }), el('span', {}, words), number === null ? null : el('span', { class: 'aside' }, count(number)));
  return [
    row('front past', 'Front by the end of the year beside it', null),
    row('front', 'Next year’s front, and where it may run (with all years shown)', null),
    ...(jumps.length === 0 ? [] : [row('ring', 'Far ahead of the front', jumps.length)]),
  ];
}

const shownArrows = (answer: Loaded<Modelled>) => shown(answer, (value) => [el('p', { class: 'note' }, arrowsInWords(value))]);

/** How many squares have a speed, and what lies in the middle of them. */
export function arrowsInWords({ refused, features }: Modelled): string {
  if (refused !== undefined) return `Not measurable. ${refused}`;
  const measured = features.flatMap(({ properties: { kmPerYear } }) => kmPerYear ?? []).sort((a, b) => a - b);
  const without = features.length - measured.length;
  if (measured.length === 0) return 'Not measurable in any square: arrival years beside one another differ too little or too wildly.';
  const rest = without === 0 ? '' : ` Not measurable in ${counted(without, 'other square')} (dots).`;
  return `${counted(measured.length, 'square')} with a local speed, half of them up to ${speed(measured[Math.floor((measured.length - 1) / 2)]!)} km a year, the fastest ${speed(measured.at(-1)!)}.${rest} The longer the arrow, the faster. On a small scale only some of the squares have theirs.`;
}
