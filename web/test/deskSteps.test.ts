import { expect, describe, test } from 'vitest';
import type { MappingFile, Preview, RecordLine } from '../src/desk/answers.ts';
import { asSaid, mappingFile, NOTHING_SAID, readAs, readMapping, statements, withDefault, withMapping } from '../src/desk/imports/mapping.ts';
import { afterDecision, afterReversal, current, EMPTY, meant, moved, toggled, waiting, withAllSelected, withPage, type Queue } from '../src/desk/review/queue.ts';
import { readRoute, writeRoute, type Route } from '../src/desk/route.ts';

const preview = (...columns: [string, string | null][]) => ({ columns: columns.map(([name, term]) => ({ name, term, use: '', samples: [] })) }) as unknown as Preview;

describe('what is said of columns', () => {
  const shown = preview(['Art', 'scientificName'], ['Wer', null], ['Wo', null]);

  test('nothing said leaves all to the headers', () => expect(statements(NOTHING_SAID)).toEqual({ mapping: { columns: {}, defaults: {} }, newTaxa: false }));

  test('one choice states every column as it is shown', () => {
    expect(mappingFile(readAs(NOTHING_SAID, shown, 'Wo', 'gridReference')).columns).toEqual({ Art: 'scientificName', Wer: null, Wo: 'gridReference' });
  });

  test('a term that another column had moves over, as no term is read twice', () => {
    expect(mappingFile(readAs(NOTHING_SAID, shown, 'Wer', 'scientificName')).columns).toEqual({ Art: null, Wer: 'scientificName', Wo: null });
  });

  test('choices made before the server has answered the first all count', () => {
    const both = readAs(readAs(NOTHING_SAID, shown, 'Wo', 'gridReference'), shown, 'Wer', 'recordedBy');
    expect(mappingFile(both).columns).toEqual({ Art: 'scientificName', Wer: 'recordedBy', Wo: 'gridReference' });
  });

  test('what was chosen shows also while the server cannot read the file yet', () => {
    const saying = readAs(NOTHING_SAID, shown, 'Wo', 'gridReference');
    expect(asSaid(preview(['Art', null], ['Wer', null], ['Wo', null]), saying).columns.map(({ term }) => term)).toEqual(['scientificName', null, 'gridReference']);
  });

  test('an empty value is not stated', () => {
    const saying = withDefault(withDefault(NOTHING_SAID, 'recordedBy', 'A. Person'), 'sex', ' ');
    expect(mappingFile(saying).defaults).toEqual({ recordedBy: 'A. Person' });
    expect(mappingFile(withDefault(saying, 'recordedBy', null)).defaults).toEqual({});
  });

  test('a mapping of another file is taken for the columns that this one has', () => {
    const file: MappingFile = { columns: { Wo: 'gridReference', Gone: 'sex' }, defaults: { recordedBy: 'A. Person' }, dateOrder: 'dmy' };
    expect(mappingFile(withMapping(NOTHING_SAID, file, shown))).toEqual({
      columns: { Art: 'scientificName', Wer: null, Wo: 'gridReference' }, defaults: { recordedBy: 'A. Person' }, dateOrder: 'dmy',
    });
  });

  test('a mapping file is read back as it was saved', () => {
    const file = mappingFile({ ...readAs(NOTHING_SAID, shown, 'Wo', 'gridReference'), dateOrder: 'mdy' });
    expect(readMapping(JSON.stringify(file))).toEqual({ file });
  });

  test.each(['', 'a;b', '[]', '{}', '{"columns":[]}', '{"columns":{},"more":1}', '{"columns":{"a":1}}', '{"columns":{},"dateOrder":"ymd"}'])('%j is refused in words', (text) => {
    expect(readMapping(text)).toHaveProperty('fault');
  });
});

const record = (id: string) => ({ id, version: '1', scientificName: id, square: 'SE58' }) as RecordLine;
const queue = (...ids: string[]): Queue => withPage(EMPTY, { records: ids.map(record), next: null, note: null });

describe('the queue', () => {
  test('the first record is looked at first, and nobody walks off the ends', () => {
    expect(current(queue('a', 'b'))?.id).toBe('a');
    expect(current(moved(queue('a', 'b'), -1))?.id).toBe('a');
    expect(current(moved(queue('a', 'b'), 5))?.id).toBe('b');
    expect(current(EMPTY)).toBeNull();
  });

  test('a page that overlaps adds only what is new', () => {
    const more = withPage(queue('a', 'b'), { records: [record('b'), record('c')], next: 'x', note: null });
    expect(more.records.map(({ id }) => id)).toEqual(['a', 'b', 'c']);
    expect(more.next).toBe('x');
  });

  test('after a decision the next that waits comes, then those passed over, then none', () => {
    const one = afterDecision(moved(queue('a', 'b', 'c'), 1), ['b']);
    expect(current(one)?.id).toBe('c');
    const two = afterDecision(one, ['c']);
    expect(current(two)?.id).toBe('a');
    const all = afterDecision(two, ['a']);
    expect(current(all)?.id).toBe('a');
    expect(waiting(all)).toBe(0);
  });

  test('a decision is on what is selected, else on what is looked at', () => {
    const some = toggled(toggled(queue('a', 'b', 'c'), 'b'), 'c');
    expect(meant(some).map(({ id }) => id)).toEqual(['b', 'c']);
    expect(meant(toggled(toggled(some, 'b'), 'c')).map(({ id }) => id)).toEqual(['a']);
    expect(meant(EMPTY)).toEqual([]);
  });

  test('all shown are selected but those decided already', () => {
    expect([...withAllSelected(afterDecision(queue('a', 'b'), ['a'])).selected]).toEqual(['b']);
  });

  test('what was taken back waits again and is looked at', () => {
    const back = afterReversal(afterDecision(queue('a', 'b', 'c'), ['a', 'b']), ['a', 'b']);
    expect(current(back)?.id).toBe('a');
    expect(waiting(back)).toBe(3);
  });
});

describe('addresses of the desk', () => {
  const routes: Route[] = [
    { place: 'imports' }, { place: 'import', id: 'u 1/2' }, { place: 'review', filter: { doubt: null, taxon: null, batch: null } },
    { place: 'review', filter: { doubt: 'outOfSeason', taxon: 'A b&c', batch: '3' } },
  ];
  test.each(routes)('%j comes back from its address', (route) => expect(readRoute(writeRoute(route))).toEqual(route));
  test.each(['', '#', '#nowhere', '#imports/'])('%j is the imports', (hash) => expect(readRoute(hash)).toEqual({ place: 'imports' }));
  test('a half-written escape is no fault', () => expect(readRoute('#imports/%E0%A4%A')).toEqual({ place: 'import', id: '%E0%A4%A' }));
});
