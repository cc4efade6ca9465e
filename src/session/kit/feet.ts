// Commands on the feet of the kit. A change of a foot moves every needle line it sews: the plan keeps decisions, and they are solved again.

import type { Foot, Place } from '../../model/plan.ts';
import { changePlan } from '../change-plan.ts';
import { freeId, idFrom } from '../free-id.ts';
import { type Session, planOf } from '../store.ts';
import { pickInKit } from './pick.ts';
import { usesOfFoot } from './uses.ts';

/** A foot to begin with: half an inch across, as most are. */
export const USUAL_FOOT: Foot = { name: 'New foot', diameter: 1 / 2, needleOffset: [0, 0], shank: 'high' };

/** Adds a foot and picks it out; answers with its id. */
export function addFoot(session: Session, foot: Foot): string {
  const { kit } = planOf(session.getState());
  const id = freeId(kit.feet, idFrom(foot.name, 'foot'));
  changePlan(session, `Add ${foot.name}`, (plan) => {
    plan.kit.feet[id] = { ...foot, needleOffset: [...foot.needleOffset] };
  });
  pickInKit(session, { kind: 'foot', foot: id });
  return id;
}

/** Puts a foot on the machine: new placements are laid for it. */
export function putOnMachine(session: Session, id: string): void {
  const foot = planOf(session.getState()).kit.feet[id];
  if (!foot) return;
  changePlan(session, `Put ${foot.name} on the machine`, (plan) => {
    plan.kit.onTheMachine = id;
  });
}

/** Names a foot; a name of nothing but spaces is not taken. */
export function nameFoot(session: Session, id: string, name: string): void {
  const trimmed = name.trim();
  if (!planOf(session.getState()).kit.feet[id] || trimmed === '') return;
  changePlan(session, `Name ${trimmed}`, (plan) => {
    plan.kit.feet[id]!.name = trimmed;
  });
}

/** Says which shank a foot has. */
export function setShank(session: Session, id: string, shank: Foot['shank']): void {
  const foot = planOf(session.getState()).kit.feet[id];
  if (!foot) return;
  changePlan(session, `Shank of ${foot.name}`, (plan) => {
    plan.kit.feet[id]!.shank = shank;
  });
}

/** Gives a foot the diameter and needle that measuring it found, in inches. */
export function setMeasured(session: Session, id: string, diameter: number, needleOffset: Place): void {
  const foot = planOf(session.getState()).kit.feet[id];
  if (!foot) return;
  changePlan(session, `Measure ${foot.name}`, (plan) => {
    Object.assign(plan.kit.feet[id]!, { diameter, needleOffset: [...needleOffset] });
  });
}

/** True when a foot may be taken out of the kit: never the last. */
export function mayDeleteFoot(session: Session): boolean {
  return Object.keys(planOf(session.getState()).kit.feet).length > 1;
}

/** Takes a foot out of the kit; what was laid for it is laid for `instead`. Nothing happens when it is used and nothing is named in its place. */
export function deleteFoot(session: Session, id: string, instead?: string): void {
  const plan = planOf(session.getState());
  const foot = plan.kit.feet[id];
  const other = instead === undefined ? undefined : plan.kit.feet[instead];
  if (!foot || instead === id || !mayDeleteFoot(session)) return;
  if (!other && usesOfFoot(plan, id).length > 0) return;
  changePlan(session, `Delete ${foot.name}`, (draft) => {
    for (const { placements } of Object.values(draft.sheets)) {
      for (const placement of Object.values(placements)) if (placement.foot === id) placement.foot = instead!;
    }
    delete draft.kit.feet[id];
    if (draft.kit.onTheMachine === id) delete draft.kit.onTheMachine;
  });
}
