// The squares themselves, from the server's vector tiles.
import MVT from 'ol/format/MVT.js';
import VectorTileLayer from 'ol/layer/VectorTile.js';
import VectorTileSource from 'ol/source/VectorTile.js';
import { tileAddress } from '../api.ts';
import { plane, tileGrid } from '../map.ts';
import { ALL_TIME } from '../periods.ts';
import type { ViewState } from '../state.ts';
import { differs, type Store } from '../store.ts';
import { squareStyle, type Painting } from '../styles/squares.ts';

export interface PresenceLayer {
  layer: VectorTileLayer;
  paint(painting: Painting): void;
}

export function makePresence(store: Store): PresenceLayer {
  const layer = new VectorTileLayer({ renderMode: 'vector' });
  store.follow((now, before) => {
    if (differs(now, before, 'taxon', 'size', 'periods', 'quality', 'mode')) layer.setSource(tiles(now));
  });
  return { layer, paint: (painting) => layer.setStyle(squareStyle(painting)) };
}

function tiles(state: ViewState): VectorTileSource | null {
  if (state.taxon === null || state.mode === 'change' || state.mode === 'effort') return null;
  // Arrivals ask for one period without ends, so that no first year falls between two periods.
  const periods = state.mode === 'arrival' || state.mode === 'forecast' ? [ALL_TIME] : state.periods;
  return new VectorTileSource({
    format: new MVT({ layers: ['presence'] }),
    projection: plane,
    tileGrid,
    url: tileAddress({ taxon: state.taxon, size: state.size, periods, quality: state.quality }),
  });
}
