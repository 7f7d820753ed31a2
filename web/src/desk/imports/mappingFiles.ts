// Columns said once need not be said again: the mapping of an earlier import, a mapping file from the disk, and this one to keep.
import { Problem } from '../../api.ts';
import { el } from '../../elements.ts';
import type { ImportLine, MappingFile, Preview } from '../answers.ts';
import type { Desk } from '../desk.ts';
import { saveFile } from '../saveFile.ts';
import { mappingFile, readMapping, withMapping, type Saying } from './mapping.ts';

export function mappingFiles(desk: Desk, { dataset, file }: ImportLine, preview: () => Preview | null, saying: () => Saying, change: (next: Saying) => void): { bar: HTMLElement } {
  const fault = el('p', { class: 'fault', role: 'alert' });
  const earlier = el('select', { 'aria-label': 'Read it like an earlier import', hidden: true, change: () => void likeEarlier() });
  const input = el('input', { type: 'file', accept: '.json,application/json', 'aria-label': 'A mapping file', hidden: true, change: () => void load() });
  const bar = el('div', { class: 'mapping-files' }, earlier,
    el('button', { type: 'button', class: 'link', click: () => input.click() }, 'Load a mapping file'), input,
    el('button', { type: 'button', class: 'link', click: save }, 'Save this mapping'), fault);
  void offerEarlier();

  async function offerEarlier(): Promise<void> {
    // Without the list the columns can still be chosen by hand.
    const all = await desk.questions.imports().catch(() => null);
    const over = (all?.imports ?? []).filter(({ batch, state }) => batch !== null && state === 'done').sort((a, b) => Number(b.dataset === dataset) - Number(a.dataset === dataset));
    earlier.hidden = over.length === 0;
    earlier.replaceChildren(el('option', { value: '' }, 'Read it like an earlier import …'),
      ...over.slice(0, 40).map((line) => el('option', { value: line.id }, `${line.file} (${line.dataset}, import ${line.batch})`)));
  }

  async function likeEarlier(): Promise<void> {
    if (earlier.value === '') return;
    try {
      take(await desk.questions.mapping(earlier.value));
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      fault.textContent = error.message;
    }
  }

  async function load(): Promise<void> {
    const chosen = input.files?.[0];
    if (chosen === undefined) return;
    const read = readMapping(await chosen.text());
    input.value = '';
    if ('fault' in read) fault.textContent = read.fault;
    else take(read.file);
  }

  function take(mapping: MappingFile): void {
    const now = preview();
    fault.textContent = '';
    if (now !== null) change(withMapping(saying(), mapping, now));
  }

  function save(): void {
    const now = preview();
    if (now === null) return;
    const columns = new Map(now.columns.map(({ name, term }) => [name, term] as const));
    saveFile(new Blob([JSON.stringify(mappingFile({ ...saying(), columns }), null, 2)], { type: 'application/json' }), `mapping of ${file}.json`);
  }

  return { bar };
}
