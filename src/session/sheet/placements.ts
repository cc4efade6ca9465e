// Commands on single placements of the sheet on the table: their name, template and foot, and their order. Each is one step of undo.

import type { Draft } from 'immer';
import type { Placement } from '../../model/plan.ts';
import { changePlan } from '../change-plan.ts';
import { freeId } from '../free-id.ts';
import { onTable, pickedOn } from '../lay/on-table.ts';
import { type Session, type SessionState, planOf } from '../store.ts';

/** What a placement is called: its own name, or its template's. */
export function placementName(state: SessionState, sheet: string, placement: string): string {
  const plan = planOf(state);
  const found = plan.sheets[sheet]?.placements[placement];
  return found?.name ?? plan.kit.templates[found?.template ?? '']?.name ?? placement;
}

/** Names a placement; a name of nothing but spaces gives it its template's again. */
export function renamePlacement(session: Session, sheet: string, placement: string, name: string): void {
  changePlacement(session, sheet, placement, 'Name the placement', (draft) => {
    if (name.trim() === '') delete draft.name;
    else draft.name = name.trim();
  });
}

/** Lays another template of the kit in its place; pins and passes stay as they were told. */
export function changeTemplate(session: Session, sheet: string, placement: string, template: string): void {
  const found = planOf(session.getState()).kit.templates[template];
  if (!found) return;
  changePlacement(session, sheet, placement, `Lay ${found.name} instead`, (draft) => {
    draft.template = template;
  });
}

/** Sews it with another foot of the kit. */
export function changeFoot(session: Session, sheet: string, placement: string, foot: string): void {
  const found = planOf(session.getState()).kit.feet[foot];
  if (!found) return;
  changePlacement(session, sheet, placement, `Sew with ${found.name}`, (draft) => {
    draft.foot = foot;
  });
}

/** How far a duplicate lies beside what it was made from, in inches each way. */
const BESIDE = 1;

/** Lays a second of each picked placement a little beside it, free of pins, and picks those out. */
export function duplicatePicked(session: Session): void {
  const state = session.getState();
  const on = onTable(state);
  const picked = pickedOn(state.selection, on?.sheet?.id);
  if (!on?.sheet || picked.length === 0) return;
  const { id: sheet } = on.sheet;
  const placements: { [id: string]: Placement } = { ...on.sheet.sheet.placements };
  const made: { readonly id: string; readonly placement: Placement }[] = [];
  for (const id of picked) {
    const from = placements[id];
    if (!from) continue;
    const placement: Placement = { ...from, pose: { ...from.pose, x: from.pose.x + BESIDE, y: from.pose.y + BESIDE }, registrations: [] };
    const newId = freeId(placements, id);
    placements[newId] = placement;
    made.push({ id: newId, placement });
  }
  const [first, ...also] = made.map(({ id }) => id);
  if (first === undefined) return;
  changePlan(
    session,
    made.length === 1 ? `Duplicate ${placementName(state, sheet, picked[0]!)}` : `Duplicate ${made.length} templates`,
    (plan) => {
      for (const { id, placement } of made) plan.sheets[sheet]!.placements[id] = placement as Draft<Placement>;
    },
    { kind: 'placement', sheet, placement: first, ...(also.length > 0 && { also }) },
  );
}

/** Puts a placement of a sheet away, with all that is sewn along it. */
export function putPlacementAway(session: Session, sheet: string, placement: string): void {
  const state = session.getState();
  if (!planOf(state).sheets[sheet]?.placements[placement]) return;
  const { selection } = state;
  const goes = selection.kind === 'placement' && selection.sheet === sheet && selection.placement === placement;
  changePlan(
    session,
    `Put ${placementName(state, sheet, placement)} away`,
    (plan) => {
      delete plan.sheets[sheet]!.placements[placement];
    },
    goes ? { kind: 'nothing' } : selection,
  );
}

function changePlacement(session: Session, sheet: string, placement: string, label: string, change: (draft: Draft<Placement>) => void): void {
  if (!planOf(session.getState()).sheets[sheet]?.placements[placement]) return;
  changePlan(session, label, (plan) => change(plan.sheets[sheet]!.placements[placement]!));
}
