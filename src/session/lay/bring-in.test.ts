import { describe, expect, it } from 'vitest';
import { newPlan } from '../../model/new-plan.ts';
import type { Plan } from '../../model/plan.ts';
import { lookAs, sizeTable } from '../look.ts';
import { type Session, createSession, planOf } from '../store.ts';
import { layTemplate } from './bring-in.ts';

function tableWith(change: (plan: Plan) => Plan = (plan) => plan): Session {
  return createSession(change(newPlan('Try')), { kind: 'new' });
}

const placements = (session: Session) => Object.values(planOf(session.getState()).sheets)[0]!.placements;

describe('a template laid from the shelf', () => {
  it('is laid for the foot on the machine, whatever the one before it was laid for', () => {
    const session = tableWith((plan) => ({ ...plan, kit: { ...plan.kit, onTheMachine: Object.keys(plan.kit.feet)[2]! } }));
    layTemplate(session, 'circle-3');
    expect(placements(session)['circle-3']!.foot).toBe(Object.keys(planOf(session.getState()).kit.feet)[2]);
  });

  it('lies on the middle of the area; a second of its kind a little beside it, another kind on the middle as well', () => {
    const session = tableWith();
    layTemplate(session, 'circle-3');
    layTemplate(session, 'circle-3');
    layTemplate(session, 'circle-3');
    layTemplate(session, 'circle-6');
    const at = Object.entries(placements(session)).map(([id, { pose }]) => [id, pose.x, pose.y]);
    expect(at).toEqual([['circle-3', 0, 0], ['circle-3-2', 1, 1], ['circle-3-3', 2, 2], ['circle-6', 0, 0]]);
  });

  it('lies in the middle of what is seen, where the middle of the area is out of sight', () => {
    const session = tableWith();
    sizeTable(session, { width: 400, height: 300 });
    // 100 pixels to the inch from the block's own corner: its middle, 6 in from there either way, lies outside.
    lookAs(session, { x: 0, y: 0, scale: 100 });
    layTemplate(session, 'circle-3');
    // The middle of the table is 2 in across and 1 1/2 in down from the corner.
    expect(placements(session)['circle-3']!.pose).toMatchObject({ x: 2 - 6, y: 1.5 - 6 });
  });

  it('is one step of undo and is picked out', () => {
    const session = tableWith();
    layTemplate(session, 'circle-3');
    expect(session.getState().history.past).toHaveLength(1);
    expect(session.getState().selection).toMatchObject({ kind: 'placement', placement: 'circle-3' });
  });
});
