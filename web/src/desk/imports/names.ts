// Names that the taxon list lacks: each accepted once for a taxon, by a person; then its rows can be sent again.
import { el } from '../../elements.ts';
import { question } from '../../loading.ts';
import { counted, scientific } from '../../words.ts';
import { taxonBox } from '../../panels/taxonBox.ts';
import type { ImportLine, UnknownName } from '../answers.ts';
import type { Desk, Leave } from '../desk.ts';
import { once } from '../once.ts';

export function mountNames(host: HTMLElement, desk: Desk, { id }: ImportLine): Leave {
  const asked = question<UnknownName[]>((answer) => {
    // Refused rows tell of unknown names too; without this list they are only less handy.
    host.hidden = answer.kind !== 'ready' || answer.value.length === 0;
    if (answer.kind === 'ready') host.replaceChildren(
      el('h3', {}, 'Names that the list lacks'),
      el('p', { class: 'note' }, 'Say once what is meant by a name, and every later file with it is read without asking. Then send the refused rows again.'),
      el('ul', { class: 'name-lines' }, ...answer.value.map((name, i) => line(desk, name, i))));
  });
  asked.ask((signal) => desk.questions.names(id, signal));
  return () => asked.clear();
}

function line(desk: Desk, { name, rows, suggestions }: UnknownName, i: number): HTMLElement {
  const fault = el('p', { class: 'fault', role: 'alert' });
  const answer = el('div', { class: 'row' });
  const whole = el('li', {}, el('p', {}, el('strong', {}, name), el('span', { class: 'aside' }, ` ${counted(rows, 'row')}`)), answer, fault);
  const other = taxonBox({ id: `name-${i}`, label: `Another taxon for ${name}`, choose: (taxon) => void accept(taxon.id, taxon.scientificName) });
  answer.append(...(suggestions.length === 0 ? [el('span', { class: 'note' }, 'Nothing in the list is near.')] : ['Is it ', ...suggestions.map(suggestion)]), other.box);
  return whole;

  function suggestion({ taxon, scientificName, matched }: UnknownName['suggestions'][number]): HTMLElement {
    const button = el('button', { type: 'button', click: () => void once(button, fault, () => accept(taxon, scientificName)) },
      scientific(scientificName), matched === scientificName ? '' : ` (${matched})`);
    return button;
  }

  async function accept(taxon: string, scientificName: string): Promise<void> {
    await desk.questions.accept(name, taxon);
    answer.replaceChildren(el('span', { role: 'status' }, '✓ now read as ', scientific(scientificName)));
  }
}
