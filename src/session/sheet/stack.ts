// The stack of tracing sheets for the kind of area on the table: what lies at the left.

import { lettersOf } from '../../num/letters.ts';
import type { SheetFor } from '../../model/plan.ts';
import type { Sheet } from '../../model/plan.ts';
import { areasFor, sheetIds } from '../../stitch/sheet-areas.ts';
import type { Area } from '../../top/area.ts';
import { type OnTable, kindOf, onTable } from '../lay/on-table.ts';
import { type SessionState, planOf } from '../store.ts';

export interface Stacked {
  readonly id: string;
  readonly sheet: Sheet;
  /** A for the first sheet of the stack. */
  readonly letter: string;
  readonly isOnTable: boolean;
}

export interface Stack {
  /** The kind of area the stack is for, without limits. */
  readonly kind: SheetFor;
  /** All areas of that kind. */
  readonly areas: readonly Area[];
  readonly on: OnTable;
  /** From the bottom of the stack to the top. */
  readonly sheets: readonly Stacked[];
}

/** The stack for the area on the table; undefined when the top has no area. */
export function stackOf(state: SessionState): Stack | undefined {
  const on = onTable(state);
  if (!on) return undefined;
  const kind = kindOf(on.area);
  return {
    kind,
    areas: areasFor(kind, state.evaluation.top.areas),
    on,
    sheets: idsInStack(state, kind).map((id, i) => ({ id, sheet: planOf(state).sheets[id]!, letter: lettersOf(i), isOnTable: id === on.sheet?.id })),
  };
}

/** The ids of the sheets for a kind of area, from the bottom up. */
export function idsInStack(state: SessionState, { kind, border }: SheetFor): readonly string[] {
  const plan = planOf(state);
  return sheetIds(plan).filter((id) => {
    const target = plan.sheets[id]!.for;
    return target.kind === kind && (target.border === undefined || border === undefined || target.border === border);
  });
}
