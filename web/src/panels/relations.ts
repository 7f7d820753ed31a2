// What a species has to do with an aggregate: a way from each to the other, and on whose map records of the aggregate are.
import { api, type Taxon } from '../api.ts';
import { el } from '../elements.ts';
import type { Store } from '../store.ts';
import { counted, scientific, shownName } from '../words.ts';

/** A taxon with its aggregate and its members. */
export interface Related { taxon: Taxon; aggregate: Taxon | null; members: Taxon[] }

export async function readRelated(id: string, signal: AbortSignal): Promise<Related> {
  const taxon = await api.taxon(id, signal);
  const [aggregate, ...members] = await Promise.all([taxon.aggregate === null ? null : api.taxon(taxon.aggregate, signal), ...taxon.members.map((member) => api.taxon(member, signal))]);
  return { taxon, aggregate: aggregate ?? null, members: members.filter((member) => member !== null) };
}

export function relations({ aggregate, members }: Related, store: Store): Node[] {
  const way = (taxon: Taxon) => [
    el('button', { type: 'button', class: 'link', click: () => store.change({ taxon: taxon.id, year: null }) }, taxon.vernacularName ? shownName(taxon) : scientific(taxon.scientificName)),
    el('span', { class: 'aside' }, ` ${counted(taxon.records, 'record')}`),
  ];
  return [
    ...(aggregate === null ? [] : [el('p', { class: 'relations' }, 'Belongs to the aggregate ', ...way(aggregate), '. Records that name only the aggregate are on its map and not on this one.')]),
    ...(members.length === 0 ? [] : [
      el('p', { class: 'relations' }, 'An aggregate of ', ...members.flatMap((member, i) => [i === 0 ? '' : i === members.length - 1 ? ' and ' : ', ', ...way(member)]),
        '. This map has the records of its members and those that name only the aggregate; the latter are on no member’s map.'),
    ]),
  ];
}
