// Deciding and taking back: what is sent, and what the queue makes of the answer.
import { Problem } from '../../api.ts';
import { counted } from '../../words.ts';
import type { RecordDetail, RecordLine, Verdict } from '../answers.ts';
import type { Desk } from '../desk.ts';
import { STATUS_WORDS } from '../words.ts';
import { afterDecision, afterReversal, meant, withRecord, type Queue } from './queue.ts';
import type { VerdictBar } from './verdict.ts';

interface Scene {
  queue(): Queue;
  detail(): RecordDetail | null;
  change(next: Queue): void;
  /** Asks for the record anew. */
  look(): void;
}

export interface Decisions {
  /** False where nothing was decided; the bar has said why. */
  decide(verdict: Verdict): Promise<boolean>;
  /** Takes the last decision of this sitting back. */
  undo(): Promise<void>;
  takeBack(decision: number, ids: string[]): Promise<void>;
}

const CHANGED = 409;

export function makeDecisions(desk: Desk, bar: VerdictBar, scene: Scene): Decisions {
  const made: { decision: number; ids: string[] }[] = [];
  let isBusy = false;

  async function decide(verdict: Verdict): Promise<boolean> {
    const records = meant(scene.queue());
    if (isBusy || records.length === 0) return false;
    isBusy = true;
    try {
      return scene.queue().selected.size > 0 ? await onMany(records, verdict) : await onOne(records[0]!, verdict);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      bar.fail(error.status === CHANGED ? `${error.message} This is how it stands now.` : error.message);
      if (error.status === CHANGED) scene.look();
      return false;
    } finally {
      isBusy = false;
    }
  }

  async function onOne(record: RecordLine, verdict: Verdict): Promise<boolean> {
    const seen = scene.detail()?.record;
    const decided = await desk.questions.decide(seen?.id === record.id ? seen : record, verdict);
    made.push({ decision: decided.history.at(-1)!.decision, ids: [record.id] });
    scene.change(afterDecision(withRecord(scene.queue(), decided.record), [record.id]));
    bar.tell(`${said(verdict)}: ${record.scientificName}, ${record.square}.`);
    return true;
  }

  async function onMany(records: RecordLine[], verdict: Verdict): Promise<boolean> {
    const { decision, changed, missing, changedMeanwhile } = await desk.questions.decideMany(records, verdict);
    const left = new Set([...missing, ...changedMeanwhile]);
    const ids = records.map(({ id }) => id).filter((id) => !left.has(id));
    if (decision !== null) made.push({ decision, ids });
    const marked = records.filter(({ id }) => !left.has(id)).reduce((queue, record) => withRecord(queue, { ...record, status: verdict.status ?? record.status }), scene.queue());
    scene.change(afterDecision(marked, ids));
    const rest = left.size === 0 ? '' : ` ${counted(left.size, 'record')} changed meanwhile and ${left.size === 1 ? 'was' : 'were'} left as ${left.size === 1 ? 'it is' : 'they are'}; look again.`;
    bar.tell(`${said(verdict)}: ${counted(changed, 'record')}.${rest}`);
    return true;
  }

  async function undo(): Promise<void> {
    const last = made.at(-1);
    if (last === undefined) bar.tell('There is nothing of this sitting to take back. The history of a record has older decisions.');
    else await takeBack(last.decision, last.ids);
  }

  async function takeBack(decision: number, ids: string[]): Promise<void> {
    try {
      await desk.questions.reverse(decision);
      const at = made.findIndex((one) => one.decision === decision);
      const all = at < 0 ? ids : made.splice(at, 1)[0]!.ids;
      scene.change(afterReversal(scene.queue(), all));
      // How it stands now is for the server to say: someone else may have decided before.
      scene.look();
      bar.tell(`Taken back: ${counted(all.length, 'record stands', 'records stand')} as before.`);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      bar.fail(error.message);
    }
  }

  return { decide, undo, takeBack };
}

const said = ({ status, taxon }: Verdict) => [taxon === undefined ? null : 'Named afresh', status === undefined ? null : STATUS_WORDS[status]].filter((text) => text !== null).join(', ');
