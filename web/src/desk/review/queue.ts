// The queue as one person works through it: pure steps from one state to the next.
import type { RecordLine, RecordPage } from '../answers.ts';

export interface Queue {
  records: readonly RecordLine[];
  /** Asks for the records after these; null when there are none. */
  next: string | null;
  /** The record that is looked at, by its place in the list; -1 for none. */
  at: number;
  selected: ReadonlySet<string>;
  /** Decided here and now; they stay in the list so that one sees what one did. */
  decided: ReadonlySet<string>;
}

export const EMPTY: Queue = { records: [], next: null, at: -1, selected: new Set(), decided: new Set() };

export const current = ({ records, at }: Queue): RecordLine | null => records[at] ?? null;

/** The records that a decision is on: those selected, or else the one that is looked at. */
export function meant(queue: Queue): RecordLine[] {
  if (queue.selected.size > 0) return queue.records.filter(({ id }) => queue.selected.has(id));
  const one = current(queue);
  return one === null ? [] : [one];
}

export function withPage(queue: Queue, page: RecordPage): Queue {
  const known = new Set(queue.records.map(({ id }) => id));
  const records = [...queue.records, ...page.records.filter(({ id }) => !known.has(id))];
  return { ...queue, records, next: page.next, at: queue.at < 0 && records.length > 0 ? 0 : queue.at };
}

export function moved(queue: Queue, step: number): Queue {
  return { ...queue, at: Math.min(Math.max(queue.at + step, 0), queue.records.length - 1) };
}

export function toggled(queue: Queue, id: string): Queue {
  const selected = new Set(queue.selected);
  if (!selected.delete(id)) selected.add(id);
  return { ...queue, selected };
}

/** All that are shown and not decided yet. */
export const withAllSelected = (queue: Queue): Queue => ({ ...queue, selected: new Set(queue.records.filter(({ id }) => !queue.decided.has(id)).map(({ id }) => id)) });

export const withNoneSelected = (queue: Queue): Queue => ({ ...queue, selected: new Set() });

/** A record says something new. */
export const withRecord = (queue: Queue, record: RecordLine): Queue => ({ ...queue, records: queue.records.map((was) => was.id === record.id ? record : was) });

/** Goes on to the next record that waits, or to an earlier one that was passed over. */
export function afterDecision(queue: Queue, ids: readonly string[]): Queue {
  const decided = new Set([...queue.decided, ...ids]);
  const waits = ({ id }: RecordLine) => !decided.has(id);
  const later = queue.records.findIndex((record, i) => i > queue.at && waits(record));
  const at = later >= 0 ? later : queue.records.findIndex(waits);
  return { ...queue, decided, selected: new Set(), at: at >= 0 ? at : queue.at };
}

/** A decision was taken back: its records wait again, and the first of them is looked at. */
export function afterReversal(queue: Queue, ids: readonly string[]): Queue {
  const decided = new Set([...queue.decided].filter((id) => !ids.includes(id)));
  const at = queue.records.findIndex(({ id }) => ids.includes(id));
  return { ...queue, decided, at: at >= 0 ? at : queue.at };
}

/** How many of the records shown still wait. */
export const waiting = ({ records, decided }: Queue) => records.filter(({ id }) => !decided.has(id)).length;
