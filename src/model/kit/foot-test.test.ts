import { describe, expect, it } from 'vitest';
import { random } from '../../num/random.ts';
import { type FourGaps, measureFoot } from './foot-test.ts';

describe('measuring a foot on four sides', () => {
  it('a half-inch foot leaves a quarter inch all round (common practice)', () => {
    expect(measureFoot({ left: 1 / 4, right: 1 / 4, behind: 1 / 4, front: 1 / 4 })).toEqual({ kind: 'measured', diameter: 1 / 2, needleOffset: [0, 0], apart: 0 });
  });

  it('a 9/16 foot puts the line 1/32 farther out than 1/2 (a maker’s worked example)', () => {
    const gap = 1 / 4 + 1 / 32;
    expect(measureFoot({ left: gap, right: gap, behind: gap, front: gap })).toEqual({ kind: 'measured', diameter: 9 / 16, needleOffset: [0, 0], apart: 0 });
  });

  it('a needle 1/32 to the left sews nearer to a template at its left', () => {
    expect(measureFoot({ left: 7 / 32, right: 9 / 32, behind: 1 / 4, front: 1 / 4 })).toEqual({ kind: 'measured', diameter: 1 / 2, needleOffset: [-1 / 32, 0], apart: 0 });
    expect(measureFoot({ left: 1 / 4, right: 1 / 4, behind: 9 / 32, front: 7 / 32 })).toMatchObject({ needleOffset: [0, 1 / 32] });
  });

  it('is the least-squares answer: no foot near it explains uneven gaps better, seed 12', () => {
    const { between } = random(12);
    const misfit = (g: FourGaps, r: number, x: number, y: number) => (g.left - r - x) ** 2 + (g.right - r + x) ** 2 + (g.behind - r - y) ** 2 + (g.front - r + y) ** 2;
    for (let i = 0; i < 50; i++) {
      const gap = () => 1 / 4 + between(-1 / 150, 1 / 150);
      const gaps = { left: gap(), right: gap(), behind: gap(), front: gap() };
      const found = measureFoot(gaps);
      if (found.kind !== 'measured') return expect.fail(found.kind);
      const best = misfit(gaps, found.diameter / 2, ...found.needleOffset);
      for (let j = 0; j < 40; j++) {
        const other = misfit(gaps, found.diameter / 2 + between(-0.02, 0.02), found.needleOffset[0] + between(-0.02, 0.02), found.needleOffset[1] + between(-0.02, 0.02));
        expect(other).toBeGreaterThanOrEqual(best);
      }
    }
  });

  it('asks to measure again when the pairs disagree by more than 1/32, not before', () => {
    const still = { left: 1 / 4, right: 1 / 4, behind: 1 / 4 + 1 / 64, front: 1 / 4 + 1 / 64 };
    expect(measureFoot(still)).toMatchObject({ kind: 'measured', apart: 1 / 32 });
    expect(measureFoot({ ...still, front: 1 / 4 + 1 / 32 })).toEqual({ kind: 'slipped', sideways: 1 / 2, lengthways: 1 / 2 + 3 / 64 });
  });

  it('takes no gap that no foot leaves', () => {
    const even = { left: 1 / 4, right: 1 / 4, behind: 1 / 4, front: 1 / 4 };
    for (const side of ['left', 'right', 'behind', 'front'] as const) {
      for (const gap of [0, -1 / 8, NaN, Infinity, 50]) expect(measureFoot({ ...even, [side]: gap })).toEqual({ kind: 'no-gap', side });
    }
  });
});
