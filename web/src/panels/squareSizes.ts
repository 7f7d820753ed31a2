// The same place in squares of the other sizes.
import { el } from '../elements.ts';
import { readSquare } from '../squares/names.ts';
import { resized } from '../squares/resize.ts';
import { sideMetres, SIZES, type Size } from '../state.ts';
import { differs, type Store } from '../store.ts';

export function mountSquareSizes(host: HTMLElement, store: Store): void {
  let finest: string | null = null;
  let isOwnStep = false;

  function go(size: Size): void {
    const { square } = store.state;
    const name = square === null ? null : resized(square, size, finest);
    if (square === null || name === null) return;
    finest = side(finest ?? square) < side(square) ? finest : square;
    isOwnStep = true;
    store.change({ square: name, size });
    isOwnStep = false;
  }

  store.follow((now, before) => {
    if (!differs(now, before, 'square')) return;
    if (!isOwnStep) finest = null;
    const { square } = now;
    host.hidden = square === null || readSquare(square) === null;
    if (square === null) return;
    const isNow = (size: Size) => side(square) === sideMetres(size);
    host.replaceChildren(el('span', { class: 'aside' }, 'Same place at'), ...SIZES.map((size) =>
      el('button', { type: 'button', class: 'link', 'aria-current': isNow(size) ? 'true' : null, click: () => go(size) }, `${sideMetres(size) / 1000} km`)));
  });
}

const side = (name: string) => readSquare(name)?.side ?? 0;
