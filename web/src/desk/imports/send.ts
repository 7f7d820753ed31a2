// Choosing a file and sending it.
import { Problem } from '../../api.ts';
import { el } from '../../elements.ts';
import type { ImportLine } from '../answers.ts';
import type { Session } from '../session.ts';
import { upload, type Sent } from '../upload.ts';
import { bytes, timeLeft } from '../words.ts';

/** From here on a file is asked about: it may have been chosen by mistake. */
const LONG_BYTES = 1e9;

export interface SendForm {
  form: HTMLElement;
  /** Offers the data sets used before, and the last one as a start; tells how long a file may be. */
  offer(datasets: readonly string[], mostBytes: number): void;
  /** Stops what is being sent. */
  stop(): void;
}

export function makeSendForm(session: Session, arrived: (sent: ImportLine) => void): SendForm {
  let file: File | null = null;
  let sending: AbortController | null = null;
  let most = Infinity;

  const input = el('input', { type: 'file', id: 'file', change: () => choose(input.files?.[0] ?? null) });
  const chosen = el('p', { class: 'chosen', 'aria-live': 'polite' });
  const drop = el('div', { class: 'drop', dragover: over, dragleave: () => drop.classList.remove('over'), drop: dropped },
    el('label', { for: 'file' }, 'A file of records'), input,
    el('p', { class: 'note' }, 'Text with commas, semicolons or tabs; a workbook (.xlsx); a Darwin Core Archive; any of them zipped. Choose it, or drop it here.'), chosen);
  const known = el('datalist', { id: 'datasets' });
  const dataset = el('input', { type: 'text', id: 'dataset', list: 'datasets', autocomplete: 'off', required: true, 'aria-describedby': 'dataset-about' });
  const button = el('button', { type: 'submit', class: 'main' }, 'Send');
  const cancel = el('button', { type: 'button', hidden: true, click: () => sending?.abort() }, 'Stop sending');
  const bar = el('progress', { max: 1, value: 0, 'aria-label': 'Sent so far', hidden: true });
  const told = el('p', { class: 'told', role: 'status' });
  const fault = el('p', { class: 'fault', role: 'alert' });
  const form = el('form', { class: 'send', submit: send }, drop,
    el('label', { for: 'dataset' }, 'Data set'), dataset, known,
    el('p', { class: 'note', id: 'dataset-about' }, 'The name under which a source of records is kept. A corrected file sent under the same name mends its earlier rows.'),
    el('p', { class: 'row' }, button, cancel), bar, told, fault);

  function over(event: Event): void {
    event.preventDefault();
    drop.classList.add('over');
  }

  function dropped(event: Event): void {
    event.preventDefault();
    drop.classList.remove('over');
    const files = (event as DragEvent).dataTransfer?.files;
    if (files !== undefined && files.length > 1) fault.textContent = 'One file at a time, please: each becomes an import that can be taken back by itself.';
    else choose(files?.[0] ?? null);
  }

  function choose(next: File | null): void {
    file = next;
    fault.textContent = '';
    if (file === null) return;
    const isLong = file.size >= LONG_BYTES;
    chosen.replaceChildren(el('strong', {}, file.name), ` ${bytes(file.size)}`, isLong ? ' – a long file. Is it the right one? It will take its time, and can be stopped.' : '');
    fault.textContent = faultOf(file) ?? '';
  }

  /** Why a file need not be sent at all. */
  function faultOf({ size }: File): string | null {
    if (size === 0) return 'This file is empty.';
    return size <= most ? null : `This file has ${bytes(size)}, and this server takes at most ${bytes(most)}. Pack it with gzip, send it in parts, or let whoever runs the server import it with rangemap import.`;
  }

  async function send(event: Event): Promise<void> {
    event.preventDefault();
    const missing = file === null ? 'Choose a file first.' : faultOf(file) ?? (dataset.value.trim() === '' ? 'Name the data set that the records belong to.' : null);
    if (file === null || missing !== null) {
      fault.textContent = missing;
      return;
    }
    sending = new AbortController();
    turn(true);
    try {
      arrived(await upload(session, file, dataset.value.trim(), tell, sending.signal));
    } catch (error) {
      if (sending.signal.aborted) told.textContent = 'Stopped. Nothing of the file was kept.';
      else if (error instanceof Problem) fault.textContent = error.message;
      else throw error;
    } finally {
      sending = null;
      turn(false);
    }
  }

  function turn(isSending: boolean): void {
    button.disabled = input.disabled = isSending;
    cancel.hidden = bar.hidden = !isSending;
    if (isSending) told.textContent = fault.textContent = '';
  }

  function tell({ bytes: now, of, perSecond, secondsLeft }: Sent): void {
    bar.value = of === 0 ? 0 : now / of;
    const left = secondsLeft === null ? '' : `, ${timeLeft(secondsLeft)} left`;
    told.textContent = now >= of ? 'Sent. The server is putting it away …' : `${bytes(now)} of ${bytes(of)}, ${bytes(perSecond)} a second${left}`;
  }

  return {
    form,
    offer(datasets, mostBytes) {
      most = mostBytes;
      known.replaceChildren(...datasets.map((name) => el('option', { value: name })));
      if (dataset.value === '') dataset.value = datasets[0] ?? '';
    },
    stop: () => sending?.abort(),
  };
}
