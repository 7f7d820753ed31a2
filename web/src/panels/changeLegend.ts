// The legend of gained, lost and kept squares; the squares that nobody visited twice stand apart, for nothing is known of them.
import { changeAddress, FATES, ROOT, type ChangeQuestion, type Fate, type Fates } from '../api.ts';
import { el } from '../elements.ts';
import { periodInWords } from '../periods.ts';
import type { Colours } from '../styles/colours.ts';
import { fateColours } from '../styles/fates.ts';
import { count, counted } from '../words.ts';

export const FATE_WORDS: Record<Fate, string> = {
  gained: 'Gained: found now, looked for before and not found',
  lost: 'Lost: found before, looked for now and not found',
  kept: 'Kept: found both times',
  'not-surveyed-before': 'Found now; nobody looked before',
  'not-surveyed-after': 'Found before; nobody has looked since',
};

export const NEEDS_TWO_PERIODS = 'This map needs two periods: choose or write at least two, the earlier first.';

export function changeLegend({ features, from, to }: Fates, asked: ChangeQuestion, colours: Colours): Node[] {
  if (features.length === 0) return [el('p', { class: 'empty' }, 'The species was found in neither period.')];
  const colour = fateColours(colours);
  const row = (fate: Fate) => {
    const swatch = el('span', { class: `swatch fate ${fate}` });
    swatch.style.setProperty('--swatch', colour[fate]);
    return el('li', {}, swatch, el('span', {}, FATE_WORDS[fate]), el('span', { class: 'aside' }, count(features.filter((f) => f.properties.change === fate).length)));
  };
  return [
    el('h3', {}, el('span', {}, `From ${periodInWords(from)} to ${periodInWords(to)}`), el('span', { class: 'aside' }, counted(features.length, 'square'))),
    el('ul', { class: 'key' }, ...FATES.map(row)),
    el('p', { class: 'note' }, 'A gain may be the first visit that was thorough enough, and a loss one that was not. The leaf “Change” allows for effort.'),
    el('p', { class: 'take' }, 'Take this: ',
      el('a', { href: ROOT + changeAddress(asked, 'csv'), download: true }, 'measures as CSV'), ' ', el('a', { href: ROOT + changeAddress(asked, 'geojson'), download: true }, 'squares as GeoJSON')),
  ];
}
