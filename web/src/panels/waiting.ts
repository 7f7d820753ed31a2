// What a panel says while an answer is on its way, and when it does not come.
import { el } from '../elements.ts';
import type { Loaded } from '../loading.ts';

/** The content for an answer: the panel's own drawing of a value, or plain words for the other cases. */
export function shown<T>(answer: Loaded<T>, draw: (value: T) => Node[], nothing: Node[] = []): Node[] {
  switch (answer.kind) {
    case 'nothing': return nothing;
    case 'loading': return [el('p', { class: 'waiting', role: 'status' }, 'Asking the server …')];
    case 'ready': return draw(answer.value);
    case 'failed': return [
      el('div', { class: 'failed', role: 'alert' },
        el('p', {}, el('strong', {}, answer.problem.title), ' ', answer.problem.detail),
        el('button', { type: 'button', click: answer.again }, 'Try again')),
    ];
  }
}
