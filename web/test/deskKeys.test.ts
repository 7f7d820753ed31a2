// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { listen, turnKeys, type Command } from '../src/desk/review/keys.ts';

const command = (key: string, also?: string): Command => ({ key, name: key, about: '', run: vi.fn(), ...(also === undefined ? {} : { also }) });

describe('keys of the review', () => {
  const [confirm, next, help] = [command('c'), command('j', 'ArrowDown'), command('?')];
  let deaf = () => {};

  beforeEach(() => {
    deaf = listen([confirm, next, help]);
    document.body.innerHTML = '<div class="queue"><input type="checkbox" id="tick"></div><textarea id="reason"></textarea><input id="box"><div id="map" tabindex="0"></div>';
  });
  afterEach(() => {
    deaf();
    window.localStorage.clear();
    vi.clearAllMocks();
  });

  const press = (key: string, at = 'tick', more: KeyboardEventInit = {}) =>
    document.getElementById(at)!.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...more }));

  test('a key does what it says, written large or small', () => {
    press('c');
    press('C', 'tick', { shiftKey: true });
    expect(confirm.run).toHaveBeenCalledTimes(2);
  });

  test.each(['reason', 'box'])('what is typed into a box is text (%s)', (box) => {
    press('c', box);
    expect(confirm.run).not.toHaveBeenCalled();
  });

  test('keys of the browser stay the browser’s', () => {
    for (const more of [{ ctrlKey: true }, { altKey: true }, { metaKey: true }]) press('c', 'tick', more);
    expect(confirm.run).not.toHaveBeenCalled();
  });

  test('the arrows move in the list, and scroll elsewhere', () => {
    press('ArrowDown', 'map');
    expect(next.run).not.toHaveBeenCalled();
    press('ArrowDown');
    expect(next.run).toHaveBeenCalledOnce();
  });

  test('a key held down moves on, but decides once', () => {
    press('c');
    for (let held = 0; held < 5; held++) press('c', 'tick', { repeat: true });
    for (let held = 0; held < 5; held++) press('j', 'tick', { repeat: true });
    expect(confirm.run).toHaveBeenCalledOnce();
    expect(next.run).toHaveBeenCalledTimes(5);
  });

  test('turned off, only the list of keys still opens', () => {
    turnKeys(false);
    press('c');
    press('?');
    expect(confirm.run).not.toHaveBeenCalled();
    expect(help.run).toHaveBeenCalledOnce();
  });

  test('while a dialog is open nothing is decided, and after the page is left neither', () => {
    document.body.append(Object.assign(document.createElement('dialog'), { open: true }));
    press('c');
    document.querySelector('dialog')!.remove();
    deaf();
    press('c');
    expect(confirm.run).not.toHaveBeenCalled();
  });
});
