// Commands that lay another state of the same plan on the table: one that came from another window, or an earlier one.

import { applyPatches } from 'immer';
import { evaluate } from '../../engine/evaluate.ts';
import type { Plan } from '../../model/plan.ts';
import { changePlan } from '../change-plan.ts';
import type { History } from '../history.ts';
import { type Session, planOf } from '../store.ts';
import { patchesBetween, sharing } from './differences.ts';

/** Takes a state of this plan as it is, with its history. How it is looked at and what is picked out stay. */
export function followPlan(session: Session, plan: Plan, history: History): void {
  const shared = sharing(planOf(session.getState()), plan);
  session.setState({ evaluation: evaluate(shared), history, gesture: undefined });
}

/** Makes the plan say what another state of it said, as one step of undo. */
export function returnTo(session: Session, label: string, plan: Plan): void {
  const patches = patchesBetween(planOf(session.getState()), plan);
  changePlan(session, label, (draft) => {
    applyPatches(draft, patches);
  });
}
