// The species that the map shows, found by typing.
import type { Store } from '../store.ts';
import { taxonBox } from './taxonBox.ts';

export function mountSearch(host: HTMLElement, store: Store): void {
  host.append(taxonBox({ id: 'species', label: 'Find a species', choose: ({ id }) => store.change({ taxon: id, year: null }) }).box);
}
