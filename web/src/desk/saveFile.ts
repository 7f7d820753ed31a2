import { el } from '../elements.ts';

/** Hands a file to the person, as a download. A link cannot send a token, so the bytes are here already. */
export function saveFile(content: Blob, name: string): void {
  const href = URL.createObjectURL(content);
  const link = el('a', { href, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  // The download has begun with the click; the address is of no more use.
  window.setTimeout(() => URL.revokeObjectURL(href), 0);
}
