// Narrowing the queue: by doubt, by taxon, by import. The address holds the choice.
import { el } from '../../elements.ts';
import { taxonBox } from '../../panels/taxonBox.ts';
import { count } from '../../words.ts';
import type { QueueSummary } from '../answers.ts';
import type { Desk } from '../desk.ts';
import { EVERYTHING, type Filter } from '../route.ts';

export function drawFilters(desk: Desk, filter: Filter, summary: QueueSummary | null): Node[] {
  const go = (part: Partial<Filter>) => desk.go({ place: 'review', filter: { ...filter, ...part } });
  const known = summary?.byDoubt ?? [];
  // A doubt that nothing has any more still shows as chosen.
  const options = filter.doubt === null || known.some(({ code }) => code === filter.doubt) ? known : [{ code: filter.doubt, title: desk.doubts.of(filter.doubt), records: 0 }, ...known];
  const doubt = el('select', { id: 'doubt', change: () => go({ doubt: doubt.value || null }) },
    el('option', { value: '' }, 'any'),
    ...options.map(({ code, title, records }) => el('option', { value: code, selected: code === filter.doubt }, `${title} (${count(records)})`)));
  const { box } = taxonBox({ id: 'only', label: 'Only one taxon', choose: ({ id }) => go({ taxon: id }) });
  const chips = [filter.taxon === null ? null : chip(`taxon ${filter.taxon}`, () => go({ taxon: null })), filter.batch === null ? null : chip(`import ${filter.batch}`, () => go({ batch: null }))];
  const hasAny = Object.values(filter).some((value) => value !== null);
  return [
    el('div', { class: 'filter' }, el('label', { for: 'doubt' }, 'Doubt'), doubt), box,
    el('p', { class: 'chips' }, ...chips, hasAny ? el('button', { type: 'button', class: 'link', click: () => desk.go({ place: 'review', filter: EVERYTHING }) }, 'Show everything') : null),
  ];
}

const chip = (name: string, drop: () => void) => el('button', { type: 'button', class: 'chip', 'aria-label': `Not only ${name}`, click: drop }, `${name} ×`);
