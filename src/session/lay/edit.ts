// Commands on the placements picked out on the sheet on the table: flip, turn, nudge, put on the pins, put away. Each is one step of undo.

import type { Draft } from 'immer';
import { fromDegrees } from '../../num/angle.ts';
import { MEANT_TO_MEET } from '../../num/tolerances.ts';
import { carryVec, inverse } from '../../geometry/pose.ts';
import type { Placement, Plan, Registration } from '../../model/plan.ts';
import type { Near } from '../../place/near.ts';
import { changePlan } from '../change-plan.ts';
import { NOTHING } from '../selection.ts';
import { type Session, type SessionState, planOf } from '../store.ts';
import { flipped, middleOf, moveTo, turned, turningPlace } from './moves.ts';
import { laidOn, onTable, pickedOn } from './on-table.ts';
import { pickedLayings } from './pick.ts';
import { type Laid, poseIn, writePose } from './placed.ts';
import { type Laying, layingOf } from './setting.ts';
import { keptEnd } from './trace.ts';

/** Where each of some placements is to lie, and what is to hold it there; ends of passes where they change. */
export interface Lie {
  readonly pose: Laid;
  readonly registrations?: readonly Registration[];
  readonly passes?: Placement['passes'];
}

/** Writes how placements of a sheet lie into a draft of the plan. */
export function writeLies(plan: Draft<Plan>, sheet: string, lies: ReadonlyMap<string, Lie>): void {
  for (const [id, lie] of lies) {
    const placement = plan.sheets[sheet]?.placements[id];
    if (!placement) continue;
    writePose(placement, lie.pose);
    if (lie.registrations) placement.registrations = lie.registrations.map((registration) => ({ ...registration }));
    if (lie.passes) placement.passes = { ...lie.passes };
  }
}

/** Where a placement lies now: where its registrations put it or, when the area is not among those laid, where it last lay. */
export function lies(state: SessionState, laying: Laying): Laid {
  const on = onTable(state);
  return (on && laidOn(state, on, laying.id)?.pose) ?? poseIn(laying.placement);
}

/** The names of some placements for the label of a step: the template's name, or how many. */
export function namedTogether(state: SessionState, layings: readonly Laying[]): string {
  const [only] = layings;
  if (layings.length !== 1 || !only) return `${layings.length} templates`;
  return only.placement.name ?? planOf(state).kit.templates[only.placement.template]?.name ?? 'the template';
}

/** Turns the picked templates over, each about its own upright axis; the stretches that are sewn stay the same. */
export function flipPicked(session: Session): void {
  const state = session.getState();
  const layings = pickedLayings(state);
  if (layings.length === 0) return;
  const lies = new Map(layings.map((laying) => [laying.id, flippedLie(state, laying)] as const));
  changePlan(session, `Flip ${namedTogether(state, layings)}`, (plan) => writeLies(plan, layings[0]!.sheet, lies));
}

function flippedLie(state: SessionState, laying: Laying): Lie {
  const { setting, placement } = laying;
  const over = flipped(setting.shape, lies(state, laying));
  const { pose } = moveTo(setting, placement.registrations, { pose: over, from: over, grip: middleOf(setting.shape), reach: 0, pull: Infinity });
  return { pose, passes: sameStretches(state, laying, pose) };
}

/** The passes of a placement with their ends told so that, under another pose, the same stretches of the needle line are sewn. */
function sameStretches(state: SessionState, laying: Laying, pose: Laid): Placement['passes'] {
  const on = onTable(state);
  const found = new Map((on ? (laidOn(state, on, laying.id)?.passes ?? []) : []).map((pass) => [pass.pass, pass] as const));
  return Object.fromEntries(
    Object.entries(laying.placement.passes).map(([id, pass]) => {
      const laid = found.get(id);
      const line = laid?.kind === 'found' ? laying.setting.needle.lines[laid.needleLine] : undefined;
      if (laid?.kind !== 'found' || !line) return [id, pass];
      const start = keptEnd(laying, pose, line, pass.start, laid.start, MEANT_TO_MEET);
      const stop = pass.stop === 'all-round' ? pass.stop : keptEnd(laying, pose, line, pass.stop, laid.stop, MEANT_TO_MEET);
      return [id, { ...pass, start, stop }];
    }),
  );
}

