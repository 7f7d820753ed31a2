// One file on its way: how it would be read, how far it has come, what became of it.
import { el } from '../../elements.ts';
import { question } from '../../loading.ts';
import { shown } from '../../panels/waiting.ts';
import type { ImportLine } from '../answers.ts';
import type { Desk, Leave } from '../desk.ts';
import { writeRoute } from '../route.ts';
import { bytes, moment } from '../words.ts';
import { mountMapping } from './columns.ts';
import { mountProgress } from './progress.ts';
import { mountReport } from './report.ts';

export function mountImport(host: HTMLElement, desk: Desk, id: string): Leave {
  let leave: Leave = () => {};
  const asked = question<ImportLine>((answer) => {
    leave();
    leave = () => {};
    if (answer.kind === 'ready') show(answer.value);
    else host.replaceChildren(back(), ...shown(answer, () => []));
  });
  const ask = () => asked.ask((signal) => desk.questions.import(id, signal));

  function show(sent: ImportLine): void {
    // Its number outlives the name that the file had on its way.
    if (sent.batch !== null && sent.id !== String(sent.batch)) window.history.replaceState(null, '', writeRoute({ place: 'import', id: String(sent.batch) }));
    const body = el('div', { class: 'body' });
    host.replaceChildren(back(), head(sent), body);
    switch (sent.state) {
      case 'received':
      case 'failed':
        leave = mountMapping(body, desk, sent, show);
        break;
      case 'queued':
      case 'running':
        leave = mountProgress(body, desk, sent, show, ask);
        break;
      case 'done':
      case 'undone':
        leave = mountReport(body, desk, sent, show);
    }
  }

  ask();
  return () => {
    asked.clear();
    leave();
  };
}

const back = () => el('p', { class: 'back' }, el('a', { href: writeRoute({ place: 'imports' }) }, '← All imports'));

function head({ file, dataset, by, at, batch, bytes: length }: ImportLine): HTMLElement {
  const facts = [`data set ${dataset}`, batch === null ? null : `import ${batch}`, moment(at), `by ${by ?? 'the command line'}`, length === null ? null : bytes(length)];
  return el('header', { class: 'import-head' }, el('h2', { tabindex: -1 }, file), el('p', { class: 'aside' }, facts.filter((fact) => fact !== null).join(' · ')));
}
