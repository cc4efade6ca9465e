// What lies on the table in Audition: one tracing sheet, and one of the areas it is for, in whose own axes the hand works.

import type { Evaluation } from '../../engine/evaluation.ts';
import { type Pose, after, stay } from '../../geometry/pose.ts';
import type { Sheet, SheetFor } from '../../model/plan.ts';
import type { LaidPlacement } from '../../stitch/laid-placement.ts';
import { areasFor, sheetIds } from '../../stitch/sheet-areas.ts';
import { repeatIn } from '../../stitch/repeat.ts';
import type { Area } from '../../top/area.ts';
import { NOTHING, type Selection } from '../selection.ts';
import { type Session, type SessionState, planOf } from '../store.ts';
import type { Working } from './working.ts';

export interface OnTable {
  /** Undefined when no sheet is for the area yet. */
  readonly sheet: { readonly id: string; readonly sheet: Sheet } | undefined;
  readonly area: Area;
  /** All areas the sheet is for, or the area alone. */
  readonly areas: readonly Area[];
}

/** The sheet on the table and the area of it that is worked on; undefined when the top has no area at all. */
export function onTable(state: SessionState): OnTable | undefined {
  const known = onTableBefore.get(state.evaluation);
  if (known?.working === state.working) return known.on;
  const on = lookOnTable(state);
  onTableBefore.set(state.evaluation, { working: state.working, on });
  return on;
}

/** Asked for at every move of a pointer, and the same as long as the evaluation and what was chosen are. */
const onTableBefore = new WeakMap<Evaluation, { readonly working: Working; readonly on: OnTable | undefined }>();

function lookOnTable(state: SessionState): OnTable | undefined {
  const plan = planOf(state);
  const { areas } = state.evaluation.top;
  const { working } = state;
  const wanted = working.area === undefined ? undefined : areas.find(({ id }) => id === working.area);
  if (working.sheet === undefined && wanted) {
    const id = sheetIds(plan).find((candidate) => areasFor(plan.sheets[candidate]!.for, areas).includes(wanted));
    return laidOnTable(state, id, wanted);
  }
  const chosen = working.sheet !== undefined && working.sheet in plan.sheets ? working.sheet : sheetIds(plan).find((id) => areasFor(plan.sheets[id]!.for, areas).length > 0);
  return laidOnTable(state, chosen, wanted);
}

function laidOnTable(state: SessionState, id: string | undefined, wanted: Area | undefined): OnTable | undefined {
  const { areas } = state.evaluation.top;
  const sheet = id === undefined ? undefined : planOf(state).sheets[id];
  if (id === undefined || !sheet) {
    const area = wanted ?? areas.find(({ kind }) => kind === 'block' || kind === 'panel') ?? areas[0];
    return area && { sheet: undefined, area, areas: [area] };
  }
  const mine = areasFor(sheet.for, areas);
  const area = wanted && mine.includes(wanted) ? wanted : mine[0];
  return area && { sheet: { id, sheet }, area, areas: mine };
}

/** Lays another sheet on the table, or the same sheet on another of its areas; nothing stays picked out but what lies there. */
export function workOn(session: Session, working: Partial<Working>): void {
  session.setState((state) => {
    const next = { ...state.working, ...working };
    const { selection } = state;
    const stays = selection.kind !== 'placement' || working.sheet === undefined || selection.sheet === working.sheet;
    return { working: next, selection: stays ? selection : NOTHING };
  });
}

/** What a new sheet on this area is for: all areas of its kind. */
export function kindOf(area: Area): SheetFor {
  return { kind: area.kind, ...(area.border !== undefined && { border: area.border }) };
}

/** The ids of the placements picked out on a sheet, the one picked first in front. */
export function pickedOn(selection: Selection, sheet: string | undefined): readonly string[] {
  return selection.kind === 'placement' && selection.sheet === sheet ? [selection.placement, ...(selection.also ?? [])] : [];
}

/** A placement as it is laid on the area that is worked on, also while the hand moves it. */
export function laidHere(state: SessionState, placement: string): LaidPlacement | undefined {
  const on = onTable(state);
  if (!on?.sheet) return undefined;
  return laidOn(state, on, placement);
}

/** The same when what lies on the table is known already. */
export function laidOn(state: SessionState, on: OnTable, placement: string): LaidPlacement | undefined {
  return state.evaluation.placements.find((laid) => laid.sheet === on.sheet?.id && laid.placement === placement && laid.areas.includes(on.area.id));
}

/**
 * From the axes a placement is laid in to the quilt: those of the area or, when its repeat runs along the area, of the division
 * it was traced in.
 */
export function axesOf(laid: Pick<LaidPlacement, 'images'>, area: Area): Pose<'area', 'quilt'> {
  return after(laid.images[0] ?? stay<'area'>(), area.frame);
}

/** The same for a placement that is not there yet, by the repeat of its sheet. */
export function axesFor({ sheet, area }: OnTable): Pose<'area', 'quilt'> {
  return axesOf(repeatIn(area, sheet?.sheet.repeat ?? []), area);
}
