import { describe, expect, it } from 'vitest';
import { circle, straight } from '../../geometry/path.ts';
import { newPlan } from '../../model/new-plan.ts';
import { layTemplate } from '../lay/bring-in.ts';
import { layAt } from '../lay/edit.ts';
import { onTable, workOn } from '../lay/on-table.ts';
import { addPass, putEnd } from '../sheet/passes.ts';
import { type Session, createSession } from '../store.ts';
import { type Measurable, measuredBetween } from './between.ts';
import { factsOf } from './facts.ts';
import { layEnd, putTapeAway, readTape, sayTape, takeTape, tapTape } from './measuring.ts';
import { thingsOnTable } from './things.ts';

const INCHES = { unit: 'in', smallest: 16 } as const;

/** One 12-inch block in a 4-inch border, with a circle of 3 in on it, laid at a place of the block. */
function withCircle(x = 0, y = 0): { readonly session: Session; readonly id: string } {
  const plan = newPlan('Try');
  const blocks = { setting: 'straight', rows: 1, columns: 1, size: [12, 12], sashing: 0, cornerstones: false } as const;
  const session = createSession({ ...plan, top: { ...plan.top, blocks, borders: [{ width: 4, corners: 'squares' }], clearance: { rawEdge: 0.5, seam: 0.125 } } }, { kind: 'new' });
  workOn(session, { area: 'block:r1c1' });
  layTemplate(session, 'circle-3');
  const { selection } = session.getState();
  if (selection.kind !== 'placement') throw new Error('nothing was laid');
  layAt(session, selection.placement, { x, y });
  return { session, id: selection.placement };
}

describe('the facts', () => {
  it('to the seam: half the block, less how far out the circle lies, less its radius and half the foot', () => {
    const { session } = withCircle(2, 0);
    const facts = factsOf(session.getState())!;
    expect(facts.seam).toMatchObject({ name: 'right edge' });
    expect(facts.seam!.distance).toBeCloseTo(6 - 2 - 1.5 - 0.25, 6);
    expect(facts.angle).toBeCloseTo(0, 9);
  });

  it('are less than nothing over a seam', () => {
    const { session } = withCircle(5, 0);
    expect(factsOf(session.getState())!.seam!.distance).toBeCloseTo(6 - 5 - 1.75, 6);
  });

  it('to the nearest other line: the middles apart less both radii, and which', () => {
    const { session, id } = withCircle(-2, 0);
    putEnd(session, id, addPass(session, id)!, 'stop', 'all-round');
    expect(factsOf(session.getState())!.line).toBeUndefined();
    layTemplate(session, 'circle-6');
    const { selection } = session.getState();
    if (selection.kind !== 'placement') throw new Error('nothing was laid');
    layAt(session, selection.placement, { x: 4.5, y: 0 });
    expect(factsOf(session.getState())!.line).toMatchObject({ name: 'Circle 3' });
    expect(factsOf(session.getState())!.line!.distance).toBeCloseTo(6.5 - 1.75 - 3.25, 6);
  });

  it('the room inside a sewn circle is the circle; outside, it reaches past the seam to the raw edge', () => {
    const { session, id } = withCircle(0, 0);
    putEnd(session, id, addPass(session, id)!, 'stop', 'all-round');
    const inside = factsOf(session.getState())!.room!;
    expect(inside.circle.radius).toBeCloseTo(1.75, 5);
    expect(inside.isHere).toBe(true);
    // In a corner of the 20-inch top: a circle that touches two sides 1/2 in in from the raw edge, and the sewn circle.
    session.setState({ view: { x: 0, y: 0, scale: 10 }, pointer: { x: 30, y: 30 } });
    const outside = factsOf(session.getState())!.room!;
    const r = (Math.SQRT2 * 9.5 - 1.75) / (1 + Math.SQRT2);
    expect(outside.circle.radius).toBeCloseTo(r, 5);
  });

  it('the length is that of all images on this area', () => {
    const { session, id } = withCircle(3, 3);
    putEnd(session, id, addPass(session, id)!, 'stop', 'all-round');
    const { length } = factsOf(session.getState())!;
    expect(length).toMatchObject({ lines: 1 });
    expect(length.sheet).toBeCloseTo(Math.PI * 3.5, 6);
    expect(length.placement).toBeCloseTo(Math.PI * 3.5, 6);
  });
});

