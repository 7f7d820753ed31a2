// The bar of decisions: a button a key, a reason where one is owed, another name where the record has the wrong one.
import { el } from '../../elements.ts';
import { taxonBox } from '../../panels/taxonBox.ts';
import { counted, scientific } from '../../words.ts';
import type { RecordLine, Verdict } from '../answers.ts';
import type { Command } from './keys.ts';
import { keepReason, recentReasons } from './reasons.ts';

type Form = 'doubtful' | 'rejected' | 'name';

export interface VerdictBar {
  panel: HTMLElement;
  /** Says on what a decision would be. */
  show(records: readonly RecordLine[], isBulk: boolean): void;
  open(form: Form): void;
  close(): void;
  tell(text: string): void;
  fail(text: string): void;
}

const ASKED: Record<Form, string> = {
  doubtful: 'Why is it doubtful? The recorder reads this.', rejected: 'Why is it rejected? The recorder reads this.', name: 'A word to the recorder (may be left out)',
};
const OPENED_BY: Record<Form, string> = { doubtful: 'd', rejected: 'r', name: 'i' };
const SEND: Record<Form, string> = { doubtful: 'Call it doubtful', rejected: 'Reject it', name: 'Name it so' };

export function makeVerdictBar(commands: readonly Command[], decide: (verdict: Verdict) => Promise<boolean>): VerdictBar {
  let form: Form | null = null;
  let taxon: { id: string; name: string } | null = null;

  const on = el('p', { class: 'on', id: 'decide-on' });
  const buttons = el('div', { class: 'keys', role: 'group', 'aria-label': 'Decide' }, ...commands.map(commandButton));
  const reason = el('textarea', { id: 'reason', rows: 2, keydown: pressed });
  const asked = el('label', { for: 'reason' });
  const recent = el('div', { class: 'recent', role: 'group', 'aria-label': 'Reasons given lately' });
  const naming = el('p', { role: 'status' });
  const box = taxonBox({ id: 'rename', label: 'What is it?', choose: (found) => { taxon = { id: found.id, name: found.scientificName }; showName(); reason.focus(); } });
  const confirms = el('input', { type: 'checkbox', id: 'and-confirm', checked: true });
  const name = el('div', { class: 'naming' }, box.box, naming, el('p', {}, confirms, ' ', el('label', { for: 'and-confirm' }, 'and confirm it under that name')));
  const send = el('button', { type: 'submit', class: 'main' });
  const fault = el('p', { class: 'fault', role: 'alert' });
  const why = el('form', { class: 'why', hidden: true, submit: (event) => { event.preventDefault(); void submit(); } }, name, asked, reason, recent,
    el('p', { class: 'row' }, send, el('button', { type: 'button', click: close }, 'Not now')));
  const told = el('p', { class: 'told', role: 'status' });
  const panel = el('section', { class: 'verdict', 'aria-label': 'Decision' }, on, buttons, why, fault, told);

  function pressed(event: Event): void {
    const { key, shiftKey, isComposing } = event as KeyboardEvent;
    if (key === 'Escape') close();
    if (key !== 'Enter' || shiftKey || isComposing) return;
    event.preventDefault();
    void submit();
  }

  function open(next: Form): void {
    form = next;
    why.hidden = false;
    name.hidden = form !== 'name';
    asked.textContent = ASKED[form];
    send.textContent = SEND[form];
    fault.textContent = '';
    recent.replaceChildren(...recentReasons(window.localStorage).map((text) => el('button', { type: 'button', class: 'link', click: () => { reason.value = text; reason.focus(); } }, text)));
    showName();
    (form === 'name' ? box.input : reason).focus();
  }

  function close(): void {
    // Back to where it was opened: one Enter too many then decides nothing.
    if (form !== null) buttons.querySelector<HTMLElement>(`[aria-keyshortcuts="${OPENED_BY[form]}"]`)?.focus({ preventScroll: true });
    form = taxon = null;
    why.hidden = true;
    fault.textContent = '';
  }

  function showName(): void {
    naming.replaceChildren(...(taxon === null ? [] : ['It becomes ', scientific(taxon.name), '; the name that was sent stays beside it.']));
  }

  async function submit(): Promise<void> {
    const text = reason.value.trim();
    const verdict = verdictOf(text);
    if (verdict === null) return;
    send.disabled = true;
    const isDone = await decide(verdict);
    send.disabled = false;
    if (!isDone) return;
    if (text !== '') keepReason(window.localStorage, text);
    reason.value = '';
    close();
  }

  /** Null where something is owed still; it is said. */
  function verdictOf(text: string): Verdict | null {
    if (form === 'name') {
      if (taxon !== null) return { taxon: taxon.id, reason: text, ...(confirms.checked ? { status: 'confirmed' } : {}) };
      fault.textContent = 'Choose the taxon from the list first.';
      return null;
    }
    if (form === null) return null;
    if (text !== '') return { status: form, reason: text };
    fault.textContent = 'A reason is owed, so that the recorder can understand it.';
    return null;
  }

  return {
    panel, open, close,
    show(records, isBulk) {
      on.replaceChildren(...(isBulk ? [`On ${counted(records.length, 'selected record')}`] : records.flatMap((record) => [scientific(record.scientificName), `, ${record.square}`])));
      panel.hidden = records.length === 0;
    },
    tell(text) {
      fault.textContent = '';
      told.textContent = text;
    },
    fail(text) { fault.textContent = text; },
  };
}

export const commandButton = ({ key, name, about, run }: Command) =>
  el('button', { type: 'button', title: about, 'aria-keyshortcuts': key, click: run }, name, ' ', el('kbd', { 'aria-hidden': 'true' }, key));
