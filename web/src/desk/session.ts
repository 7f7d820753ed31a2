// Who is signed in. The token lives in this tab only and goes when the tab is closed.

const KEY = 'rangemap.token';

export interface Session {
  readonly token: string | null;
  signIn(token: string): void;
  signOut(): void;
  /** The token is not taken any more: asks for another and waits until there is one. */
  renew(refused: string | null): Promise<void>;
  /** Called when a token is needed, and again when there is one. */
  follow(follower: (isIn: boolean) => void): void;
}

export function makeSession(storage: Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>): Session {
  let token = storage.getItem(KEY);
  let waiting: (() => void)[] = [];
  const followers: ((isIn: boolean) => void)[] = [];
  const tell = () => followers.forEach((follower) => follower(token !== null));

  return {
    get token() { return token; },
    signIn(given) {
      token = given;
      storage.setItem(KEY, given);
      tell();
      waiting.forEach((go) => go());
      waiting = [];
    },
    signOut() {
      token = null;
      storage.removeItem(KEY);
      tell();
    },
    renew(refused) {
      // Another question may have had a new token meanwhile.
      if (token !== null && token !== refused) return Promise.resolve();
      token = null;
      storage.removeItem(KEY);
      const renewed = new Promise<void>((go) => { waiting.push(go); });
      tell();
      return renewed;
    },
    follow(follower) { followers.push(follower); },
  };
}
