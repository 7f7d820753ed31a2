import type { DoubtTitles } from './doubts.ts';
import type { Questions } from './questions.ts';
import type { Route } from './route.ts';
import type { Session } from './session.ts';

/** What every page of the desk is given. */
export interface Desk {
  session: Session;
  questions: Questions;
  doubts: DoubtTitles;
  go(route: Route): void;
}

/** Puts a page into its host and tells what ends it. */
export type Leave = () => void;
