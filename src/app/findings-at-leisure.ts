// The findings as those see them who need not have them at once: looked for in spare moments after each change and never while a
// hand moves something; until then those from before stand.

import type { Finding } from '../check/finding.ts';
import { findInSteps, knownFindings } from '../engine/evaluate.ts';
import type { Session } from '../session/store.ts';
import { inSteps } from './in-steps.ts';

export interface FindingsAtLeisure {
  /** Nothing as long as a plan newly laid on the table has not been checked once. */
  readonly get: () => readonly Finding[] | undefined;
  readonly subscribe: (listener: () => void) => () => void;
}

const bySession = new WeakMap<Session, FindingsAtLeisure>();

/** One for each session, from the first time it is asked for. */
export function findingsAtLeisure(session: Session, work = inSteps): FindingsAtLeisure {
  const before = bySession.get(session);
  if (before) return before;
  let found = knownFindings(session.getState().evaluation.plan);
  let giveUp = () => {};
  const listeners = new Set<() => void>();
  const say = (next: readonly Finding[] | undefined) => {
    if (next === found) return;
    found = next;
    for (const listener of [...listeners]) listener();
  };
  const look = () => {
    giveUp();
    const { evaluation, gesture } = session.getState();
    if (gesture) return;
    const known = knownFindings(evaluation.plan);
    if (known) return say(known);
    giveUp = work(findInSteps(evaluation), () => say(knownFindings(evaluation.plan)));
  };
  session.subscribe((state, earlier) => {
    if (state.laid !== earlier.laid) say(knownFindings(state.evaluation.plan));
    if (state.evaluation !== earlier.evaluation || !state.gesture !== !earlier.gesture) look();
  });
  look();
  const made: FindingsAtLeisure = {
    get: () => found,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
  bySession.set(session, made);
  return made;
}
