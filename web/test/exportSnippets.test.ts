import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { asked } from '../src/export/address.ts';
import { formatsOf, START, WHATS, type ExportQuery } from '../src/export/query.ts';
import { doubleQuoted, LANGUAGES, shell, snippet, TOKEN_VARIABLE } from '../src/export/snippets.ts';

const ODD = [
  `Exemplum d'ésprit`, `say "yes"`, 'back\\slash \\n \\u0041', '$HOME `id` $(id)', 'a&b=c#d;e|f', '100% + more', 'line\nbreak\ttab', 'é ü 🐝 \u2028', "'; rm -rf nothing; '", '#{x} {0} %s',
];
const origin = 'http://127.0.0.1:5080';

describe('values in the rules of each language', () => {
  test.each(ODD)('a shell reads %j as it was', (odd) => {
    const said = spawnSync('sh', ['-c', `printf %s ${shell(odd)}`], { encoding: 'utf8' });
    expect(said.stdout).toBe(odd);
  });

  test.each(ODD)('Python reads %j as it was', (odd) => {
    const said = spawnSync('python3', ['-c', `import sys\nsys.stdout.buffer.write(${doubleQuoted(odd)}.encode())`], { encoding: 'utf8' });
    if (said.error === undefined) expect(said.stdout).toBe(odd);
  });

  test.each(ODD)('R and JSON read %j as it was', (odd) => {
    // R has the escapes of JSON but for the stroke, which is written bare here.
    expect(JSON.parse(doubleQuoted(odd))).toBe(odd);
    expect(doubleQuoted(odd)).not.toContain('\\/');
    expect(doubleQuoted(odd)).toMatch(/^"(?:[^"\\\n\r\u2028]|\\(?:["\\bfnrt]|u[0-9a-f]{4}))*"$/);
  });
});

describe('programs', () => {
  test('every language asks every parameter of every table and format', () => {
    for (const what of WHATS) for (const format of formatsOf(what)) for (const language of LANGUAGES) {
      const query: ExportQuery = { ...START, what, format, taxon: ODD[0]!, from: '2001' };
      const program = snippet(language, query, origin);
      for (const [name] of asked(query).parameters) expect(program).toContain(name);
      expect(program).toContain(origin + asked(query).path);
      expect(program).not.toContain('undefined');
    }
  });

  test('a token is read from the environment, and only for records in full', () => {
    for (const language of LANGUAGES) {
      expect(snippet(language, { ...START, what: 'records', full: true }, origin)).toContain(TOKEN_VARIABLE);
      expect(snippet(language, { ...START, what: 'records' }, origin)).not.toContain('Authorization');
      expect(snippet(language, { ...START, full: true }, origin)).not.toContain('Authorization');
    }
  });
});
