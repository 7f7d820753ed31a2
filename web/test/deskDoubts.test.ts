import { describe, expect, test } from 'vitest';
import { Problem } from '../src/api.ts';
import { makeDoubtTitles } from '../src/desk/doubts.ts';

const known = [{ code: 'twoFarPlaces', title: 'One recorder in two far places', weight: 2, serious: false }];

describe('titles of doubts', () => {
  test('are the server’s once they are here', async () => {
    const titles = makeDoubtTitles(async () => known);
    await titles.load();
    expect(titles.of('twoFarPlaces')).toBe('One recorder in two far places');
  });

  test('are asked for once', async () => {
    let asked = 0;
    const titles = makeDoubtTitles(async () => { asked++; return known; });
    await titles.load();
    await titles.load();
    expect(asked).toBe(1);
  });

  test('a server that does not answer leaves readable codes and is asked again', async () => {
    let fails = true;
    const titles = makeDoubtTitles(async () => { if (fails) throw new Problem('The server does not answer.', '', 0); return known; });
    await titles.load();
    expect(titles.of('twoFarPlaces')).toBe('two far places');
    fails = false;
    await titles.load();
    expect(titles.of('twoFarPlaces')).toBe('One recorder in two far places');
  });
});
