// What a person has chosen to see: one immutable value, and the address hash that carries it in a link.

export const SIZES = ['10km', '5km', '2km', '1km'] as const;
export const QUALITIES = ['usable', 'confirmed', 'all'] as const;
export const MODES = ['presence', 'arrival', 'forecast', 'change', 'effort'] as const;
export const SHADINGS = ['latest', 'first'] as const;
export const PANELS = ['species', 'square', 'spread', 'forecast', 'change'] as const;
export const OVERLAYS = ['none', 'arrows'] as const;

export type Size = (typeof SIZES)[number];
export type Quality = (typeof QUALITIES)[number];
export type Mode = (typeof MODES)[number];
export type Shading = (typeof SHADINGS)[number];
export type Panel = (typeof PANELS)[number];
export type Overlay = (typeof OVERLAYS)[number];

/** Side of a square of this size, metres. */
export const sideMetres = (size: Size): number => 1000 * parseInt(size, 10);

export interface ViewState {
  /** Identifier of the species, or null before one is chosen. */
  readonly taxon: string | null;
  readonly size: Size;
  /** ISO 8601 intervals, oldest first, open ends written as two dots. */
  readonly periods: readonly string[];
  readonly mode: Mode;
  /** In presence mode a square takes the colour of the latest or of the first period with records. */
  readonly shading: Shading;
  /** In arrival mode the last year shown; null for all years. */
  readonly year: number | null;
  readonly quality: Quality;
  readonly square: string | null;
  readonly panel: Panel;
  /** In arrival mode what lies over the squares: arrows of local speed and direction, or nothing. */
  readonly overlay: Overlay;
  /** The two periods between which a square is compared, as they are written; empty for no comparison. */
  readonly compare: readonly string[];
  /** Middle of the map: easting and northing on the British National Grid, metres. */
  readonly centre: readonly [number, number];
  /** Scale: a pixel is 10,000 m / 2^zoom. */
  readonly zoom: number;
}

export const START: ViewState = {
  taxon: null,
  size: '10km',
  periods: ['../1999', '2000/2009', '2010/..'],
  mode: 'presence',
  shading: 'latest',
  year: null,
  quality: 'usable',
  square: null,
  panel: 'square',
  overlay: 'none',
  compare: [],
  centre: [290_000, 540_000],
  zoom: 2.9,
};

/**
 * The hash of a state, without the leading #; what equals the start is left out. Where the scheme begins with other periods than this program, they always stand there, so that a
 * link keeps its meaning when the scheme changes its mind.
 */
export function toHash(state: ViewState, schemePeriods = START.periods): string {
  const parts: string[] = [];
  const put = (name: string, value: string, start: string) => {
    if (value !== start) parts.push(`${name}=${readable(value)}`);
  };
  put('taxon', state.taxon ?? '', '');
  put('grid', state.size, START.size);
  put('periods', state.periods.join(','), schemePeriods.join() === START.periods.join() ? START.periods.join(',') : '');
  put('mode', state.mode, START.mode);
  put('colour', state.shading, START.shading);
  put('year', state.year === null ? '' : String(state.year), '');
  put('quality', state.quality, START.quality);
  put('square', state.square ?? '', '');
  put('panel', state.panel, START.panel);
  put('over', state.overlay, START.overlay);
  put('compare', state.compare.join(','), '');
  put('at', atText(state), atText(START));
  return parts.join('&');
}

/** The state of a hash, with or without the leading #. What cannot be read takes its start value; periods that are not named are the scheme's. */
export function fromHash(hash: string, schemePeriods = START.periods): ViewState {
  const given = new URLSearchParams(hash.replace(/^#/, ''));
  const [centre, zoom] = readAt(given.get('at'));
  return {
    taxon: given.get('taxon') || null,
    size: oneOf(SIZES, given.get('grid'), START.size),
    periods: readPeriods(given.get('periods'), schemePeriods),
    mode: oneOf(MODES, given.get('mode'), START.mode),
    shading: oneOf(SHADINGS, given.get('colour'), START.shading),
    year: readYear(given.get('year')),
    quality: oneOf(QUALITIES, given.get('quality'), START.quality),
    square: given.get('square') || null,
    panel: oneOf(PANELS, given.get('panel'), START.panel),
    overlay: oneOf(OVERLAYS, given.get('over'), START.overlay),
    compare: readCompare(given.get('compare')),
    centre,
    zoom,
  };
}

/** A value in a hash. Commas and slashes are legal there; leaving them bare keeps a link readable. */
export const readable = (value: string) => encodeURIComponent(value).replaceAll('%2C', ',').replaceAll('%2F', '/');

const atText = ({ centre, zoom }: ViewState) => `${Math.round(centre[0])},${Math.round(centre[1])},${Number(zoom.toFixed(2))}`;

function readAt(text: string | null): [readonly [number, number], number] {
  const [easting, northing, zoom] = (text ?? '').split(',').map(Number);
  const whole = [easting, northing, zoom].every((v) => v !== undefined && Number.isFinite(v)) && text?.split(',').length === 3;
  return whole ? [[easting!, northing!], zoom!] : [START.centre, START.zoom];
}

const periodsIn = (text: string | null) => (text ?? '').split(',').map((p) => p.trim()).filter((p) => p !== '');

function readPeriods(text: string | null, start: readonly string[]): readonly string[] {
  const periods = periodsIn(text);
  return periods.length > 0 ? periods : start;
}

/** Two periods or none: one alone cannot be compared. */
function readCompare(text: string | null): readonly string[] {
  const periods = periodsIn(text);
  return periods.length === 2 ? periods : START.compare;
}

function readYear(text: string | null): number | null {
  return text !== null && /^\d{4}$/.test(text) ? Number(text) : null;
}

/** The value given, if it is one of those allowed. */
export function oneOf<T extends string>(allowed: readonly T[], given: string | null, start: T): T {
  return allowed.find((value) => value === given) ?? start;
}
