// Reads an archive with the npm package pmtiles and writes header, metadata and the tiles of the numbers given, one byte a character.
// Run in the folder web, where the package is installed: node read-archive.mjs FILE NUMBER...
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';

const require = createRequire(join(process.cwd(), 'package.json'));
const { PMTiles, tileIdToZxy } = require('pmtiles');

const [file, ...numbers] = process.argv.slice(2);
const bytes = await readFile(file);
const source = {
  getKey: () => file,
  getBytes: async (offset, length) => ({ data: bytes.buffer.slice(bytes.byteOffset + offset, bytes.byteOffset + offset + length) }),
};
const archive = new PMTiles(source);
const tiles = [];
for (const number of numbers) {
  const tile = await archive.getZxy(...tileIdToZxy(Number(number)));
  tiles.push(tile ? Buffer.from(tile.data).toString('latin1') : null);
}
process.stdout.write(JSON.stringify({ header: await archive.getHeader(), metadata: await archive.getMetadata(), tiles }));
