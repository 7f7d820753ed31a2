// Help where it is wanted: a short fold at the head of a panel.
import { el } from '../elements.ts';

/** "What is this?", with a paragraph for each text. */
export const whatIs = (...texts: string[]): HTMLElement =>
  el('details', { class: 'what' }, el('summary', {}, 'What is this?'), ...texts.map((text) => el('p', { class: 'note' }, text)));
