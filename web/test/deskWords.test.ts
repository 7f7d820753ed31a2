import { describe, expect, test } from 'vitest';
import type { ImportLine, RecordLine } from '../src/desk/answers.ts';
import { eventsOf, makeEventReader } from '../src/desk/events.ts';
import { keepReason, recentReasons } from '../src/desk/review/reasons.ts';
import { nearbyInWords } from '../src/desk/review/nearby.ts';
import { pace } from '../src/desk/upload.ts';
import { bytes, days, seen, stateWords, timeLeft } from '../src/desk/words.ts';
import { readReference } from '../src/squares/names.ts';

describe('words of the desk', () => {
  test.each([[0, '0 bytes'], [999, '999 bytes'], [1_000, '1.0 kB'], [99_400, '99 kB'], [123_456, '123 kB'], [999_600, '1.0 MB'], [2_147_483_648, '2.1 GB']])('%i bytes', (n, words) => expect(bytes(n)).toBe(words));
  test.each([[0, 'a few seconds'], [31, '35 seconds'], [60, '1 minute'], [3_000, '50 minutes'], [7_200, '2 hours']])('%i seconds left', (n, words) => expect(timeLeft(n)).toBe(words));
  test.each([
    ['2026-06-07', '2026-06-07', '7 Jun 2026'], ['2026-06-01', '2026-06-30', 'Jun 2026'], ['2024-02-01', '2024-02-29', 'Feb 2024'], ['2026-01-01', '2026-12-31', '2026'],
    ['2026-06-07', '2026-07-01', '7 Jun 2026 – 1 Jul 2026'], ['1998-01-01', '1999-12-31', '1 Jan 1998 – 31 Dec 1999'],
  ])('%s to %s', (first, last, words) => expect(days(first, last)).toBe(words));
  test.each([
    [{ count: 6, stage: 'worker', sex: 'female' }, '6 workers'], [{ count: 1, stage: 'queen', lengthMm: 18 }, '1 queen, 18 mm'], [{ count: 2, stage: 'larva' }, '2 larvae'],
    [{ count: 3, sex: 'male' }, '3, male'], [{ sex: 'female', lengthMm: 14 }, 'female, 14 mm'], [{ count: 2, stage: 'old ones' }, '2, old ones'],
    [{ present: false }, 'looked for and not found'], [{}, ''],
  ])('%j was seen', (said, words) => expect(seen({ count: null, stage: null, sex: null, lengthMm: null, present: true, ...said } as RecordLine)).toBe(words));
  test.each([
    [{ state: 'received', report: { dryRun: true } }, 'tried, not imported'], [{ state: 'running', progress: { fraction: 0.419 } }, 'being read, 41 %'],
    [{ state: 'done', report: { refused: 1200 } }, 'done, 1,200 refused'], [{ state: 'done', report: { refused: 0 } }, 'done'], [{ state: 'undone', report: { refused: 3 } }, 'taken back'],
  ])('%j in words', (line, words) => expect(stateWords({ report: null, progress: null, ...line } as ImportLine)).toBe(words));
  test('no rate is told before the line has settled', () => {
    expect(pace(1_000, 10_000, 100).secondsLeft).toBeNull();
    expect(pace(1_000_000, 10_000_000, 2_000)).toEqual({ bytes: 1_000_000, of: 10_000_000, perSecond: 500_000, secondsLeft: 18 });
  });
});

describe('events', () => {
  test('an event is told once it is whole, wherever the stream was cut', () => {
    const text = 'event: progress\ndata: {"rows":1}\n\n: a remark\n\nevent: end\r\ndata: a\r\ndata: b\r\n\r\n';
    for (let cut = 0; cut <= text.length; cut++) {
      const read = makeEventReader();
      expect([...read(text.slice(0, cut)), ...read(text.slice(cut))]).toEqual([{ name: 'progress', data: '{"rows":1}' }, { name: 'end', data: 'a\nb' }]);
    }
  });
});

test('a stream is read as it comes, with letters cut in two, and ends with it', async () => {
  const bytes = new TextEncoder().encode('event: end\ndata: {"file":"Käfer.csv"}\n\ndata: not whole');
  const pieces = Array.from(bytes, (byte) => new Uint8Array([byte]));
  const stream = new ReadableStream<Uint8Array>({ pull: (to) => { const piece = pieces.shift(); if (piece === undefined) to.close(); else to.enqueue(piece); } });
  const told = [];
  for await (const event of eventsOf(stream)) told.push(event);
  expect(told).toEqual([{ name: 'end', data: '{"file":"Käfer.csv"}' }]);
});

describe('recent reasons', () => {
  function storage(first: string | null = null) {
    let kept = first;
    return { getItem: () => kept, setItem: (_: string, value: string) => { kept = value; } };
  }

  test('the newest comes first, none twice, six at most', () => {
    const held = storage();
    for (const reason of ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'c']) keepReason(held, reason);
    expect(recentReasons(held)).toEqual(['c', 'g', 'f', 'e', 'd', 'b']);
  });

  test('what another program left there is no reason', () => {
    for (const odd of ['{', '{"a":1}', '[1,"a"]']) expect(recentReasons(storage(odd)).every((reason) => reason === 'a')).toBe(true);
  });
});

describe('where a record lies', () => {
  const squares = (...names: string[]) => ({ features: names.map((square) => ({ properties: { square, grid: 'GB', first: 1998, last: 2004, records: 3, period: 0, latest: 0 } })) });

  test.each([['SE50138877', 'SE', 450_130, 488_770, 10], ['H2354', 'H', 223_000, 354_000, 1_000], ['TL123456', 'TL', 512_300, 245_600, 100]])('%s is read', (text, _, easting, northing, side) =>
    expect(readReference(text)).toMatchObject({ easting, northing, side }));
  test.each(['SE123', 'SE1234567', 'here'])('%s is no reference', (text) => expect(readReference(text)).toBeNull());

  test('its own square is told', () => expect(nearbyInWords('SE50138877', squares('SE58', 'TL45'))).toBe('Its own 10 km square SE58 has 3 usable records (1998–2004).'));
  test('else the nearest one, and how far it is', () => {
    // Middles of SE68 and SE58 lie 10 km apart; the record lies 4.9 km west and 3.8 km north of the middle of SE58.
    expect(nearbyInWords('SE50138877', squares('SE68', 'TL45'))).toContain('The nearest that has it is SE68, about 15 km away');
  });
  test('nothing known is said too', () => expect(nearbyInWords('SE58', squares())).toContain('No usable record'));
});
