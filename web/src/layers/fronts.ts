// The front of a spreading species: past lines over the map of arrivals, the next one with its band over the forecast.
import Feature from 'ol/Feature.js';
import MultiLineString from 'ol/geom/MultiLineString.js';
import MultiPolygon from 'ol/geom/MultiPolygon.js';
import VectorLayer from 'ol/layer/Vector.js';
import VectorSource from 'ol/source/Vector.js';
import { api, type FrontFeature, type Fronts } from '../api.ts';
import { question } from '../loading.ts';
import { fromDegrees } from '../squares/planes.ts';
import type { ViewState } from '../state.ts';
import { differs, type Store } from '../store.ts';
import { followColours } from '../styles/colours.ts';
import { frontStyle } from '../styles/fronts.ts';

export function makeFronts(store: Store): VectorLayer {
  const source = new VectorSource();
  const layer = new VectorLayer({ source, declutter: true });
  followColours((colours) => layer.setStyle(frontStyle(colours)));
  let all: FrontFeature[] = [];
  // A species without a measurable front has none drawn; the leaf of the forecast says why.
  const asked = question<Fronts>((answer) => {
    all = answer.kind === 'ready' ? answer.value.features : [];
    draw(store.state);
  });

  function draw({ mode, year }: ViewState): void {
    source.clear();
    const shown = all.filter(({ properties: p }) => mode === 'forecast' ? p.foretold : isOfArrivals(p, year));
    source.addFeatures(shown.map((front) => new Feature({ ...front.properties, geometry: shape(front) })));
  }

  store.follow((now, before) => {
    const wanted = now.taxon !== null && (now.mode === 'arrival' || now.mode === 'forecast');
    if (differs(now, before, 'taxon', 'size', 'mode')) {
      const { taxon, size } = now;
      if (wanted && taxon !== null) asked.ask((signal) => api.fronts(taxon, size, undefined, signal));
      else asked.clear();
    } else if (differs(now, before, 'year')) draw(now);
  });
  return layer;
}

/** Over the map of arrivals lie the fronts up to the year shown; with all years, also where the next one may run. */
const isOfArrivals = ({ kind, foretold, year }: FrontFeature['properties'], shownYear: number | null) =>
  foretold ? shownYear === null : kind === 'front' && year <= (shownYear ?? Infinity);

function shape({ geometry }: FrontFeature): MultiLineString | MultiPolygon {
  return geometry.type === 'MultiLineString'
    ? new MultiLineString(geometry.coordinates.map((line) => line.map(fromDegrees)))
    : new MultiPolygon(geometry.coordinates.map((area) => area.map((ring) => ring.map(fromDegrees))));
}
