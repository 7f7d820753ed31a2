// Keys of the review. Each has a button too; typing in a box is never taken for a key, and all can be turned off.

export interface Command { key: string; also?: string; name: string; about: string; run(): void }

const KEY = 'rangemap.keys';

export const areKeysOn = () => window.localStorage.getItem(KEY) !== 'off';

export const turnKeys = (isOn: boolean) => window.localStorage.setItem(KEY, isOn ? 'on' : 'off');

/** Listens until the answer is called. */
export function listen(commands: readonly Command[]): () => void {
  function pressed(event: KeyboardEvent): void {
    if (event.ctrlKey || event.altKey || event.metaKey || isTyping(event.target) || document.querySelector('dialog[open]') !== null) return;
    const command = commands.find(({ key, also }) => event.key.toLowerCase() === key || (also !== undefined && event.key === also && isInList(event.target)));
    if (command === undefined || (!areKeysOn() && command.key !== '?')) return;
    event.preventDefault();
    // A key held down moves through the list; it decides once.
    if (!event.repeat || command.also !== undefined) command.run();
  }

  document.addEventListener('keydown', pressed);
  return () => document.removeEventListener('keydown', pressed);
}

const isTyping = (target: EventTarget | null) =>
  target instanceof HTMLElement && (target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement || (target instanceof HTMLInputElement && target.type !== 'checkbox'));

/** Elsewhere the arrows scroll the page, as everyone expects. */
const isInList = (target: EventTarget | null) => target instanceof Element && (target === document.body || target.closest('.queue') !== null);
