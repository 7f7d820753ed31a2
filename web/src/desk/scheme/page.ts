// Settings of the scheme: the periods that maps begin with, what they were before, and the groups of the taxon list.
import { Problem } from '../../api.ts';
import { el } from '../../elements.ts';
import { question } from '../../loading.ts';
import { shown } from '../../panels/waiting.ts';
import { count } from '../../words.ts';
import type { Group, NamedPeriod, Scheme } from '../answers.ts';
import type { Desk, Leave } from '../desk.ts';
import { historyList } from './history.ts';
import { periodForm } from './periods.ts';

export function mountScheme(host: HTMLElement, desk: Desk): Leave {
  const periods = el('div', {}), groups = el('div', {});
  const history = el('div', {});
  const told = el('p', { class: 'told', role: 'status' });
  let newest = 0;

  const asked = question<Scheme>((answer) => {
    periods.replaceChildren(...shown(answer, (scheme) => [periodForm(scheme.periods, save)]));
    if (answer.kind === 'ready') follow(answer.value);
  });
  const askedGroups = question<Group[]>((answer) => groups.replaceChildren(...shown(answer, draw)));
  asked.ask((signal) => desk.questions.scheme(signal));
  askedGroups.ask((signal) => desk.questions.groups(signal));
  host.append(
    el('section', { 'aria-labelledby': 'periods-title' }, el('h2', { id: 'periods-title' }, 'Periods'),
      el('p', {}, 'Maps begin with these periods, and offer them by name. Whoever looks at a map may choose others.'), periods, told),
    el('section', { 'aria-labelledby': 'history-title' }, el('h2', { id: 'history-title' }, 'What they were before'), history),
    el('section', { 'aria-labelledby': 'groups-title' }, el('h2', { id: 'groups-title' }, 'Groups'),
      el('p', {}, 'Taxa recorded together: who notes one of them on a visit would note the others, so that a visit without a species tells something. They stand in the column “group” of the taxon list; to change them, load the list anew with rangemap taxa.'), groups));
  return () => {
    asked.clear();
    askedGroups.clear();
  };

  function follow(scheme: Scheme): void {
    newest = scheme.newest;
    history.replaceChildren(historyList(scheme, restore));
  }

  async function save(named: readonly NamedPeriod[], gapsAreMeant: boolean, reason: string): Promise<void> {
    await change(() => desk.questions.setPeriods(named, gapsAreMeant, reason, newest), 'Saved. Maps begin with these periods from now on.');
  }

  async function restore(number: number, reason: string): Promise<void> {
    await change(() => desk.questions.restorePeriods(number, reason, newest), 'Gone back. Maps begin with those periods again.');
  }

  /** What somebody else changed meanwhile is shown beside what was typed, and a second try is on that. */
  async function change(ask: () => Promise<Scheme>, done: string): Promise<void> {
    told.textContent = '';
    try {
      const scheme = await ask();
      follow(scheme);
      periods.replaceChildren(periodForm(scheme.periods, save));
      told.textContent = done;
    } catch (error) {
      if (error instanceof Problem && error.status === 409) follow(await desk.questions.scheme());
      throw error;
    }
  }
}

function draw(groups: readonly Group[]): Node[] {
  if (groups.length === 0) return [el('p', { class: 'empty' }, 'There is no taxon list yet. rangemap taxa loads one.')];
  return [el('table', { class: 'groups' },
    el('thead', {}, el('tr', {}, el('th', { scope: 'col', class: 'words' }, 'Group'), el('th', { scope: 'col' }, 'Taxa'), el('th', { scope: 'col' }, 'With records'))),
    el('tbody', {}, ...groups.map(({ name, taxa, withRecords }) => el('tr', {}, el('th', { scope: 'row' }, name ?? 'without a group'), el('td', {}, count(taxa)), el('td', {}, count(withRecords))))))];
}
