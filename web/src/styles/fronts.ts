// Lines of the front: a pale edge keeps them readable over squares of any colour; a foretold line is broken.
import type { FeatureLike } from 'ol/Feature.js';
import Fill from 'ol/style/Fill.js';
import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import Text from 'ol/style/Text.js';
import type { Colours } from './colours.ts';

const BAND_SHARE = '38';

export function frontStyle({ ink, halo, mark }: Colours): (feature: FeatureLike) => Style[] {
  const band = new Style({ fill: new Fill({ color: `${mark}${BAND_SHARE}` }) });
  return (feature) => {
    if (feature.get('kind') === 'band') return feature.get('foretold') ? [band] : [];
    const line = feature.get('foretold') ? { lineDash: [7, 5] } : {};
    return [
      new Style({ stroke: new Stroke({ color: halo, width: 4.5 }), zIndex: 2 }),
      new Style({
        stroke: new Stroke({ color: ink, width: 1.8, ...line }), zIndex: 3,
        text: new Text({ text: String(feature.get('year')), placement: 'line', font: '600 12px system-ui, sans-serif', fill: new Fill({ color: ink }), stroke: new Stroke({ color: halo, width: 4 }), overflow: true }),
      }),
    ];
  };
}
