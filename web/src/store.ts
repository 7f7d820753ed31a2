// The state of the map's page and its address.
import { differsIn, makeAddressStore, type AddressStore } from './addressStore.ts';
import { fromHash, toHash, type ViewState } from './state.ts';

export type Store = AddressStore<ViewState>;

/** @param periods What the scheme's maps begin with, where the address names none. */
export function makeStore(location: Location, history: History, periods?: readonly string[]): Store {
  return makeAddressStore<ViewState>(location, history, { write: (state) => toHash(state, periods), read: (hash) => fromHash(hash, periods), passing: ['centre', 'zoom', 'year'] });
}

/** True when any of the named parts differs. */
export const differs = differsIn<ViewState>;
