// A ramp of any number of classes between a few stops, mixed in Oklab (B. Ottosson, 2020), where equal steps look equal.

type Triple = [number, number, number];

/** Colours for the given number of classes, the first and last being the ramp's ends; one class takes the last. */
export function rampColours(stops: readonly string[], classes: number): string[] {
  if (classes <= 1) return stops.slice(-1);
  return Array.from({ length: classes }, (_, i) => colourAt(stops, i / (classes - 1)));
}

function colourAt(stops: readonly string[], share: number): string {
  const place = share * (stops.length - 1);
  const left = Math.min(Math.floor(place), stops.length - 2);
  return mixed(stops[left]!, stops[left + 1]!, place - left);
}

/** The colour a share of the way, 0 to 1, from one #rrggbb colour to another. */
export function mixed(from: string, to: string, share: number): string {
  const a = toOklab(from), b = toOklab(to);
  return toHex(a.map((v, i) => v + share * (b[i]! - v)) as Triple);
}

/** Lightness by eye, 0 to 1, of a #rrggbb colour. */
export const lightness = (hex: string): number => toOklab(hex)[0];

function toOklab(hex: string): Triple {
  const [r, g, b] = [1, 3, 5].map((i) => toLinear(parseInt(hex.slice(i, i + 2), 16) / 255)) as Triple;
  const l = Math.cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const m = Math.cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const s = Math.cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  return [
    0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s,
    1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s,
    0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s,
  ];
}

function toHex([L, a, b]: Triple): string {
  const l = (L + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const m = (L - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const s = (L - 0.0894841775 * a - 1.2914855480 * b) ** 3;
  const linear = [
    4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
    -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
    -0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s,
  ];
  return `#${linear.map((v) => Math.round(255 * fromLinear(Math.min(1, Math.max(0, v)))).toString(16).padStart(2, '0')).join('')}`;
}

const toLinear = (v: number) => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
const fromLinear = (v: number) => v <= 0.0031308 ? v * 12.92 : 1.055 * v ** (1 / 2.4) - 0.055;
