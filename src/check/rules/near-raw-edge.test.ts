import { describe, expect, it } from 'vitest';
import { ONE_BLOCK, slabAt, slabs } from '../../../test/support/slab-plan.ts';
import { nearRawEdge } from './near-raw-edge.ts';

// The block's centre lies 6 in from each raw edge, and the needle line 1/4 in above the slab.
const lineAt = (depth: number) => slabs(ONE_BLOCK, { p: slabAt(-3, depth - 6 + 0.25, 1, 5) });

describe('the allowance along the raw edge', () => {
  it('is crossed by a line 3/8 in from the edge', () => {
    const [found, ...more] = nearRawEdge(lineAt(0.375));
    expect(more).toEqual([]);
    expect(found).toMatchObject({
      code: 'near-raw-edge',
      severity: 'error',
      message: 'The needle line of Slab comes to 3/8 in from the raw edge. The allowance is 1/2 in.',
      measured: 0.375,
      limit: 0.5,
      where: { area: 'block:r1c1', sheet: 's', placement: 'p', pass: 'a', lines: ['block:r1c1/s/p/a/0'] },
    });
    expect(found!.where.at![1]).toBe(0.375);
  });

  it('is kept by a line exactly at it, and by one inside', () => {
    expect(nearRawEdge(lineAt(0.5))).toEqual([]);
    expect(nearRawEdge(lineAt(0.75))).toEqual([]);
  });

  it('says when a line runs over the edge itself, and by how much', () => {
    expect(nearRawEdge(lineAt(-0.25))).toMatchObject([{ message: 'The needle line of Slab runs 1/4 in over the raw edge.', measured: -0.25 }]);
  });

  it('is held against the needle, not the foot', () => {
    const input = lineAt(0.5);
    const nearer = { ...input, lines: input.lines.map((line) => ({ ...line, needleOffset: { x: 0, y: -0.0625 } })) };
    expect(nearRawEdge(nearer)).toMatchObject([{ measured: 0.4375 }]);
  });

  it('tells all images of a pass at once, and the worst', () => {
    // Turned four times, the line comes as near to all four sides.
    const [found, ...more] = nearRawEdge(slabs(ONE_BLOCK, { p: slabAt(-3, -5.375, 1, 5) }, { repeat: [{ turn: 4 }] }));
    expect(more).toEqual([]);
    expect(found!.where.lines).toHaveLength(4);
    expect(found!.measured).toBeCloseTo(0.375, 12);
    expect(found!.message).toContain('It is so in 4 places.');
  });

  it('measures arcs, not their corners', () => {
    // Round the corner of the slab the needle turns about it at 1/4 in: from (-1/4, 0) to (0, -1/4), turned 45 degrees its
    // middle lies 1/4 in above the corner.
    const round = slabs(ONE_BLOCK, { p: slabAt(0, -5.375, 0, 1, { angle: 45, passes: { a: { start: { along: 12 }, stop: { along: 0.5 }, way: 'clockwise' } } }) });
    expect(nearRawEdge(round)[0]!.measured).toBeCloseTo(0.375, 12);
  });

  it('writes a miss too small for sixteenths so that it can be told from the limit', () => {
    expect(nearRawEdge(lineAt(0.499))[0]!.message).toBe('The needle line of Slab comes to 0.499 in from the raw edge. The allowance is 1/2 in.');
  });
});
