// Names of 10 km squares from the south-west corner, by the 5 by 5 lattice of letters that the national grids share (I is left out).
const LATTICE = 'ABCDEFGHJKLMNOPQRSTUVWXYZ';
const letter = (column, rowFromSouth) => LATTICE[(4 - rowFromSouth) * 5 + column];
const digits = (easting, northing) => `${Math.floor(easting / 10_000) % 10}${Math.floor(northing / 10_000) % 10}`;

function british(easting, northing) {
  const e = Math.floor(easting / 100_000), n = Math.floor(northing / 100_000);
  if (e < 0 || e >= 7 || n < 0 || n >= 13) return null;
  // The letter of the 500 km square comes first; S stands at the lattice's column 2, row 1 from the south.
  return letter(2 + Math.floor(e / 5), 1 + Math.floor(n / 5)) + letter(e % 5, n % 5) + digits(easting, northing);
}

function irish(easting, northing) {
  const e = Math.floor(easting / 100_000), n = Math.floor(northing / 100_000);
  return e < 0 || e >= 5 || n < 0 || n >= 5 ? null : letter(e, n) + digits(easting, northing);
}

function channelIslands(easting, northing) {
  const inLetters = easting >= 500_000 && easting < 600_000 && northing >= 5_400_000 && northing < 5_600_000;
  return inLetters ? (northing < 5_500_000 ? 'WV' : 'WA') + digits(easting, northing) : null;
}

const NAMERS = { GB: british, IE: irish, CI: channelIslands };

/** Name of the 10 km square whose south-west corner is given in metres; null outside the grid's letters. */
export const squareName = (grid, easting, northing) => NAMERS[grid](easting, northing);
