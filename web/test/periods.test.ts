import { describe, expect, test } from 'vitest';
import { periodInWords, PRESETS, readPeriodText } from '../src/periods.ts';

describe('periods', () => {
  test('every preset is readable', () => {
    for (const { periods } of PRESETS) expect(readPeriodText(periods.join(', '))).toEqual({ periods });
  });

  test('faults are said in words', () => {
    expect(readPeriodText('199x')).toMatchObject({ fault: expect.stringContaining('199x') as string });
    expect(readPeriodText('2010/2000')).toMatchObject({ fault: expect.stringContaining('ends before it begins') as string });
    expect(readPeriodText('  ')).toHaveProperty('fault');
    expect(readPeriodText('1 2 3 4 5 6 7 8 9')).toHaveProperty('fault');
  });

  test('periods are shown in words', () => {
    expect(['../1999', '2000/2009', '2010/..', '../..', '2005', '2001-04/2001-06', '../1999-06'].map(periodInWords))
      .toEqual(['before 2000', '2000–2009', 'since 2010', 'all years', '2005', '2001-04–2001-06', 'up to 1999-06']);
  });
});
