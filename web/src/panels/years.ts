// The slider through the years of arrival, with a small picture of how many squares came each year.
import { el, svg } from '../elements.ts';
import { differs, type Store } from '../store.ts';
import { counted } from '../words.ts';

const STEP_MS = 450;

export interface YearSlider { tell(years: number[]): void }

/** Years are told in ascending order, one entry a square. */
export function mountYears(host: HTMLElement, store: Store): YearSlider {
  let years: number[] = [];
  let timer = 0;

  // Who has asked the system for less motion steps through the years by hand.
  const calm = window.matchMedia('(prefers-reduced-motion: reduce)');
  const play = el('button', { type: 'button', class: 'play', click: () => calm.matches ? step() : timer === 0 ? start() : stop() });
  calm.addEventListener('change', stop);
  const label = el('output', { class: 'year', for: 'year-input' });
  const aside = el('span', { class: 'aside' });
  const input = el('input', { type: 'range', id: 'year-input', step: 1, 'aria-label': 'Show squares first found up to this year', input: () => { stop(); show(Number(input.value)); } });
  const bars = svg('svg', { class: 'bars', preserveAspectRatio: 'none', 'aria-hidden': 'true' });
  host.append(play, el('div', { class: 'readout' }, label, aside), el('div', { class: 'track' }, bars, input));

  const first = () => years[0] ?? 0;
  const last = () => years.at(-1) ?? 0;
  /** The last year stands for all years, and is left out of the address. */
  const show = (year: number) => store.change({ year: year >= last() ? null : year });

  function step(): void {
    if (store.state.year === null) store.change({ year: first() });
    else show(store.state.year + 1);
  }

  function start(): void {
    if (store.state.year === null) step();
    play.textContent = 'Pause';
    timer = window.setInterval(() => store.state.year === null ? stop() : step(), STEP_MS);
  }

  function stop(): void {
    window.clearInterval(timer);
    timer = 0;
    play.textContent = calm.matches ? 'Next year' : 'Play';
  }

  function draw(): void {
    const year = store.state.year ?? last();
    input.value = String(year);
    input.setAttribute('aria-valuetext', String(year));
    label.textContent = String(year);
    aside.textContent = `${counted(years.filter((y) => y <= year).length, 'square')} so far, ${years.filter((y) => y === year).length} new`;
    bars.querySelectorAll('rect').forEach((bar) => bar.classList.toggle('past', Number(bar.dataset['year']) <= year));
  }

  function drawBars(): void {
    const perYear = Array.from({ length: last() - first() + 1 }, (_, i) => years.filter((y) => y === first() + i).length);
    const most = Math.max(1, ...perYear);
    bars.setAttribute('viewBox', `0 0 ${perYear.length} 1`);
    bars.replaceChildren(...perYear.map((n, i) => svg('rect', { x: i + 0.1, width: 0.8, y: 1 - n / most, height: n / most, 'data-year': first() + i })));
  }

  stop();
  store.follow((now, before) => {
    if (differs(now, before, 'taxon', 'size', 'mode')) {
      stop();
      years = [];
    }
    host.hidden = now.taxon === null || now.mode !== 'arrival' || years.length === 0;
    draw();
  });

  return {
    tell(told) {
      years = told;
      input.min = String(first());
      input.max = String(last());
      host.hidden = years.length === 0 || store.state.mode !== 'arrival';
      drawBars();
      draw();
    },
  };
}
