// A template brought from the shelf to the table: on the sheet that lies there or, where there is none for the area, on a new one.

import type { Draft } from 'immer';
import type { Point } from '../../geometry/point.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import type { Placement, Plan, Sheet } from '../../model/plan.ts';
import { changePlan } from '../change-plan.ts';
import { type Session, type SessionState, planOf } from '../store.ts';
import { middleOf } from './moves.ts';
import { kindOf, onTable } from './on-table.ts';

/** A placement ready to be written. */
export interface BroughtIn {
  readonly sheet: string;
  /** The sheet, when there was none for the area. */
  readonly newSheet: Sheet | undefined;
  readonly id: string;
  readonly placement: Placement;
}

/**
 * What laying a template on the area on the table comes to, face up and with its middle on a place in the axes it is laid in;
 * undefined when there is no area, no such template with a good shape, or no foot.
 */
export function broughtIn(state: SessionState, template: string, at: Point<'area'> = { x: 0, y: 0 }): BroughtIn | undefined {
  const { kit, sheets } = planOf(state);
  const on = onTable(state);
  const made = kit.templates[template];
  const shape = made && shapeOf(made);
  const placements = on?.sheet?.sheet.placements ?? {};
  const foot = [Object.values(placements).at(-1)?.foot, ...Object.keys(kit.feet)].find((id) => id !== undefined && id in kit.feet);
  if (!on || !shape?.ok || foot === undefined) return undefined;
  const middle = middleOf(shape.value);
  const pose = { x: at.x - middle.x, y: at.y - middle.y, angle: 0 };
  return {
    sheet: on.sheet?.id ?? freeId(sheets, 'sheet'),
    newSheet: on.sheet ? undefined : { name: 'First sheet', for: kindOf(on.area), chosen: true, placements: {}, repeat: [], fills: {} },
    id: freeId(placements, template),
    placement: { template, foot, flipped: false, pose, registrations: [], passes: {} },
  };
}

/** Writes what is brought in into a draft of the plan; the draft gets objects of its own, since a hand goes on to change them. */
export function writeBroughtIn(plan: Draft<Plan>, { sheet, newSheet, id, placement }: BroughtIn): void {
  if (newSheet) {
    plan.sheets[sheet] = { ...newSheet, placements: {} } as Draft<Sheet>;
    plan.sheetOrder?.push(sheet);
  }
  plan.sheets[sheet]!.placements[id] = { ...placement, pose: { ...placement.pose } } as Draft<Placement>;
}

/** Lays a template on the middle of the area on the table and picks it out. */
export function layTemplate(session: Session, template: string): void {
  const state = session.getState();
  const brought = broughtIn(state, template);
  if (!brought) return;
  changePlan(session, `Lay ${nameOfTemplate(state, template)}`, (plan) => writeBroughtIn(plan, brought), {
    kind: 'placement',
    sheet: brought.sheet,
    placement: brought.id,
  });
}

/** A template's name, for labels of steps. */
export function nameOfTemplate(state: SessionState, template: string): string {
  return planOf(state).kit.templates[template]?.name ?? 'a template';
}

/** The name itself if it is free among the keys of a map, or else with the first number that makes it so. */
function freeId(taken: { readonly [id: string]: unknown }, name: string): string {
  for (let i = 1; ; i++) {
    const id = i === 1 ? name : `${name}-${i}`;
    if (!(id in taken)) return id;
  }
}
