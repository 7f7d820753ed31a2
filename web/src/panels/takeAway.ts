// What can be taken away of the species: the map to print, the data, news of new squares, how to cite, and the map for other programs.
import { api, exportAddress, newSquaresAddress, printAddress, ROOT, styleAddress, tableAddress, type About, type Editions, type ExportSize } from '../api.ts';
import { changeQuestion } from '../changePeriods.ts';
import { el } from '../elements.ts';
import { START as EXPORT_START, toHash as writeQuery } from '../export/query.ts';
import { question } from '../loading.ts';
import type { ViewState } from '../state.ts';
import { differs, type Store } from '../store.ts';
import { counted, fileSize } from '../words.ts';
import { shown } from './waiting.ts';

const FORMATS: { format: string; name: string; about: string }[] = [
  { format: 'csv', name: 'CSV', about: 'a table for any spreadsheet' },
  { format: 'geojson', name: 'GeoJSON', about: 'outlines for the web' },
  { format: 'gpkg', name: 'GeoPackage', about: 'for a desktop map program' },
  { format: 'parquet', name: 'Parquet', about: 'for large analyses' },
];

interface Known { sizes: ExportSize[]; about: About; editions: Editions }

export function mountTakeAway(host: HTMLElement, store: Store): void {
  const body = el('div', { class: 'taken' });
  const fold: HTMLDetailsElement = el('details', { toggle: () => ask() }, el('summary', {}, el('h3', {}, 'Take away')), body);
  host.append(fold);
  let held = '';
  const asked = question<Known>((answer) => body.replaceChildren(...shown(answer, (known) => draw(store.state, known))));

  // Sizes are counted only when someone looks at them.
  function ask(): void {
    const { taxon, size, quality, periods, mode } = store.state;
    if (!fold.open || taxon === null || held === (held = [taxon, size, quality, periods, mode].join())) return;
    asked.ask(async (signal) => {
      const [about, editions, ...sizes] = await Promise.all([api.about(signal), api.editions(signal), ...FORMATS.map(({ format }) => api.exportSize({ taxon, size, quality }, format, signal))]);
      return { about, editions, sizes };
    });
  }

  store.follow((now, before) => {
    host.hidden = now.taxon === null;
    if (differs(now, before, 'taxon', 'size', 'quality', 'periods', 'mode')) ask();
  });
}

function draw(state: ViewState, { sizes, about, editions }: Known): Node[] {
  const { taxon } = state;
  if (taxon === null) return [];
  const q = { ...state, taxon };
  return [
    ...print(state),
    el('h4', {}, 'Download'),
    el('p', {}, 'Every square and year with records, and the visits there:'),
    el('ul', { class: 'formats' }, ...FORMATS.map(({ format, name, about: use }, i) => el('li', {}, link(exportAddress(q, format), name), `, ${use}`, el('span', { class: 'aside' }, sizeInWords(sizes[i]!))))),
    el('p', {}, el('a', { href: exportPage(q) }, 'Choose rows'), ': years, a region, other tables and formats, with the row count beforehand and the same question as a command or a program.'),
    el('p', {}, 'The squares of the map by period: ', el('a', { href: tableAddress(q, 'csv'), download: true }, 'CSV'), ', ', el('a', { href: tableAddress(q, 'geojson'), download: true }, 'GeoJSON'), '.'),
    el('h4', {}, 'Follow'),
    el('p', {}, el('a', { href: ROOT + newSquaresAddress(q) }, 'Feed of new squares'), ' (Atom): a feed reader tells you of each square in which it is found for the first time.'),
    ...cite(about, editions),
    el('h4', {}, 'For your own map'),
    el('p', {}, el('a', { href: ROOT + styleAddress(q) }, 'style.json'), ': colours and tiles of this map for programs that read MapLibre styles.'),
  ];
}

function print(state: ViewState): Node[] {
  const address = (format: string) => printAddress(state, changeQuestion(state), format);
  const kind = state.mode === 'forecast' || state.mode === 'effort' ? 'Chances and effort have no printed form; this is the map of its squares by period.' : '';
  if (address('svg') === null) return [el('h4', {}, 'Print'), el('p', { class: 'note' }, 'A map of change needs two periods.')];
  return [
    el('h4', {}, 'Print'),
    el('p', {}, 'The map with its legend and sources on a page: ', link(address('svg')!, 'SVG'), ', ', link(address('png')!, 'PNG'), ', ', link(address('pdf')!, 'PDF'), '.'),
    el('p', { class: 'note', hidden: kind === '' }, kind),
  ];
}

/** A frozen edition can be asked for again; the live state is cited as what it is. */
function cite(about: About, { editions }: Editions): Node[] {
  const newest = editions[0];
  return [
    el('h4', {}, 'Cite'),
    ...(newest === undefined ? [] : [el('p', { class: 'citation' }, newest.citation), el('p', { class: 'note' }, 'The newest frozen edition, which gives the same data in years to come. What is shown now may be newer:')]),
    el('p', { class: 'citation' }, about.citation),
  ];
}

const link = (path: string, name: string) => el('a', { href: ROOT + path, download: true }, name);

/** The page of exports, at what the map shows. */
const exportPage = ({ taxon, size, quality }: ViewState): string => `/export.html#${writeQuery({ ...EXPORT_START, taxon, size, quality })}`;

/** "1,204 rows, about 87 kB". */
export const sizeInWords = ({ rows, atMost, bytes }: ExportSize): string => rows === 0 ? 'no rows' : `${atMost ? 'at most ' : ''}${counted(rows, 'row')}, about ${fileSize(bytes)}`;
