// Picking placements out on the sheet on the table.

import { select, selectNothing } from '../look.ts';
import type { Session, SessionState } from '../store.ts';
import { onTable, pickedOn } from './on-table.ts';
import { type Laying, layingOf } from './setting.ts';

/** The placements picked out on the sheet on the table, with what they are moved among. */
export function pickedLayings(state: SessionState): readonly Laying[] {
  const on = onTable(state);
  return pickedOn(state.selection, on?.sheet?.id).flatMap((id) => layingOf(state, id) ?? []);
}

/** Picks a placement out, alone or with those picked before; one that was picked with others is left out again. */
export function pickPlacement(session: Session, sheet: string, placement: string, withOthers = false): void {
  const { selection } = session.getState();
  const before = pickedOn(selection, sheet);
  if (!withOthers || before.length === 0) return select(session, { kind: 'placement', sheet, placement });
  pickPlacements(session, sheet, before.includes(placement) ? before.filter((id) => id !== placement) : [...before, placement]);
}

/** Picks several placements of a sheet out, or nothing. */
export function pickPlacements(session: Session, sheet: string, placements: readonly string[]): void {
  const [first, ...also] = placements;
  if (first === undefined) selectNothing(session);
  else select(session, { kind: 'placement', sheet, placement: first, ...(also.length > 0 && { also }) });
}

/** Picks the placement that comes so many after the one picked now, round the sheet. */
export function pickNext(session: Session, step: 1 | -1): void {
  const state = session.getState();
  const on = onTable(state);
  if (!on?.sheet) return;
  const ids = Object.keys(on.sheet.sheet.placements);
  const [now] = pickedOn(state.selection, on.sheet.id);
  const at = now === undefined ? (step === 1 ? -1 : 0) : ids.indexOf(now);
  const next = ids[(at + step + ids.length) % ids.length];
  if (next !== undefined) pickPlacement(session, on.sheet.id, next);
}
