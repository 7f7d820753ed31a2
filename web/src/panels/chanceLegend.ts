// The legend of a forecast: how many squares have which chance.
import { forecastAddress, ROOT, type Foretold } from '../api.ts';
import { el } from '../elements.ts';
import type { Size } from '../state.ts';
import { CHANCES, chanceClass, chanceColours } from '../styles/chances.ts';
import type { Colours } from '../styles/colours.ts';
import { count, counted } from '../words.ts';

export function chanceLegend({ refused, features, year, now }: Foretold, taxon: string, size: Size, colours: Colours, openRecord: () => void): Node[] {
  if (refused !== undefined) return [el('p', { class: 'empty' }, `No forecast can be made. ${refused}`)];
  if (features.length === 0) return [el('p', { class: 'empty' }, 'No square is named: the species is sensitive, or it is found wherever it may be.')];
  const squares = features.map((f) => f.properties);
  const shades = chanceColours(colours);
  const row = (swatchClass: string, colour: string, words: string, number: number | null) => {
    const swatch = el('span', { class: `swatch ${swatchClass}` });
    swatch.style.setProperty('--swatch', colour);
    return el('li', {}, swatch, el('span', {}, words), number === null ? null : el('span', { class: 'aside' }, count(number)));
  };
  const words = (i: number) => `${percent(CHANCES[i]!)} to ${i + 1 < CHANCES.length ? percent(CHANCES[i + 1]!) : '100'} %`;
  return [
    el('h3', {}, el('span', {}, `Chance to be there by the end of ${year}`), el('span', { class: 'aside' }, counted(squares.length, 'square'))),
    el('ul', { class: 'key' },
      ...CHANCES.map((_, i) => row('', shades[i]!, words(i), squares.filter((s) => chanceClass(s.byYear) === i).length)).reverse(),
      row('named', colours.ink, 'Edged: named to be searched', squares.filter((s) => s.search !== null).length),
      row('known', colours.ink, 'Found already', null),
      row('front', colours.ink, `Front of ${year}, and where it may run`, null)),
    el('p', { class: 'note' }, `From every visit up to ${now}, with the species and without it. A square that nobody visited is unknown, not empty.`),
    el('p', {}, el('button', { type: 'button', class: 'link', click: openRecord }, 'How good were such forecasts?')),
    el('p', { class: 'take' }, 'Take this: ', el('a', { href: ROOT + forecastAddress(taxon, size, 'geojson'), download: true }, 'chances as GeoJSON')),
  ];
}

const percent = (chance: number) => String(Math.round(100 * chance));
