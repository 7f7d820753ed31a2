// The same question for other programs: an address, a command, programs; each with a button that copies it.
import { el } from '../elements.ts';
import { asked, toPath } from './address.ts';
import { LANGUAGES, snippet, TOKEN_VARIABLE, type Language } from './snippets.ts';
import { canAsk, type ExportStore } from './store.ts';

const NAMES: Record<Language | 'url', string> = { url: 'Address', curl: 'curl', python: 'Python', r: 'R' };

export function mountSnippets(host: HTMLElement, store: ExportStore, origin: string): void {
  const told = el('p', { class: 'unseen', role: 'status' });
  const token = el('p', { class: 'note' }, 'Put your token into the environment variable ', el('code', {}, TOKEN_VARIABLE), ' before: no address or program here holds it.');
  const boxes = (['url', ...LANGUAGES] as const).map((kind) => {
    const code = el('code', {});
    const pre = el('pre', { tabindex: 0, role: 'region', 'aria-label': `${NAMES[kind]} for this file`, id: `snippet-${kind}` }, code);
    const copy = el('button', { type: 'button', class: 'link', 'aria-label': `Copy ${NAMES[kind]}`, click: () => void take(kind, code, copy) }, 'Copy');
    return { kind, code, whole: el('div', { class: 'snippet' }, el('h3', {}, NAMES[kind], copy), pre) };
  });
  const whole = el('section', { class: 'snippets', 'aria-labelledby': 'same-title' }, el('h2', { id: 'same-title' }, 'The same question elsewhere'), token, ...boxes.map((box) => box.whole), told);
  host.append(whole);

  async function take(kind: Language | 'url', code: HTMLElement, button: HTMLElement): Promise<void> {
    const isCopied = await copied(code);
    told.textContent = isCopied ? `${NAMES[kind]} copied.` : 'This browser does not let the page copy. The text is marked: copy it with the keyboard.';
    button.textContent = isCopied ? 'Copied' : 'Marked';
    window.setTimeout(() => { button.textContent = 'Copy'; }, 2500);
  }

  store.follow((now) => {
    whole.hidden = !canAsk(now);
    if (!canAsk(now)) return;
    token.hidden = !(now.what === 'records' && now.full);
    for (const { kind, code } of boxes) code.textContent = kind === 'url' ? origin + toPath(asked(now)) : snippet(kind, now, origin);
  });
}

/** Copies, or marks the text where the browser does not allow it (pages that come without encryption from another machine). */
async function copied(code: HTMLElement): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(code.textContent ?? '');
    return true;
  } catch {
    window.getSelection()?.selectAllChildren(code);
    return false;
  }
}
