// Holds the one state. A control changes it; the address, the layers and the panels follow.
// A choice is a step that the browser's back button takes back; moving the map or the years only mends the address of the step.
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
    if (!adopt({ ...state, ...part })) return;
    const address = `#${toHash(state)}`;
    if (isChoice(part)) history.pushState(null, '', address);
    else history.replaceState(null, '', address);
    tell(before);
  }

  /** Takes a state where it differs from the one held. */
  function adopt(next: ViewState): boolean {
    if (toHash(next) === toHash(state)) return false;
    state = next;
    return true;
  }

  window.addEventListener('hashchange', () => {
    const before = state;
    if (adopt(fromHash(location.hash))) tell(before);
  });

  return {
    get state() { return state; },
    change,
    follow: (follower) => { followers.push(follower); },
    begin: () => tell(state),
  };
}

const PASSING: readonly string[] = ['centre', 'zoom', 'year'];

const isChoice = (part: Partial<ViewState>) => Object.keys(part).some((name) => !PASSING.includes(name));

/** True when any of the named parts differs. */
export function differs(now: ViewState, before: ViewState, ...parts: (keyof ViewState)[]): boolean {
  return now === before || parts.some((part) => String(now[part]) !== String(before[part]));
}
