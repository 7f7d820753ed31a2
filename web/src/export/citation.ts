// What stands in the columns, how to cite the data, and under which licences they came: as the description of the very same export says.
import { api, ROOT } from '../api.ts';
import { el } from '../elements.ts';
import type { CsvwColumnShape, CsvwShape } from '../generated/api.ts';
import { question, type Loaded } from '../loading.ts';
import { shown } from '../panels/waiting.ts';
import { askedAs, toPath } from './address.ts';
import { toHash, type ExportQuery } from './query.ts';
import { canAsk, type ExportStore } from './store.ts';
import type { Tell } from './tell.ts';

/** Features of fronts have no table that describes them. */
const FRONT_COLUMNS: readonly Pick<CsvwColumnShape, 'name' | 'datatype' | 'dc:description'>[] = [
  { name: 'taxonID', datatype: 'string', 'dc:description': 'Identifier of the taxon in the taxon list.' },
  { name: 'scientificName', datatype: 'string', 'dc:description': 'Scientific name without authorship.' },
  { name: 'size', datatype: 'string', 'dc:description': 'Side of the squares that the model was fitted to.' },
  { name: 'year', datatype: 'integer', 'dc:description': 'Calendar year at whose end the front lay there.' },
  { name: 'foretold', datatype: 'boolean', 'dc:description': 'True for years after the last visits.' },
];

export function mountCitation(host: HTMLElement, store: ExportStore, tell: Tell): void {
  const body = el('div', {});
  host.append(el('section', { class: 'described', 'aria-label': 'Columns, citation and licences' }, body));
  const described = question<CsvwShape>((answer) => show(answer, (told) => draw(store.state, told)));
  const ofFronts = question<string>((answer) => show(answer, (citation) => [...columns(FRONT_COLUMNS), ...cite(store.state, citation)]));

  /** What goes wrong is told once, where the size stands. */
  function show<T>(answer: Loaded<T>, drawn: (value: T) => Node[]): void {
    body.replaceChildren(...(answer.kind === 'failed' ? [] : shown(answer, drawn)));
  }

  store.follow((now, before) => {
    if (now !== before && toHash({ ...now, format: 'csv' }) === toHash({ ...before, format: 'csv' })) return;
    described.clear();
    ofFronts.clear();
    if (!canAsk(now)) return;
    if (now.what === 'fronts') ofFronts.ask(async (signal) => (await api.about(signal)).citation);
    else described.ask((signal) => tell.json<CsvwShape>(askedAs(now, 'csvw'), now, signal));
  });
}

function draw(query: ExportQuery, told: CsvwShape): Node[] {
  return [
    ...columns(told.tableSchema.columns, told['dc:description']),
    el('p', {}, 'As a file: ', el('a', { href: toPath(askedAs(query, 'csvw')), download: '' }, 'the whole description'), ' (CSV on the Web).'),
    ...cite(query, told['dc:bibliographicCitation']),
    el('h2', {}, 'Licences'),
    told['dc:rights'].length === 0 ? el('p', {}, 'No data set states one.') : el('ul', { class: 'rights' }, ...told['dc:rights'].map((line) => el('li', {}, line))),
  ];
}

function columns(named: readonly Pick<CsvwColumnShape, 'name' | 'datatype' | 'dc:description'>[], about = ''): Node[] {
  return [
    el('h2', {}, 'Columns'),
    el('p', { hidden: about === '' }, about),
    el('table', { class: 'stacked columns' },
      el('thead', {}, el('tr', {}, ...['Column', 'Kind', 'Meaning'].map((name) => el('th', { scope: 'col', class: 'words' }, name)))),
      el('tbody', {}, ...named.map((column) => el('tr', {},
        el('th', { scope: 'row' }, el('code', {}, column.name)),
        el('td', { class: 'words', 'data-name': 'Kind' }, column.datatype), el('td', { class: 'words', 'data-name': 'Meaning' }, column['dc:description']))))),
  ];
}

/** A frozen edition can be asked for again, and has files for programs that keep literature; the live state is cited as what it is. */
function cite({ edition }: ExportQuery, citation: string): Node[] {
  const of = `${ROOT}/editions/${encodeURIComponent(edition ?? '')}`;
  return [
    el('h2', {}, 'Cite'),
    el('p', { class: 'citation' }, citation),
    edition === null
      ? el('p', { class: 'note' }, 'For a paper, choose a frozen edition as the state of the data, if there is one: it gives the same rows in years to come.')
      : el('p', {}, 'For programs: ', el('a', { href: `${of}/citation.cff` }, 'CITATION.cff'), ', ', el('a', { href: `${of}/datacite.json` }, 'DataCite JSON'), '.'),
  ];
}
