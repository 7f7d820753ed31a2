// Holds the one state of a page. A control changes it; the address and whoever follows come after.
// A choice is a step that the browser's back button takes back; a passing change only mends the address of the step.

export type Follower<S> = (now: S, before: S) => void;

export interface AddressStore<S> {
  readonly state: S;
  change(part: Partial<S>): void;
  /** Called at every change, and once at the start by {@link AddressStore.begin}. */
  follow(follower: Follower<S>): void;
  /** Tells every follower the first state, once all are there. */
  begin(): void;
}

export interface AddressForm<S> {
  /** The hash of a state, without the leading #; equal states have equal hashes. */
  write(state: S): string;
  read(hash: string): S;
  /** Parts whose change is no step of its own. */
  passing: readonly (keyof S)[];
}

export function makeAddressStore<S extends object>(location: Location, history: History, form: AddressForm<S>): AddressStore<S> {
  let state = form.read(location.hash);
  const followers: Follower<S>[] = [];

  const tell = (before: S) => followers.forEach((follower) => follower(state, before));
  const isChoice = (part: Partial<S>) => Object.keys(part).some((name) => !form.passing.includes(name as keyof S));

  function change(part: Partial<S>): void {
    const before = state;
    if (!adopt({ ...state, ...part })) return;
    const address = `#${form.write(state)}`;
    if (isChoice(part)) history.pushState(null, '', address);
    else history.replaceState(null, '', address);
    tell(before);
  }

  /** Takes a state where it differs from the one held. */
  function adopt(next: S): boolean {
    if (form.write(next) === form.write(state)) return false;
    state = next;
    return true;
  }

  window.addEventListener('hashchange', () => {
    const before = state;
    if (adopt(form.read(location.hash))) tell(before);
  });

  return {
    get state() { return state; },
    change,
    follow: (follower) => { followers.push(follower); },
    begin: () => tell(state),
  };
}

/** True when any of the named parts differs, or all is new. */
export function differsIn<S>(now: S, before: S, ...parts: (keyof S)[]): boolean {
  return now === before || parts.some((part) => String(now[part]) !== String(before[part]));
}
