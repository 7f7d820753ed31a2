// The chosen square: what supports the species there, what else lives there or may, and the squares around it.
import { api, type SquarePage } from '../api.ts';
import { el } from '../elements.ts';
import { question } from '../loading.ts';
import { differs, type Store } from '../store.ts';
import { squareBox } from './squareBox.ts';
import { mountSquareCompare } from './squareCompare.ts';
import { drawSquare } from './squarePage.ts';
import { mountSquareSizes } from './squareSizes.ts';
import { shown } from './waiting.ts';
import { whatIs } from './whatIs.ts';

export function mountSquare(host: HTMLElement, store: Store): void {
  const { form, input } = squareBox(store);
  const body = el('div', { class: 'body', 'aria-live': 'polite' });
  const sizes = el('p', { class: 'sizes' }), compare = el('div');
  host.append(form, sizes, compare, body);
  mountSquareSizes(sizes, store);
  mountSquareCompare(compare, store);

  const empty = [whatIs('A square of the national grid, by its reference such as TL45: what was found there and when, what the dot on the map rests on, what may be missing, and how well it is known.'), el('p', { class: 'empty' }, 'Click a square on the map, or write its grid reference or a place, to see what lives there and what the dot rests on.')];
  let isNewSquare = false;
  const asked = question<SquarePage>((answer) => {
    body.replaceChildren(...shown(answer, (page) => drawSquare(page, store), empty));
    if (answer.kind === 'ready' && isNewSquare) bringIntoView(host);
  });

  store.follow((now, before) => {
    if (!differs(now, before, 'square', 'taxon', 'periods', 'quality')) return;
    const { square, taxon, periods, quality } = now;
    isNewSquare = now !== before && square !== before.square;
    input.value = square ?? '';
    if (square === null) asked.clear();
    else asked.ask((signal) => api.square(square, taxon, periods, quality, signal));
  });
}

/** Beside the map the answer to a click is scrolled to; under the map (a narrow screen) that would take the map away. */
function bringIntoView(host: HTMLElement): void {
  if (window.matchMedia('(min-width: 821px)').matches) host.closest('.details')?.scrollIntoView({ block: 'nearest' });
}
