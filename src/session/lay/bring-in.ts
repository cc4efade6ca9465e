// A template brought from the shelf to the table: on the sheet that lies there or, where there is none for the area, on a new one.

import type { Draft } from 'immer';
import { type Point, distance } from '../../geometry/point.ts';
import { carry, inverse } from '../../geometry/pose.ts';
import { footOnTheMachine } from '../../model/kit/on-the-machine.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import type { Placement, Plan, Sheet } from '../../model/plan.ts';
import { EYE } from '../../num/tolerances.ts';
import { changePlan } from '../change-plan.ts';
import { freeId } from '../free-id.ts';
import { type Session, type SessionState, planOf } from '../store.ts';
import { onQuilt, onScreen } from '../view.ts';
import { middleOf } from './moves.ts';
import { type OnTable, axesFor, kindOf, laidOn, onTable } from './on-table.ts';

/** A placement ready to be written. */
export interface BroughtIn {
  readonly sheet: string;
  /** The sheet, when there was none for the area. */
  readonly newSheet: Sheet | undefined;
  readonly id: string;
  readonly placement: Placement;
}

/**
 * What laying a template on the area on the table comes to, face up, for the foot on the machine, and with its middle on a place
 * in the axes it is laid in; undefined when there is no area, no such template with a good shape, or no foot.
 */
export function broughtIn(state: SessionState, template: string, at: Point<'area'> = { x: 0, y: 0 }): BroughtIn | undefined {
  const { kit, sheets } = planOf(state);
  const on = onTable(state);
  const made = kit.templates[template];
  const shape = made && shapeOf(made);
  const placements = on?.sheet?.sheet.placements ?? {};
  const onMachine = footOnTheMachine(kit);
  if (!on || !shape?.ok || !onMachine) return undefined;
  const middle = middleOf(shape.value);
  const pose = { x: at.x - middle.x, y: at.y - middle.y, angle: 0 };
  return {
    sheet: on.sheet?.id ?? freeId(sheets, 'sheet'),
    newSheet: on.sheet ? undefined : { name: 'First sheet', for: kindOf(on.area), chosen: true, placements: {}, repeat: [], fills: {} },
    id: freeId(placements, template),
    placement: { template, foot: onMachine.id, flipped: false, pose, registrations: [], passes: {} },
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

/**
 * Lays a template on the middle of the area on the table and picks it out. Where that is out of sight, it lies in the middle of what
 * is seen; and where the same template lies already, a little beside it.
 */
export function layTemplate(session: Session, template: string): void {
  const state = session.getState();
  const on = onTable(state);
  const brought = on && broughtIn(state, template, freePlace(state, on, template));
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

/** So far beside one another lie two of the same template that would otherwise lie as one, in inches each way. */
const BESIDE = 1;

function freePlace(state: SessionState, on: OnTable, template: string): Point<'area'> {
  const { view, table } = state;
  const axes = axesFor(on);
  const seen = onScreen(view, carry(axes, { x: 0, y: 0 }));
  const isSeen = table.width === 0 || (seen.x >= 0 && seen.y >= 0 && seen.x <= table.width && seen.y <= table.height);
  let at: Point<'area'> = isSeen ? { x: 0, y: 0 } : carry(inverse(axes), onQuilt(view, { x: table.width / 2, y: table.height / 2 }));
  const same = Object.entries(on.sheet?.sheet.placements ?? {}).filter(([, placement]) => placement.template === template);
  const middles = same.flatMap(([id]) => {
    const laid = laidOn(state, on, id);
    return laid ? [carry(laid.pose, middleOf(laid.template))] : [];
  });
  while (middles.some((middle) => distance(middle, at) < EYE)) at = { x: at.x + BESIDE, y: at.y + BESIDE };
  return at;
}
