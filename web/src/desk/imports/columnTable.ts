// A line a column of the file: its header, a few of its texts, and what it is read as.
import { el } from '../../elements.ts';
import type { Preview, PreviewColumn } from '../answers.ts';
import { readAs, type Saying } from './mapping.ts';

const NOT_USED = 'kept, not used';

export function drawColumns(preview: Preview, saying: () => Saying, change: (next: Saying) => void): HTMLElement {
  const head = el('tr', {}, ...['Column', 'Its first texts', 'Read as'].map((name) => el('th', { scope: 'col', class: 'words' }, name)));
  const lines = preview.columns.map((column, i) => line(column, i));
  return el('table', { class: 'mapping stacked' }, el('thead', {}, head), el('tbody', {}, ...lines));

  function line({ name, term, samples, use }: PreviewColumn, i: number): HTMLElement {
    const about = el('span', { class: 'note', id: `about-${i}` }, preview.terms.find((t) => t.name === term)?.about ?? (use === NOT_USED ? '' : use));
    const select = el('select', { id: `column-${i}`, 'aria-label': `${name} is read as`, 'aria-describedby': `about-${i}`, change: () => change(readAs(saying(), preview, name, select.value || null)) },
      el('option', { value: '' }, NOT_USED),
      ...preview.terms.map((t) => el('option', { value: t.name, title: t.about, selected: t.name === term }, termWords(t.name))));
    return el('tr', { class: term === null ? 'unused' : null }, el('th', { scope: 'row' }, name),
      el('td', { class: 'words samples', 'data-name': 'Its first texts' }, samples.join(' · ') || '(empty)'),
      el('td', { class: 'words', 'data-name': 'Read as' }, select, about));
  }
}

/** scientificName as "scientific name", while lengthMm keeps its unit. */
export function termWords(term: string): string {
  const known: Record<string, string> = {
    taxonID: 'taxon identifier', occurrenceID: 'record identifier', lengthMm: 'length in mm', eventDate: 'date', recordedBy: 'recorder', identifiedBy: 'determiner',
    coordinateUncertaintyInMeters: 'uncertainty in metres', individualCount: 'number seen', occurrenceStatus: 'present or absent', identificationVerificationStatus: 'review status',
    locality: 'site', occurrenceRemarks: 'remarks', vernacularName: 'everyday name', decimalLatitude: 'latitude', decimalLongitude: 'longitude', geodeticDatum: 'datum',
    host: 'plant visited or host', startDate: 'first day', endDate: 'last day', identificationQualifier: 'word of doubt',
  };
  return known[term] ?? term.replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}
