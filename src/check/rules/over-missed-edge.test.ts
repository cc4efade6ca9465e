import { describe, expect, it } from 'vitest';
import { ONE_BLOCK, inputOf, planOf, sheetOf } from '../../../test/support/slab-plan.ts';
import type { Pass, Template } from '../../model/plan.ts';
import { overMissedEdge } from './over-missed-edge.ts';

// A bar of 6 in with a right-angled notch in its upper edge: the foot, of radius 1/4, touches both sides of the notch
// at once where its centre is 1/4 from either, so it misses 1/4 of each side, and 1/2 in all.
const NOTCHED: Template = { name: 'Notched', outline: 'M 0 0 L 2 0 L 3 1 L 4 0 L 6 0 L 6 2 L 0 2 Z', thickness: 0.25, grips: 'none' };

function sewn(pass: Pass, template: Template = NOTCHED) {
  const plan = planOf(ONE_BLOCK, {
    s: sheetOf({ p: { template: 't', foot: 'round', flipped: false, pose: { x: -3, y: 0, angle: 0 }, registrations: [], passes: { a: pass } } }),
  });
  return inputOf({ ...plan, kit: { ...plan.kit, templates: { t: template } } });
}

const quarter = Math.PI / 8;
const eighth = Math.PI / 16;
/** Along the needle line to its sharp place: a quarter round, 2 in, an eighth round at the lip, and the side of the notch less what is missed. */
const TO_NOTCH = quarter + 2 + eighth + Math.SQRT2 - 0.25;

describe('a pass over a missed edge', () => {
  it('is told, with the edge the foot misses', () => {
    const [found, ...more] = overMissedEdge(sewn({ start: { along: 1 }, stop: { along: 6 }, way: 'clockwise' }));
    expect(more).toEqual([]);
    expect(found).toMatchObject({
      code: 'over-missed-edge',
      severity: 'warning',
      message: 'The foot misses 1/2 in of the edge of Notched, and the needle line turns sharply there.',
      limit: 0,
      where: { pass: 'a', lines: ['block:r1c1/s/p/a/0'] },
    });
    expect(found!.measured).toBeCloseTo(0.5, 6);
    // The needle turns straight above the bottom of the notch, 1/4 in times the square root of two.
    expect(found!.where.at![0]).toBeCloseTo(6, 9);
    expect(found!.where.at![1]).toBeCloseTo(6 + 1 - Math.SQRT2 / 4, 9);
  });

  it('is not told of a pass that stops exactly there, nor of one elsewhere', () => {
    expect(overMissedEdge(sewn({ start: { along: 1 }, stop: { along: TO_NOTCH }, way: 'clockwise' }))).toEqual([]);
    expect(overMissedEdge(sewn({ start: { along: TO_NOTCH }, stop: { along: 6 }, way: 'clockwise' }))).toEqual([]);
    expect(overMissedEdge(sewn({ start: { along: 1 }, stop: { along: 2 }, way: 'clockwise' }))).toEqual([]);
  });

  it('is told just beyond, and of passes that come the other way or all round', () => {
    expect(overMissedEdge(sewn({ start: { along: 1 }, stop: { along: TO_NOTCH + 0.01 }, way: 'clockwise' }))).toHaveLength(1);
    expect(overMissedEdge(sewn({ start: { along: 6 }, stop: { along: 1 }, way: 'counterclockwise' }))).toHaveLength(1);
    expect(overMissedEdge(sewn({ start: { along: 1 }, stop: 'all-round', way: 'clockwise' }))).toHaveLength(1);
    // The long way round, over the start of the needle line and not over the notch.
    expect(overMissedEdge(sewn({ start: { along: 1 }, stop: { along: 6 }, way: 'counterclockwise' }))).toEqual([]);
  });

  it('is not told where the foot fits: an inside curve wider than the foot', () => {
    const round: Template = { name: 'Round', outline: 'M 0 0 L 2 0 A 1 1 0 0 0 4 0 L 6 0 L 6 2 L 0 2 Z', thickness: 0.25, grips: 'none' };
    expect(overMissedEdge(sewn({ start: { along: 1 }, stop: 'all-round', way: 'clockwise' }, round))).toEqual([]);
  });
});
