// Closed forms: a circle of radius R whose centre is d inside a line has an arc of 2 R acos(d / R) beyond it.

import { describe, expect, it } from 'vitest';
import { pathLength } from '../../geometry/measure.ts';
import { newPlan } from '../../model/new-plan.ts';
import type { Placement } from '../../model/plan.ts';
import { createSession } from '../store.ts';
import { laidHere, onTable } from './on-table.ts';
import { overhangOf } from './overhang.ts';

/** What hangs over of a circle of 3 in, sewn with a foot of 1/2 in (R = 1 3/4 in), on one 12-inch block with a raw edge all round. */
function over(change: Partial<Placement>, isRaw = true) {
  const plan = newPlan('Over');
  const placement: Placement = { template: 'circle-3', foot: 'half-round', flipped: false, pose: { x: 0, y: 0, angle: 0 }, registrations: [], passes: {}, ...change };
  const borders = isRaw ? [] : [{ width: 6, corners: 'squares' } as const];
  const session = createSession({ ...plan, top: { ...plan.top, borders }, sheets: { s: { name: 'S', for: { kind: 'block' }, chosen: true, placements: { c: placement }, repeat: [], fills: {} } } }, { kind: 'new' });
  const state = session.getState();
  return overhangOf(laidHere(state, 'c')!, onTable(state)!.area, { rawEdge: 0.5, seam: 0.125 });
}

const R = 1.75;

describe('what hangs over', () => {
  it('is nothing while all keeps its distance', () => {
    expect(over({ pose: { x: 3.7, y: -3.7, angle: 0 } })).toBeUndefined();
    expect(over({ pose: { x: 4.1, y: 0, angle: 0 } }, false)).toBeUndefined();
  });

  it('is the arc beyond the allowance along a raw edge', () => {
    const found = over({ pose: { x: 4.5, y: 0, angle: 0 } })!;
    expect(found.length).toBeCloseTo(2 * R * Math.acos((6 - 0.5 - 4.5) / R), 9);
    expect(found.stretches).toHaveLength(1);
    expect(found.nearest).toEqual({ name: 'right edge', isRaw: true, distance: expect.closeTo(6 - 4.5 - R, 9) as number, limit: 0.5 });
  });

  it('is the arc beyond the clearance along a seam', () => {
    const found = over({ pose: { x: 0, y: -5, angle: 33 } }, false)!;
    expect(found.length).toBeCloseTo(2 * R * Math.acos((6 - 0.125 - 5) / R), 9);
    expect(found.nearest).toMatchObject({ name: 'top edge', isRaw: false, limit: 0.125 });
  });

  it('at a corner is the two arcs taken once', () => {
    // The centre stands 1 in from both bounds: each takes an arc of 2 acos(1/R), and the two lap over round the corner.
    const found = over({ pose: { x: 4.5, y: 4.5, angle: 0 } })!;
    const half = Math.acos(1 / R);
    expect(found.length).toBeCloseTo(R * (half + Math.PI / 2 + half), 9);
    expect(found.stretches).toHaveLength(1);
  });

  it('is all of what lies outside', () => {
    expect(over({ pose: { x: 9, y: 0, angle: 0 } })!.length).toBeCloseTo(2 * Math.PI * R, 9);
  });

  it('is of the passes alone, once there are some', () => {
    const pose = { x: 4.5, y: 0, angle: 0 };
    const round = over({ pose, passes: { a: { start: { crosses: 'line:horizontal-centre', nth: 2 }, stop: { crosses: 'line:horizontal-centre' }, way: 'clockwise' } } })!;
    expect(round.length).toBeCloseTo(R * Math.acos(1 / R), 6);
    expect(pathLength(round.stretches[0]!)).toBe(round.length);
  });
});
