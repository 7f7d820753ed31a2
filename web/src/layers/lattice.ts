// Faint 100 km squares with their letters, each island group on its own grid, so that a recorder can find a reference by eye.
import Feature from 'ol/Feature.js';
import Polygon from 'ol/geom/Polygon.js';
import VectorLayer from 'ol/layer/Vector.js';
import VectorSource from 'ol/source/Vector.js';
import Fill from 'ol/style/Fill.js';
import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import Text from 'ol/style/Text.js';
import { readSquare } from '../squares/names.ts';
import { outline } from '../squares/outline.ts';
import { followColours } from '../styles/colours.ts';

/** The 100 km squares with land. */
const LETTERS = ('HP HT HU HW HX HY HZ NA NB NC ND NF NG NH NJ NK NL NM NN NO NR NS NT NU NW NX NY NZ OV SC SD SE SH SJ SK SM SN SO SP SR SS ST SU SV SW SX SY SZ'
  + ' TA TF TG TL TM TQ TR TV B C D F G H J L M N O Q R S T V W X WA WV').split(' ');

export function makeLattice(): VectorLayer {
  const features = LETTERS.map((letters) => new Feature({ letters, geometry: new Polygon([outline(readSquare(letters)!)]) }));
  const layer = new VectorLayer({ source: new VectorSource({ features }) });
  followColours((c) => {
    const text = new Text({ font: '11px "Iowan Old Style", Palatino, "DejaVu Serif", serif', fill: new Fill({ color: c.lattice }) });
    const style = new Style({ stroke: new Stroke({ color: c.lattice, width: 0.6 }), text });
    layer.setStyle((feature, resolution) => {
      text.setText(resolution < 2400 ? feature.get('letters') as string : '');
      return style;
    });
  });
  return layer;
}
