import type { AddressStore } from '../addressStore.ts';
import { faultOf, type ExportQuery } from './query.ts';

export type ExportStore = AddressStore<ExportQuery>;

/** True for a query that can be asked. */
export const canAsk = (query: ExportQuery): boolean => faultOf(query) === '';
