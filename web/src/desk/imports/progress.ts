// An import that runs: rows, rate and time left as the server tells them. Should the line be cut, it is asked again; the import does not mind.
import { Problem } from '../../api.ts';
import { el } from '../../elements.ts';
import { count } from '../../words.ts';
import type { ImportLine, ImportProgress } from '../answers.ts';
import type { Desk, Leave } from '../desk.ts';
import { eventsOf } from '../events.ts';
import { timeLeft } from '../words.ts';
import { once } from '../once.ts';

const AGAIN_MS = 3_000;

export function mountProgress(host: HTMLElement, desk: Desk, sent: ImportLine, over: (sent: ImportLine) => void, askAgain: () => void): Leave {
  const watching = new AbortController();
  const bar = el('progress', { max: 1, 'aria-label': 'Read so far' });
  const told = el('p', { class: 'told', role: 'status' }, 'It waits for its turn.');
  const fault = el('p', { class: 'fault', role: 'alert' });
  const stop = el('button', { type: 'button', click: () => void once(stop, fault, stopIt) }, 'Stop the import');
  host.append(
    el('h3', {}, 'Reading'), bar, told,
    el('p', { class: 'note' }, 'You may leave this page; the import goes on. All of the file becomes part of the data at once, or nothing does.'),
    el('p', { class: 'row' }, stop), fault);

  async function stopIt(): Promise<void> {
    await desk.questions.takeBack(sent.id);
    desk.go({ place: 'imports' });
  }

  function tell({ rows, fraction, rowsPerSecond, secondsLeft }: ImportProgress): void {
    fault.textContent = '';
    bar.value = fraction;
    const left = secondsLeft === null ? '' : `, ${timeLeft(secondsLeft)} left`;
    told.textContent = `${count(rows)} rows read, ${count(rowsPerSecond)} a second${left}.`;
  }

  async function watch(): Promise<void> {
    const stream = await desk.questions.events(sent.id, watching.signal);
    for await (const { name, data } of eventsOf(stream)) {
      if (name === 'progress') tell(JSON.parse(data) as ImportProgress);
      else if (name === 'end') return over(JSON.parse(data) as ImportLine);
    }
    throw new Error('The server stopped telling.');
  }

  async function watchUntilOver(): Promise<void> {
    while (!watching.signal.aborted) {
      try {
        return await watch();
      } catch (error) {
        if (watching.signal.aborted) return;
        // The server was started anew, or the file was taken away: it knows better where it stands.
        if (error instanceof Problem && error.status !== 0) return askAgain();
        fault.textContent = 'The server does not answer. It is asked again every few seconds; what it has read is safe.';
        await new Promise((go) => { window.setTimeout(go, AGAIN_MS); });
      }
    }
  }

  void watchUntilOver();
  return () => watching.abort();
}
