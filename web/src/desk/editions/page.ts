// Editions: freezing the data so that they can be cited, and those that were frozen.
import { ROOT } from '../../api.ts';
import { el } from '../../elements.ts';
import { START, toHash } from '../../export/query.ts';
import { question } from '../../loading.ts';
import { shown } from '../../panels/waiting.ts';
import { count, counted } from '../../words.ts';
import type { Edition, EditionList } from '../answers.ts';
import type { Desk, Leave } from '../desk.ts';
import { day } from '../words.ts';
import { freezeForm } from './freeze.ts';

export function mountEditions(host: HTMLElement, desk: Desk): Leave {
  const list = el('div', { class: 'editions' });
  let known: readonly Edition[] = [];
  const asked = question<EditionList>((answer) => {
    if (answer.kind === 'ready') known = answer.value.editions;
    list.replaceChildren(...shown(answer, ({ editions }) => draw(editions)));
  });
  const ask = () => asked.ask((signal) => desk.questions.editions(signal));
  host.append(
    el('section', { 'aria-labelledby': 'freeze-title' }, el('h2', { id: 'freeze-title' }, 'Freeze an edition'), freezeForm(desk, () => known, ask)),
    el('section', { 'aria-labelledby': 'editions-title' }, el('h2', { id: 'editions-title' }, 'Frozen editions'), list));
  ask();
  return () => asked.clear();
}

function draw(editions: readonly Edition[]): Node[] {
  if (editions.length === 0) return [el('p', { class: 'empty' }, 'Nothing is frozen yet. Freeze an edition before you publish figures from these data, so that others can ask for the very same.')];
  return editions.map(one);
}

function one(edition: Edition): HTMLElement {
  const { id, title, frozenAt, taxa, records, squares, reason, withdrawn, citation } = edition;
  const files = `${ROOT}/editions/${id}`;
  return el('article', { class: 'edition' },
    el('h3', {}, title, el('span', { class: 'aside' }, `frozen ${day(frozenAt)}, ${id.slice(0, 8)}`)),
    withdrawn ? el('p', { class: 'fault' }, `Withdrawn: ${withdrawn}`) : null,
    reason ? el('p', {}, `Why: ${reason}`) : null,
    el('p', {}, `${counted(records, 'record')} of ${count(taxa)} taxa, in ${counted(squares, 'square')} of 10 km.`),
    el('p', { class: 'citation' }, citation),
    withdrawn ? null : el('p', {},
      el('a', { href: `/export.html#${toHash({ ...START, edition: id })}` }, 'Its data'), ', ',
      el('a', { href: `${files}/citation.cff` }, 'CITATION.cff'), ', ', el('a', { href: `${files}/datacite.json` }, 'DataCite JSON'), ', ', el('a', { href: files }, 'all that is told of it')));
}
