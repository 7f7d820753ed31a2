// Choosing a taxon by typing.
import { api, type TaxonLine } from '../api.ts';
import { el } from '../elements.ts';
import { counted, scientific } from '../words.ts';
import { comboBox } from './comboBox.ts';

/** More lines than this are not read but scrolled past: typing on is faster, however long the list of species. */
const LISTED = 12;

export interface TaxonBoxOptions {
  /** Of the input; the list and its lines take theirs from it. */
  id: string;
  label: string;
  choose(taxon: TaxonLine): void;
}

export function taxonBox({ id, label, choose }: TaxonBoxOptions): { box: HTMLElement; input: HTMLInputElement } {
  return comboBox<TaxonLine>({
    id, label, choose, placeholder: 'Type part of a name', listLabel: 'Species found', nothing: 'No species of that name. Try fewer letters.',
    find: async (text, signal) => api.taxa(text, LISTED, signal).then(({ taxa, found }) => ({ items: taxa, total: found })),
    line: (taxon) => [
      el('span', { class: 'name' }, taxon.vernacularName || scientific(taxon.scientificName)),
      ...(taxon.vernacularName ? [scientific(taxon.scientificName)] : []),
      el('span', { class: 'aside' }, counted(taxon.records, 'record')),
    ],
  });
}
