// A link to the view as it stands: the address holds every choice.
import { el } from '../elements.ts';

export function copyLink(): HTMLElement {
  const said = el('span', { class: 'aside', role: 'status' });
  const address = el('input', { type: 'text', readonly: true, 'aria-label': 'Link to this view', hidden: true });
  const button = el('button', { type: 'button', class: 'link', click: () => void copy() }, 'Copy a link to this view');

  async function copy(): Promise<void> {
    try {
      await navigator.clipboard.writeText(window.location.href);
      said.textContent = 'Copied.';
    } catch {
      // Without a secure connection a browser copies nothing by itself.
      address.value = window.location.href;
      address.hidden = false;
      address.select();
      said.textContent = 'Copy it from here:';
    }
  }

  return el('p', { class: 'permanent' }, button, ' ', said, address);
}
