// @vitest-environment happy-dom
import { expect, test, vi } from 'vitest';
import { makeStore } from '../src/store.ts';

function held(hash = '') {
  const location = { hash };
  const history = { pushState: vi.fn(), replaceState: vi.fn() };
  const store = makeStore(location as Location, history as unknown as History);
  return { store, location, history };
}

test('a choice is a step to go back from', () => {
  const { store, history } = held();
  store.change({ taxon: 'T1', year: null });
  expect(history.pushState).toHaveBeenCalledWith(null, '', '#taxon=T1');
  expect(history.replaceState).not.toHaveBeenCalled();
});

test('moving the map and the years leaves no steps', () => {
  const { store, history } = held('#taxon=T1&mode=arrival');
  store.change({ year: 2010 });
  store.change({ centre: [400_000, 300_000], zoom: 5 });
  expect(history.pushState).not.toHaveBeenCalled();
  expect(history.replaceState).toHaveBeenLastCalledWith(null, '', '#taxon=T1&mode=arrival&year=2010&at=400000,300000,5');
});

test('an address that changes is followed and not written again', () => {
  const { store, location, history } = held('#taxon=T1');
  const follower = vi.fn();
  store.follow(follower);
  location.hash = '#taxon=T2';
  window.dispatchEvent(new Event('hashchange'));
  expect(follower).toHaveBeenCalledOnce();
  expect(store.state.taxon).toBe('T2');
  expect(history.pushState).not.toHaveBeenCalled();
});
