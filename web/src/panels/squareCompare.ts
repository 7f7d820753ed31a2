// A square in two periods: species gained, lost and still there; what nobody could have found is told apart.
import { api, FATES, type Fate, type SquareChange } from '../api.ts';
import { el } from '../elements.ts';
import { question } from '../loading.ts';
import { periodInWords, readPeriodText } from '../periods.ts';
import { differs, type Store } from '../store.ts';
import { count, counted, scientific } from '../words.ts';
import { FATE_WORDS } from './changeLegend.ts';
import { shown } from './waiting.ts';

export function mountSquareCompare(host: HTMLElement, store: Store): void {
  const fault = el('p', { class: 'fault', id: 'compare-fault', role: 'alert' });
  const box = (id: string) => el('input', { type: 'text', id, spellcheck: 'false', 'aria-describedby': 'compare-fault', placeholder: 'such as 2000/2009' });
  const [from, to] = [box('compare-from'), box('compare-to')];
  const form = el('form', { class: 'compare-periods', submit: (event) => { event.preventDefault(); compare(); } },
    el('label', { for: 'compare-from' }, 'Earlier'), from, el('label', { for: 'compare-to' }, 'Later'), to, el('button', { type: 'submit' }, 'Compare'), fault);
  const body = el('div', { 'aria-live': 'polite' });
  const fold = el('details', { class: 'compare' }, el('summary', {}, 'Compare two periods'), form, body);
  host.append(fold);
  const asked = question<SquareChange>((answer) => body.replaceChildren(...shown(answer, (change) => drawChange(change, store))));

  function compare(): void {
    const read = readTwo(from.value, to.value);
    fault.textContent = 'fault' in read ? read.fault : '';
    if ('periods' in read) store.change({ compare: read.periods });
  }

  store.follow((now, before) => {
    if (!differs(now, before, 'square', 'compare', 'quality', 'periods')) return;
    const { square, quality } = now;
    const [earlier, later] = now.compare;
    host.hidden = square === null;
    // Offered are the periods of the map, as far as there are two.
    if (differs(now, before, 'compare', 'periods')) {
      from.value = earlier ?? now.periods[0] ?? '';
      to.value = later ?? (now.periods.length < 2 ? '' : now.periods.at(-1)!);
    }
    if (square === null || earlier === undefined || later === undefined) return asked.clear();
    fold.open = true;
    asked.ask((signal) => api.squareChange(square, earlier, later, quality, signal));
  });
}

/** Reads both boxes; whether the periods fit together is the server's to say. */
function readTwo(from: string, to: string): { periods: [string, string] } | { fault: string } {
  const periods: string[] = [];
  for (const text of [from, to]) {
    const read = readPeriodText(text);
    if ('fault' in read) return read;
    if (read.periods.length > 1) return { fault: 'Write one period in each box, such as 2000/2009.' };
    periods.push(read.periods[0]!);
  }
  return { periods: [periods[0]!, periods[1]!] };
}

const TITLES: Record<Fate, string> = { gained: 'Gained', lost: 'Lost', kept: 'Still there', 'not-surveyed-before': 'Not visited before', 'not-surveyed-after': 'Not visited since' };

function drawChange(change: SquareChange, store: Store): Node[] {
  const groups = FATES.map((fate) => ({ fate, taxa: change.taxa.filter((t) => t.change === fate) })).filter(({ taxa }) => taxa.length > 0);
  return [
    el('p', {}, `${change.square}, ${periodInWords(change.from)} against ${periodInWords(change.to)}.`),
    ...(change.taxa.length === 0 ? [el('p', { class: 'empty' }, 'No species was found here in either period.')] : groups.map(({ fate, taxa }) => fateList(fate, taxa, store))),
    el('h5', {}, 'Visits'),
    ...change.visits.map((v) => el('p', { class: 'aside' }, `${capital(v.group ?? 'species without a group')}: ${visits(v.before)} in ${periodInWords(change.from)}, ${visits(v.after)} in ${periodInWords(change.to)}.`)),
    el('p', { class: 'note' }, 'A species counts as gained or lost only where its group was looked for in both periods. With few visits it may have been missed.'),
  ];
}

function fateList(fate: Fate, taxa: SquareChange['taxa'], store: Store): HTMLElement {
  const one = (t: SquareChange['taxa'][number]) => el('li', {},
    el('button', { type: 'button', class: 'link', click: () => store.change({ taxon: t.id, year: null }) }, t.vernacularName || scientific(t.scientificName)),
    el('span', { class: 'aside' }, fate === 'kept' ? `${count(t.before)} then, ${counted(t.after, 'record')} now` : counted(t.before + t.after, 'record')));
  return el('section', { class: `fate-list ${fate}` }, el('h5', {}, `${TITLES[fate]} `, el('span', { class: 'aside' }, count(taxa.length))),
    el('p', { class: 'note' }, FATE_WORDS[fate].replace(/^\w+: /, '').replace(/^./, (letter) => letter.toUpperCase())), el('ul', {}, ...taxa.map(one)));
}

const visits = (n: number) => n === 0 ? 'not visited' : counted(n, 'visit');

const capital = (text: string) => text[0]!.toUpperCase() + text.slice(1);
