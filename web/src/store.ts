// Holds the one state. A control changes it; the address, the layers and the panels follow.
import { fromHash, toHash, type ViewState } from './state.ts';

type Follower = (now: ViewState, before: ViewState) => void;

export interface Store {
  readonly state: ViewState;
  change(part: Partial<ViewState>): void;
  /** Called at every change, and once at the start by {@link Store.begin}. */
  follow(follower: Follower): void;
  /** Tells every follower the first state, once all are there. */
  begin(): void;
}

export function makeStore(location: Location, history: History): Store {
  let state = fromHash(location.hash);
  const followers: Follower[] = [];

  const tell = (before: ViewState) => followers.forEach((follower) => follower(state, before));

  function change(part: Partial<ViewState>): void {
    const before = state;
    state = { ...state, ...part };
    if (toHash(state) === toHash(before)) return;
    history.replaceState(null, '', `#${toHash(state)}`);
    tell(before);
  }

  window.addEventListener('hashchange', () => change(fromHash(location.hash)));

  return {
    get state() { return state; },
    change,
    follow: (follower) => { followers.push(follower); },
    begin: () => tell(state),
  };
}

/** True when any of the named parts differs. */
export function differs(now: ViewState, before: ViewState, ...parts: (keyof ViewState)[]): boolean {
  return now === before || parts.some((part) => String(now[part]) !== String(before[part]));
}
