// How to tell a species from those that it is confused with: its marks beside theirs, by sex, caste or stage.
import type { Mark, Marks } from '../desk/answers.ts';
import { el } from '../elements.ts';
import type { Store } from '../store.ts';
import { table } from '../table.ts';
import { scientific } from '../words.ts';

const ALL = 'all';

export function howToTell(marks: Marks | null, name: Node, store: Store): Node[] {
  if (marks === null) return [el('h4', {}, 'How to tell it'), el('p', { class: 'note' }, 'The list of species says nothing of its marks.')];
  const { confusedWith, evidence, aggregate } = marks;
  const other = (one: Marks['confusedWith'][number]) =>
    el('button', { type: 'button', class: 'link', click: () => store.change({ taxon: one.taxon, year: null }) }, one.vernacularName || scientific(one.scientificName));
  const columns = [marks.marks, ...confusedWith.map((one) => one.marks)];
  const rows = stagesOf(columns).map((stage) => [stage, ...columns.map((said) => wordsFor(said, stage))]);
  return [
    el('h4', {}, 'How to tell it'),
    ...(confusedWith.length === 0 ? [] : [el('p', {}, 'Easily taken for ', ...confusedWith.flatMap((one, i) => i === 0 ? [other(one)] : [', ', other(one)]), '.')]),
    ...(rows.length === 0 ? [] : [el('div', { class: 'tell' }, table(['Sex or caste', name, ...confusedWith.map((one) => one.vernacularName || scientific(one.scientificName))], rows))]),
    ...(evidence.length === 0 ? [] : [el('p', {}, el('strong', {}, 'What suffices: '), evidence.map(({ stage, words }) => stage === null ? words : `${stage}: ${words}`).join('; '))]),
    ...(aggregate === null ? [] : [el('p', { class: 'note' }, 'Where it cannot be told apart, record the aggregate: ', scientific(aggregate))]),
  ];
}

/** The stages that any of the species has marks for, in the order of the list. */
const stagesOf = (columns: Mark[][]) => [...new Set(columns.flat().map(({ stage }) => stage ?? ALL))];

/** What is said for one stage; a mark without a stage holds for each. */
function wordsFor(said: Mark[], stage: string): string {
  const fitting = said.filter((mark) => (mark.stage ?? ALL) === stage || mark.stage === null);
  return fitting.map(({ words }) => words).join('; ') || 'the list says nothing';
}
