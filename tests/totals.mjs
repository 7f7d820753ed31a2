// Adds up the results of all suites from the files that their runners wrote: NAME.trx (.NET) or NAME.json (vitest), and NAME.exit, the exit code.
// A suite without results, or one that failed without a failed test (a crash, a time-out), counts as one failure.
//   node totals.mjs FOLDER SUITE...
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const [folder, ...suites] = process.argv.slice(2);
const read = (name) => existsSync(join(folder, name)) ? readFileSync(join(folder, name), 'utf8') : null;

function fromTrx(text) {
  const counter = (name) => Number(new RegExp(`<Counters [^>]*\\b${name}="(\\d+)"`).exec(text)?.[1] ?? 0);
  const [total, executed, passed] = ['total', 'executed', 'passed'].map(counter);
  return { passed, failed: executed - passed, skipped: total - executed };
}

function fromVitest(text) {
  const { numPassedTests, numFailedTests, numPendingTests, numTodoTests } = JSON.parse(text);
  return { passed: numPassedTests, failed: numFailedTests, skipped: numPendingTests + numTodoTests };
}

function resultsOf(suite) {
  const [trx, json, exit] = [read(`${suite}.trx`), read(`${suite}.json`), Number(read(`${suite}.exit`) ?? 1)];
  const counts = trx !== null ? fromTrx(trx) : json !== null ? fromVitest(json) : { passed: 0, failed: 0, skipped: 0 };
  if (counts.passed + counts.failed + counts.skipped === 0) return { ...counts, failed: 1, note: 'ran no test' };
  if (exit !== 0 && counts.failed === 0) return { ...counts, failed: 1, note: `ended with exit code ${exit}` };
  return { ...counts, note: '' };
}

const inWords = ({ passed, failed, skipped }) => `${passed} passed, ${failed} failed, ${skipped} skipped`;
const all = { passed: 0, failed: 0, skipped: 0 };
const widest = Math.max(...suites.map((suite) => suite.length));
for (const suite of suites) {
  const found = resultsOf(suite);
  for (const kind of Object.keys(all)) all[kind] += found[kind];
  console.log(`${suite.padEnd(widest)}  ${inWords(found)}${found.note === '' ? '' : `  (${found.note})`}`);
}
console.log(inWords(all));
process.exitCode = all.failed === 0 && all.passed > 0 ? 0 : 1;
