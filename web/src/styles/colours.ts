// Colours live in the style sheet (look/colours.css), once for light and once for dark; here they are read for the map.

export interface Colours {
  sea: string;
  land: string;
  near: string;
  shore: string;
  border: string;
  lattice: string;
  label: string;
  halo: string;
  ink: string;
  mark: string;
  /** Stops of the ramp from the oldest to the newest. */
  ramp: string[];
}

const RAMP_STOPS = 4;

export function readColours(): Colours {
  const style = getComputedStyle(document.documentElement);
  const named = (name: string) => style.getPropertyValue(`--${name}`).trim();
  return {
    sea: named('sea'), land: named('land'), near: named('near'), shore: named('shore'), border: named('border'), lattice: named('lattice'),
    label: named('label'), halo: named('halo'), ink: named('ink'), mark: named('mark'),
    ramp: Array.from({ length: RAMP_STOPS }, (_, i) => named(`ramp-${i}`)),
  };
}

/** Calls back now and whenever the person's system turns from light to dark or back. */
export function followColours(use: (colours: Colours) => void): void {
  use(readColours());
  window.matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => use(readColours()));
}
