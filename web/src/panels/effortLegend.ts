// The legend of recording: how many squares were visited how often, and where nobody came back.
import { effortOfTaxonAddress, ROOT, type ChangeQuestion, type Effort } from '../api.ts';
import { el } from '../elements.ts';
import { periodInWords } from '../periods.ts';
import type { Colours } from '../styles/colours.ts';
import { visitClass, VISIT_CLASSES, visitColours } from '../styles/effort.ts';
import { count, counted } from '../words.ts';

export function effortLegend({ features, group, from, to }: Effort, asked: ChangeQuestion, colours: Colours): Node[] {
  const squares = features.map((f) => f.properties);
  const visited = squares.filter((square) => square.visitsAfter > 0);
  const notAgain = squares.filter((square) => square.visitsAfter === 0 && square.visitsBefore > 0);
  if (visited.length + notAgain.length === 0) return [el('p', { class: 'empty' }, 'No visit is known in either period.')];
  const inClass = VISIT_CLASSES.map((_, i) => visited.filter((square) => visitClass(square.visitsAfter) === i).length);
  const shades = visitColours(colours);
  const row = (swatchClass: string, colour: string, words: string, number: number) => {
    const swatch = el('span', { class: `swatch ${swatchClass}` });
    swatch.style.setProperty('--swatch', colour);
    return el('li', {}, swatch, el('span', {}, words), el('span', { class: 'aside' }, count(number)));
  };
  return [
    el('h3', {}, el('span', {}, `Visits ${group === null ? '' : `for ${group} `}in ${periodInWords(to)}`), el('span', { class: 'aside' }, counted(visited.length, 'square'))),
    el('ul', { class: 'key' },
      ...VISIT_CLASSES.map((least, i) => row('', shades[i]!, classInWords(least, VISIT_CLASSES[i + 1]), inClass[i]!)).reverse(),
      row('dotted', shades.at(-1)!, 'With a dot: well surveyed', visited.filter((square) => square.wellSurveyedAfter).length),
      row('not-surveyed-after', colours.label, `Visited in ${periodInWords(from)}, not since`, notAgain.length)),
    el('p', { class: 'note' }, 'A visit is a day in a square by one recorder or party who noted any of the group. Well surveyed: at least five visits whose lists hold three quarters of what lives there, as far as lists can tell. Unmarked squares were never visited.'),
    el('p', { class: 'take' }, 'Take this: ', el('a', { href: ROOT + effortOfTaxonAddress(asked), download: true }, 'squares as GeoJSON')),
  ];
}

const classInWords = (least: number, next: number | undefined) => next === undefined ? `${least} visits or more` : next === least + 1 ? counted(least, 'visit') : `${least} to ${next - 1} visits`;
