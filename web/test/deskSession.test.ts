import { afterEach, describe, expect, test, vi } from 'vitest';
import { makeAsk } from '../src/desk/ask.ts';
import { makeSession } from '../src/desk/session.ts';

afterEach(() => vi.unstubAllGlobals());

function storage(token: string | null) {
  const kept = new Map(token === null ? [] : [['rangemap.token', token]]);
  return { kept, getItem: (key: string) => kept.get(key) ?? null, setItem: (key: string, value: string) => { kept.set(key, value); }, removeItem: (key: string) => { kept.delete(key); } };
}

/** A server that takes one token. */
function taking(token: string) {
  const asked: string[] = [];
  vi.stubGlobal('fetch', vi.fn(async (_: string, { headers }: { headers: Record<string, string> }) => {
    asked.push(headers['Authorization'] ?? '');
    return asked.at(-1) === `Bearer ${token}` ? Response.json({ name: 'A. Person' }) : new Response('{}', { status: 401 });
  }));
  return asked;
}

describe('who is signed in', () => {
  test('a question asked before the sign-in waits for it', async () => {
    const asked = taking('good');
    const session = makeSession(storage(null));
    const answer = makeAsk(session).get('/me');
    session.signIn('good');
    expect(await answer).toEqual({ name: 'A. Person' });
    expect(asked).toEqual(['Bearer good']);
  });

  test('a token that is refused is forgotten, and all that waited is asked again with the next, once each', async () => {
    const asked = taking('new');
    const held = storage('old');
    const session = makeSession(held);
    const told: boolean[] = [];
    session.follow((isIn) => {
      told.push(isIn);
      if (!isIn) expect(held.kept.size).toBe(0);
    });
    const ask = makeAsk(session);
    const answers = [ask.get('/one'), ask.post('/two', { reason: 'typed' })];
    await vi.waitFor(() => expect(told).toContain(false));
    session.signIn('new');
    await Promise.all(answers);
    expect(asked.filter((token) => token === 'Bearer new')).toHaveLength(2);
    expect(vi.mocked(fetch).mock.lastCall?.[1]).toMatchObject({ body: '{"reason":"typed"}' });
    expect(held.kept.get('rangemap.token')).toBe('new');
  });

  test('a late refusal of the old token does not sign the new one out', async () => {
    const session = makeSession(storage('new'));
    await session.renew('old');
    expect(session.token).toBe('new');
  });

  test('a server that is gone, and one that refuses with a reason, end the question in words', async () => {
    const ask = makeAsk(makeSession(storage('good')));
    vi.stubGlobal('fetch', vi.fn(async () => { throw new TypeError('refused'); }));
    await expect(ask.get('/me')).rejects.toMatchObject({ title: 'The server does not answer.', status: 0 });
    vi.stubGlobal('fetch', vi.fn(async () => Response.json({ title: 'Changed meanwhile.', detail: 'Look again.' }, { status: 409 })));
    await expect(ask.post('/reviews', {})).rejects.toMatchObject({ title: 'Changed meanwhile.', detail: 'Look again.', status: 409 });
  });
});
