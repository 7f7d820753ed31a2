// Where the record lies, as a map and in words. Map and projections are fetched once, and only here.
import { api, Problem, type Presence } from '../../api.ts';
import { el } from '../../elements.ts';
import { ALL_TIME } from '../../periods.ts';
import { latLon } from '../../words.ts';
import type { RecordLine } from '../answers.ts';
import type { PlaceMap } from './placeMap.ts';

export interface Place {
  panel: HTMLElement;
  show(record: RecordLine): void;
  leave(): void;
}

export function makePlace(): Place {
  const target = el('div', { class: 'map', role: 'application', tabindex: 0, 'aria-label': 'Map around the record. Arrow keys move it, plus and minus change the scale; the words under it say the same.' });
  const words = el('p', { class: 'where' });
  const nearby = el('p', { class: 'nearby', role: 'status' });
  const panel = el('section', { class: 'place', 'aria-label': 'Place' }, target,
    el('p', { class: 'note' }, 'Ring: the record. Filled: 10 km squares with a usable record of its species.'), words, nearby);
  const known = new Map<string, Promise<Presence>>();
  let map: Promise<PlaceMap> | null = null;
  let shownId = '';

  async function show(record: RecordLine): Promise<void> {
    shownId = record.id;
    words.replaceChildren(el('strong', {}, record.square), ` ${record.size.replace(/^\d+/, '$& ')} square, ${latLon(record.latitude, record.longitude)}${record.site === null ? '' : `, “${record.site}”`}`);
    nearby.textContent = '';
    try {
      // The words do not wait for the map, nor fail with it.
      const [presence, { nearbyInWords }] = await Promise.all([presenceOf(record.taxon), import('./nearby.ts')]);
      if (shownId !== record.id) return;
      nearby.textContent = nearbyInWords(record.square, presence);
      const drawn = await drawMap();
      if (shownId !== record.id) return;
      drawn.know(presence.features.map(({ properties }) => properties.square));
      drawn.show(record.square);
    } catch (error) {
      if (error instanceof Problem) nearby.textContent = error.message;
      else target.replaceChildren(el('p', { class: 'empty' }, 'The map could not be drawn.'));
    }
  }

  function drawMap(): Promise<PlaceMap> {
    map ??= import('./placeMap.ts').then(({ makePlaceMap }) => makePlaceMap(target));
    map.catch(() => { map = null; });
    return map;
  }

  function presenceOf(taxon: string): Promise<Presence> {
    const asked = known.get(taxon) ?? api.presence({ taxon, size: '10km', periods: [ALL_TIME], quality: 'usable' });
    known.set(taxon, asked);
    asked.catch(() => known.delete(taxon));
    return asked;
  }

  return { panel, show: (record) => void show(record), leave: () => void map?.then((drawn) => drawn.leave()) };
}