describe('between two things', () => {
  const place = (x: number, y: number): Measurable => ({ kind: 'place', at: { x, y } });
  const line = (x1: number, y1: number, x2: number, y2: number): Measurable => ({ kind: 'line', path: straight({ x: x1, y: y1 }, { x: x2, y: y2 }) });

  it('places: Pythagoras, and the way there', () => {
    expect(measuredBetween(place(1, 1), place(4, 5))).toMatchObject({ distance: 5 });
    expect(measuredBetween(place(0, 0), place(3, 3))!.angle!.degrees).toBeCloseTo(45, 9);
    expect(measuredBetween(place(0, 0), place(0, -2))!.angle!.degrees).toBeCloseTo(270, 9);
    expect(measuredBetween(place(2, 2), place(2, 2))!.angle).toBeUndefined();
  });

  it('a place and a line: square to it; two lines: the gap and the angle', () => {
    expect(measuredBetween(place(0, 3), line(-5, 0, 5, 0))).toMatchObject({ distance: 3, to: { x: 0, y: 0 } });
    expect(measuredBetween(line(-5, 0, 5, 0), line(-5, 2, 5, 2))).toMatchObject({ distance: 2, angle: { of: 'lines', degrees: 0 } });
    expect(measuredBetween(line(-5, 0, 5, 0), line(0, -1, 2, 1))!.angle!.degrees).toBeCloseTo(45, 9);
    expect(measuredBetween(line(-5, 0, 5, 0), { kind: 'line', path: circle({ x: 0, y: 5 }, 2) })).toMatchObject({ distance: 3 });
  });
});

describe('the tape', () => {
  it('is laid by taps on what is near, and begins anew with the third', () => {
    const { session } = withCircle(2, 0);
    takeTape(session);
    const middle = onTable(session.getState())!.area.frame;
    tapTape(session, { x: middle.x + 0.05, y: middle.y - 0.05 }, 0.1);
    expect(session.getState().measuring!.from).toEqual({ on: 'centre' });
    tapTape(session, { x: middle.x + 6.03, y: middle.y + 1.2 }, 0.1);
    expect(session.getState().measuring!.to).toEqual({ on: 'line:edge-right' });
    expect(sayTape(readTape(session.getState())!, INCHES)).toEqual(['From the centre to the right edge: 6 in.', 'The way there runs level, to the right.']);
    tapTape(session, { x: middle.x + 3.9, y: middle.y + 3.3 }, 0.05);
    expect(session.getState().measuring).toEqual({ from: { at: { x: middle.x + 3.9, y: middle.y + 3.3 } }, to: undefined });
    putTapeAway(session);
    expect(readTape(session.getState())).toBeUndefined();
  });

  it('is laid from lists as well, and stays on what is moved', () => {
    const { session, id } = withCircle(2, 0);
    const edge = thingsOnTable(session.getState()).find(({ name }) => name === 'edge of Circle 3')!;
    layEnd(session, 'from', { on: edge.id });
    layEnd(session, 'to', { on: 'line:vertical-centre' });
    expect(readTape(session.getState())!.measured!.distance).toBeCloseTo(0.5, 6);
    layAt(session, id, { x: 3 });
    expect(readTape(session.getState())!.measured!.distance).toBeCloseTo(1.5, 6);
  });

  it('every thing has a name of its own', () => {
    const things = thingsOnTable(withCircle().session.getState());
    expect(new Set(things.map(({ id }) => id)).size).toBe(things.length);
    expect(things.every(({ name }) => name.length > 2)).toBe(true);
  });
});
