import { describe, expect, it } from 'vitest';
import type { Top } from '../../model/plan.ts';
import { ONE_BLOCK, slabAt, slabs } from '../../../test/support/slab-plan.ts';
import { keepOut } from './keep-out.ts';

/** A round keep-out of radius 1 about the block's centre. */
const around = (clearance?: number): Top => ({
  ...ONE_BLOCK,
  keepOuts: { bird: { name: 'Bird', outline: 'M 5 6 A 1 1 0 0 1 7 6 A 1 1 0 0 1 5 6 Z', ...(clearance !== undefined && { clearance }) } },
});
/** A level line of 4 in, its middle so far above the centre. */
const lineAbove = (top: Top, above: number) => slabs(top, { p: slabAt(-3, -above + 0.25, 1, 5) });

describe('a keep-out', () => {
  it('is entered by a chord: sqrt 3 long at half the radius', () => {
    const found = keepOut(lineAbove(around(), 0.5));
    expect(found).toMatchObject([{ code: 'in-keep-out', severity: 'error', message: 'The needle line of Slab enters Bird: 1 3/4 in of it lie inside.', limit: 0 }]);
    expect(found[0]!.measured).toBeCloseTo(Math.sqrt(3), 9);
    expect(found[0]!.where.at![0]).toBeCloseTo(6, 9);
    expect(found[0]!.where.at![1]).toBeCloseTo(5.5, 9);
  });

  it('is not entered by a line that touches it, nor by one that stays away', () => {
    expect(keepOut(lineAbove(around(), 1))).toEqual([]);
    expect(keepOut(lineAbove(around(), 1.5))).toEqual([]);
  });

  it('is entered by a line that lies wholly inside', () => {
    const large: Top = { ...ONE_BLOCK, keepOuts: { all: { name: 'Panel', outline: 'M 1 1 L 11 1 L 11 11 L 1 11 Z' } } };
    expect(keepOut(lineAbove(large, 0))[0]!.measured).toBeCloseTo(4, 9);
  });

  it('has a clearance: nearer breaks it, exactly at it does not', () => {
    const found = keepOut(lineAbove(around(0.25), 1.125));
    expect(found).toMatchObject([{ code: 'near-keep-out', message: 'The needle line of Slab comes to 1/8 in from Bird. It asks for 1/4 in.', limit: 0.25 }]);
    expect(found[0]!.measured).toBeCloseTo(0.125, 12);
    expect(keepOut(lineAbove(around(0.25), 1.25))).toEqual([]);
    expect(keepOut(lineAbove(around(0.25), 2))).toEqual([]);
  });
});
