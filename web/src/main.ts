// Wires the page: one store, a map of layers, a column of panels.
import 'ol/ol.css';
import './look/colours.css';
import './look/base.css';
import './look/page.css';
import './look/column.css';
import './look/charts.css';
import { chooseByClick } from './choosing.ts';
import { byId } from './elements.ts';
import { makeArrows } from './layers/arrows.ts';
import { makeBorders } from './layers/borders.ts';
import { makeChances } from './layers/chances.ts';
import { makeChange } from './layers/change.ts';
import { makeChosen } from './layers/chosen.ts';
import { makeEffort } from './layers/effort.ts';
import { makeFronts } from './layers/fronts.ts';
import { makeJumps } from './layers/jumps.ts';
import { makeLand } from './layers/land.ts';
import { makeLattice } from './layers/lattice.ts';
import { makePlaces } from './layers/places.ts';
import { makePresence } from './layers/presence.ts';
import { makeMap } from './map.ts';
import { mountBanner } from './panels/banner.ts';
import { mountChoices } from './panels/choices.ts';
import { mountDetails } from './panels/details.ts';
import { mountLegend } from './panels/legend.ts';
import { mountOverSquares } from './panels/overSquares.ts';
import { mountSearch } from './panels/search.ts';
import { mountSpecies } from './panels/species.ts';
import { mountTakeAway } from './panels/takeAway.ts';
import { mountYears } from './panels/years.ts';
import { readScheme } from './scheme.ts';
import { makeStore } from './store.ts';

const store = makeStore(window.location, window.history, await readScheme());

const land = makeLand();
const presence = makePresence(store);
const change = makeChange();
const effort = makeEffort();
const chances = makeChances();
const arrows = makeArrows();
const jumps = makeJumps(store);
const layers = [land.layer, makeLattice(), presence.layer, change.layer, effort.layer, chances.layer, makeBorders(), arrows.layer, makeFronts(store), jumps.layer, makeChosen(store), makePlaces()];
const map = makeMap(byId('map'), byId('notices'), layers, store);
chooseByClick(map, [presence.layer, change.layer, effort.layer, chances.layer], land, store);

mountBanner(byId('banner'), byId('whose'));
mountSearch(byId('search'), store);
mountSpecies(byId('species'), store);
mountChoices(byId('choices'), store);
const years = mountYears(byId('years'), store);
mountLegend(byId('legend'), store, { paint: presence.paint, tellYears: years.tell, showFates: change.show, showEffort: effort.show, showChances: chances.show });
mountOverSquares(byId('over'), store, { showArrows: arrows.show, showJumps: jumps.show });
mountTakeAway(byId('take'), store);
mountDetails(byId('details'), store);

store.begin();
