// Commands that change the plan. A change is one step of undo; a gesture, however many moves it takes, is one step as
// well, and giving it up returns to the plan it began with.

import { type Draft, produceWithPatches } from 'immer';
import { evaluate, setOutMoving } from '../engine/evaluate.ts';
import type { Plan } from '../model/plan.ts';
import { type HistoryStep, NO_HISTORY, recorded, redone, undone } from './history.ts';
import { NOTHING, type Selection } from './selection.ts';
import { type PlanSource, type Session, planOf } from './store.ts';
import { fitTop } from './look.ts';

export type Recipe = (plan: Draft<Plan>) => void;

/** Puts another plan on the table, with its own history if it was kept; that of the one before goes with it. */
export function openPlan(session: Session, plan: Plan, source: PlanSource, history = NO_HISTORY): void {
  session.setState(({ print, laid }) => ({
    evaluation: evaluate(plan),
    source,
    laid: laid + 1,
    savedAfter: history.past.at(-1),
    history,
    gesture: undefined,
    inHand: undefined,
    foot: undefined,
    selection: NOTHING,
    kitPick: undefined,
    pencil: undefined,
    settingOut: undefined,
    // The area chosen for printing belonged to the plan before.
    print: { ...print, area: undefined },
  }));
  fitTop(session);
}

/** Says that the plan, as it was after a step of its history, lies in a file of this name. */
export function markSaved(session: Session, after: HistoryStep | undefined, name: string): void {
  session.setState({ savedAfter: after, source: { kind: 'file', name } });
}

/** Changes the plan in one step of undo; a recipe that changes nothing leaves no step. */
export function changePlan(session: Session, label: string, recipe: Recipe, selection?: Selection): void {
  keepGesture(session);
  const state = session.getState();
  const [plan, forward, back] = produceWithPatches(planOf(state), recipe);
  if (plan === planOf(state)) return;
  const step = { label, forward, back, selectedBefore: state.selection, selectedAfter: selection ?? state.selection };
  session.setState({ evaluation: evaluate(plan), history: recorded(state.history, step), selection: step.selectedAfter });
}

/** Begins a change that takes many moves. One that is still under way is kept first. */
export function beginGesture(session: Session, label: string): void {
  keepGesture(session);
  const state = session.getState();
  session.setState({ gesture: { label, from: planOf(state), settled: state.evaluation, forward: [], back: [], selectedBefore: state.selection } });
}

/**
 * Changes the plan within a gesture. The recipe tells the whole change since the gesture began, not since the last move. Everything
 * follows at once but the findings, which are looked for once the hand has let go.
 */
export function moveGesture(session: Session, recipe: Recipe): void {
  const { gesture } = session.getState();
  if (!gesture) return;
  const [plan, forward, back] = produceWithPatches(gesture.from, recipe);
  session.setState({ evaluation: setOutMoving(plan, gesture.settled), gesture: { ...gesture, forward, back } });
}

/** Lets go: what the gesture came to becomes one step of undo. */
export function keepGesture(session: Session): void {
  const { gesture, history, selection, evaluation } = session.getState();
  if (!gesture) return;
  const { label, forward, back, selectedBefore, settled } = gesture;
  if (forward.length === 0) return session.setState({ gesture: undefined, inHand: undefined, evaluation: settled });
  const step = { label, forward, back, selectedBefore, selectedAfter: selection };
  session.setState({ gesture: undefined, inHand: undefined, evaluation: evaluate(evaluation.plan), history: recorded(history, step) });
}

/** Gives the gesture up: everything is as it was when it began. */
export function abandonGesture(session: Session): void {
  const { gesture } = session.getState();
  if (!gesture) return;
  session.setState({ gesture: undefined, evaluation: gesture.settled, selection: gesture.selectedBefore, inHand: undefined });
}

/** Takes the last step back; during a gesture, gives the gesture up. */
export function undo(session: Session): void {
  const state = session.getState();
  if (state.gesture) return abandonGesture(session);
  const stepped = undone(planOf(state), state.history);
  if (stepped) session.setState({ evaluation: evaluate(stepped.plan), history: stepped.history, selection: stepped.selection });
}

/** Does again what was undone last. */
export function redo(session: Session): void {
  const state = session.getState();
  if (state.gesture) return;
  const stepped = redone(planOf(state), state.history);
  if (stepped) session.setState({ evaluation: evaluate(stepped.plan), history: stepped.history, selection: stepped.selection });
}
