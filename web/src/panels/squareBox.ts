// Naming a square: by its reference, by a place near by, or by where the device is.
import { api, Problem, type Place } from '../api.ts';
import { el } from '../elements.ts';
import { readSquare } from '../squares/names.ts';
import { squareOfPlace } from '../squares/squareOfPlace.ts';
import type { Store } from '../store.ts';
import { comboBox } from './comboBox.ts';
import { position } from './position.ts';

const plain = (text: string) => text.toUpperCase().replaceAll(/\s/g, '');

export function squareBox(store: Store): { form: HTMLElement; input: HTMLInputElement } {
  const fault = el('p', { class: 'fault', role: 'alert' });
  const { box, input } = comboBox<Place>({
    id: 'square', label: 'Grid reference of a square, or a place', placeholder: 'such as TL45, H87 or a town', listLabel: 'Places found', nothing: 'No town of that name is known here.',
    find: async (text, signal) => {
      const places = text === '' ? [] : (await api.places(text, signal)).places;
      return { items: places, total: places.length };
    },
    line: ({ name, where, square }) => [el('span', { class: 'name' }, name), el('span', { class: 'aside' }, square === null || square === name ? where : `${square}, ${where}`)],
    choose: show,
    isComplete: (text) => text.trim() === '' || readSquare(plain(text)) !== null,
  });
  const here = el('button', { type: 'button', class: 'link', click: () => void goHere() }, 'Where I am');
  const form = el('form', { class: 'ask', submit: (event) => { event.preventDefault(); void go(); } }, box, el('button', { type: 'submit' }, 'Show'), el('p', { class: 'here' }, here), fault);

  function show(place: Place): void {
    const square = squareOfPlace(place, store.state.size);
    fault.textContent = square === null ? `${place.name} lies on none of the grids of this map.` : '';
    if (square !== null) store.change({ square });
  }

  async function go(): Promise<void> {
    const name = plain(input.value);
    fault.textContent = '';
    if (readSquare(name) !== null) store.change({ square: name });
    else await showFirst(input.value.trim(), 'That is no square of 100, 10, 5, 2 or 1 km, and no town of that name is known here. Write it like TL45, TL45NW, TL45K, TL4558 or H87.');
  }

  async function goHere(): Promise<void> {
    fault.textContent = '';
    here.textContent = 'Asking the device …';
    try {
      const [latitude, longitude] = await position();
      // Three decimals are about 100 m: enough for a square, and no more is told to the server.
      await showFirst(`${latitude.toFixed(3)}, ${longitude.toFixed(3)}`, 'You are outside the grids of this map.',
        // The map's squares, not the small one that three decimals tell.
        (place) => show({ ...place, name: 'Your position' }));
    } catch (error) {
      fault.textContent = (error as Error).message;
    } finally {
      here.textContent = 'Where I am';
    }
  }

  async function showFirst(text: string, otherwise: string, use = show): Promise<void> {
    try {
      const first = text === '' ? undefined : (await api.places(text)).places[0];
      if (first === undefined) fault.textContent = otherwise;
      else use(first);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      fault.textContent = error.message;
    }
  }

  return { form, input };
}