/** Turns the picked templates clockwise by so many degrees, about a pin where there is one, or else about the middle; within what their pins allow. */
export function turnPicked(session: Session, degrees: number): void {
  movePicked(session, 'Turn', (laying, pose) => turned(pose, turningPlace(laying.setting, laying.placement.registrations), fromDegrees(degrees)));
}

/** Moves the picked templates by so many inches to the right and down as the quilt is seen, within what their pins allow. */
export function nudgePicked(session: Session, dx: number, dy: number): void {
  movePicked(session, 'Nudge', (laying, pose) => slidBy(laying, pose, dx, dy));
}

/** A pose slid by inches on the quilt. */
export function slidBy({ axes }: Laying, pose: Laid, dx: number, dy: number): Laid {
  const by = carryVec(inverse(axes), { x: dx, y: dy });
  return { ...pose, x: pose.x + by.x, y: pose.y + by.y };
}

/** Lays one placement by numbers: inches in the axes it is laid in and degrees, within what its pins allow. */
export function layAt(session: Session, placement: string, to: { readonly x?: number; readonly y?: number; readonly angle?: number }): void {
  const state = session.getState();
  const laying = layingOf(state, placement);
  if (!laying) return;
  const now = lies(state, laying);
  const wished = { ...now, x: to.x ?? now.x, y: to.y ?? now.y, angle: to.angle === undefined ? now.angle : fromDegrees(to.angle) };
  const pose = within(laying, now, wished);
  changePlan(session, `Lay ${namedTogether(state, [laying])} by numbers`, (plan) => writeLies(plan, laying.sheet, new Map([[placement, { pose }]])));
}

function movePicked(session: Session, what: string, wish: (laying: Laying, pose: Laid) => Laid): void {
  const state = session.getState();
  const layings = pickedLayings(state);
  if (layings.length === 0) return;
  const moved = new Map(
    layings.map((laying): readonly [string, Lie] => {
      const now = lies(state, laying);
      return [laying.id, { pose: within(laying, now, wish(laying, now)) }];
    }),
  );
  changePlan(session, `${what} ${namedTogether(state, layings)}`, (plan) => writeLies(plan, layings[0]!.sheet, moved));
}

/** A wished pose as far as the pins allow it. */
export function within({ setting, placement }: Laying, from: Laid, wished: Laid): Laid {
  return moveTo(setting, placement.registrations, { pose: wished, from, grip: middleOf(setting.shape), reach: 0, pull: Infinity }).pose;
}

/** Puts the picked template on what lies within `reach` inches of it, as letting go there would. */
export function pinPicked(session: Session, reach: number): void {
  const state = session.getState();
  const [laying] = pickedLayings(state);
  if (!laying) return;
  const now = lies(state, laying);
  const { pose, made } = moveTo(laying.setting, laying.placement.registrations, { pose: now, from: now, grip: middleOf(laying.setting.shape), reach, pull: Infinity });
  if (made.length === 0) return;
  const registrations = withMade(laying.placement.registrations, made);
  changePlan(session, `Put ${namedTogether(state, [laying])} on the pins`, (plan) => writeLies(plan, laying.sheet, new Map([[laying.id, { pose, registrations }]])));
}

/** Takes the picked pass away or, when no pass is picked, the picked templates with all that is sewn along them. */
export function removePicked(session: Session): void {
  const state = session.getState();
  const { selection } = state;
  const on = onTable(state);
  const picked = pickedOn(selection, on?.sheet?.id);
  if (!on?.sheet || picked.length === 0 || selection.kind !== 'placement') return;
  const { id: sheet, sheet: { placements } } = on.sheet;
  const { placement, pass } = selection;
  if (pass !== undefined && placements[placement]?.passes[pass]) {
    changePlan(session, 'Take a pass away', (plan) => {
      delete plan.sheets[sheet]!.placements[placement]!.passes[pass];
    }, { kind: 'placement', sheet, placement });
    return;
  }
  const layings = pickedLayings(state);
  changePlan(session, `Put ${layings.length > 0 ? namedTogether(state, layings) : 'the template'} away`, (plan) => {
    for (const id of picked) delete plan.sheets[sheet]!.placements[id];
  }, NOTHING);
}

/** Registrations with those that were made of what drew the template. */
export function withMade(held: readonly Registration[], made: readonly Near[]): readonly Registration[] {
  return [...held, ...made.map(({ registration }) => registration)];
}
