// Undo and redo: what was changed, step by step, as patches to the plan. It goes all the way back.

import { type Patch, applyPatches } from 'immer';
import type { Plan } from '../model/plan.ts';
import type { Selection } from './selection.ts';

export interface HistoryStep {
  /** What was done, in words: "Name the plan". */
  readonly label: string;
  readonly forward: readonly Patch[];
  readonly back: readonly Patch[];
  readonly selectedBefore: Selection;
  readonly selectedAfter: Selection;
}

export interface History {
  /** The last thing done comes last. */
  readonly past: readonly HistoryStep[];
  /** The next thing to redo comes last. */
  readonly future: readonly HistoryStep[];
}

export const NO_HISTORY: History = { past: [], future: [] };

export interface Stepped {
  readonly plan: Plan;
  readonly history: History;
  readonly selection: Selection;
}

/** The history with one more step done; what could be redone is no more. */
export function recorded(history: History, step: HistoryStep): History {
  return { past: [...history.past, step], future: [] };
}

/** The plan before the last step, or undefined when there is none. */
export function undone(plan: Plan, history: History): Stepped | undefined {
  const step = history.past.at(-1);
  if (!step) return undefined;
  return {
    plan: applyPatches(plan, step.back),
    history: { past: history.past.slice(0, -1), future: [...history.future, step] },
    selection: step.selectedBefore,
  };
}

/** The plan after the step undone last, or undefined when there is none. */
export function redone(plan: Plan, history: History): Stepped | undefined {
  const step = history.future.at(-1);
  if (!step) return undefined;
  return {
    plan: applyPatches(plan, step.forward),
    history: { past: [...history.past, step], future: history.future.slice(0, -1) },
    selection: step.selectedAfter,
  };
}
