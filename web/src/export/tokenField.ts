// Records in full need a token with the right to review. It is kept as the desk keeps it: in this tab, until the tab is closed.
import { el } from '../elements.ts';
import type { ExportStore } from './store.ts';
import type { Tell } from './tell.ts';

export function tokenField(store: ExportStore, { session }: Tell): HTMLElement {
  const full = el('input', { type: 'checkbox', id: 'full', change: () => store.change({ full: full.checked }) });
  const secret = el('input', { type: 'password', id: 'token', autocomplete: 'off' });
  const use = el('button', { type: 'button', click: signIn }, 'Use it');
  const told = el('p', { class: 'note', role: 'status' });
  const ask = el('div', {}, el('label', { for: 'token' }, 'Your token'), el('div', { class: 'row' }, secret, use), told);

  function signIn(): void {
    const typed = secret.value.trim();
    if (typed === '') return;
    secret.value = '';
    session.signIn(typed);
  }

  function show(): void {
    full.checked = store.state.full;
    ask.hidden = !store.state.full;
    told.textContent = session.token === null ? 'It stays in this tab until you close it, and stands in no address or program below.' : 'A token is in use in this tab. Another one takes its place.';
  }

  secret.addEventListener('keydown', ({ key }) => { if (key === 'Enter') signIn(); });
  store.follow(show);
  session.follow(show);
  return el('div', { class: 'field' }, el('label', { class: 'tick' }, full, el('span', {}, 'In full', el('span', { class: 'aside' }, ' with sensitive species, people and sites; for those with the right to review, and not for publication'))), ask);
}
