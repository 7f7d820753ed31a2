// A click on the map chooses the square under it: a painted one if there is one, else the empty square of the land there.
import type OpenLayersMap from 'ol/Map.js';
import type Layer from 'ol/layer/Layer.js';
import type { Land } from './layers/land.ts';
import { squareName } from './squares/names.ts';
import { onGrid, type Point } from './squares/planes.ts';
import type { Store } from './store.ts';

export function chooseByClick(map: OpenLayersMap, squares: readonly Layer[], land: Land, store: Store): void {
  const painted = (pixel: number[]) =>
    map.forEachFeatureAtPixel(pixel, (feature) => feature.get('square') as string, { layerFilter: (layer) => squares.includes(layer) });

  map.on('singleclick', ({ pixel, coordinate }) => {
    const square = painted(pixel) ?? emptySquare(coordinate as Point);
    store.change(square === null ? { square: null } : { square, panel: 'square' });
  });
  map.on('pointermove', ({ pixel, dragging }) => {
    if (!dragging) map.getTargetElement().style.cursor = painted(pixel) === undefined ? '' : 'pointer';
  });

  function emptySquare(point: Point): string | null {
    const grid = land.gridAt(point);
    return grid === null ? null : squareName(grid, onGrid(grid, point), store.state.size);
  }
}
