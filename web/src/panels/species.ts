// The head of the page: the species chosen, with what its recorders should know; before that, an invitation.
import { api, type TaxaFound, type Taxon, type TaxonLine } from '../api.ts';
import { el } from '../elements.ts';
import { question } from '../loading.ts';
import { differs, type Store } from '../store.ts';
import { counted, scientific, shownName, years } from '../words.ts';
import { copyLink } from './copyLink.ts';
import { readRelated, relations, type Related } from './relations.ts';
import { shown } from './waiting.ts';

const OFFERED = 8;

export function mountSpecies(host: HTMLElement, store: Store): void {
  const chosen = question<Related>((answer) => host.replaceChildren(...shown(answer, (related) => drawTaxon(related, store))));
  const offered = question<TaxaFound>((answer) => host.replaceChildren(...shown(answer, ({ taxa }) => invitation(taxa, store))));

  store.follow((now, before) => {
    if (!differs(now, before, 'taxon')) return;
    const id = now.taxon;
    chosen.clear();
    offered.clear();
    if (id === null) offered.ask((signal) => api.taxa('', OFFERED, signal));
    else chosen.ask((signal) => readRelated(id, signal));
  });
}

function drawTaxon(related: Related, store: Store): Node[] {
  const { taxon } = related;
  return [
    el('h2', {}, taxon.vernacularName || scientific(taxon.scientificName)),
    el('p', { class: 'subtitle' }, !taxon.vernacularName ? null : scientific(taxon.scientificName),
      el('span', {}, `${counted(taxon.records, 'record')}, ${years(taxon.firstYear, taxon.lastYear)}`)),
    ...remarks(taxon),
    ...relations(related, store),
    el('p', { class: 'onward' }, el('button', { type: 'button', class: 'link', click: () => store.change({ panel: 'species' }) }, 'Season, plants and how to tell it')),
    copyLink(),
  ];
}

function remarks(taxon: Taxon): Node[] {
  const lines: [string, string | null | undefined][] = [
    ['Told by', taxon.notes?.marks],
    ['Weeks', taxon.notes?.season],
    ['Places', taxon.sensitive ? 'Sensitive species: places are shown coarser than they are known.' : null],
  ];
  const known = lines.filter((line): line is [string, string] => Boolean(line[1]));
  if (known.length === 0) return [];
  return [el('dl', { class: 'remarks' }, ...known.flatMap(([term, text]) => [el('dt', {}, term), el('dd', {}, text)]))];
}

function invitation(taxa: TaxonLine[], store: Store): Node[] {
  if (taxa.length === 0) return [el('h2', {}, 'No species yet'), el('p', {}, 'Load a list of species, then import records; the maps follow at once.')];
  return [
    el('h2', {}, 'Choose a species'),
    el('p', { class: 'opening' }, 'Type part of a name above, or begin with one of these. Or click the land to see what lives in a square.'),
    el('ul', { class: 'offered' }, ...taxa.map((taxon) => el('li', {},
      el('button', { type: 'button', class: 'link', click: () => store.change({ taxon: taxon.id }) }, shownName(taxon)),
      el('span', { class: 'aside' }, `${counted(taxon.records, 'record')}, ${years(taxon.firstYear, taxon.lastYear)}`)))),
  ];
}
