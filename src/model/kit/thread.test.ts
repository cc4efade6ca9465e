import { describe, expect, it } from 'vitest';
import { MM_PER_INCH } from '../../num/inches.ts';
import { stitchLengthOf, stitchesPerInch, texOfWeight, weightOfTex } from './thread.ts';

describe('thread and stitch', () => {
  it('weight to Tex: 40 is about 25, 50 is 20, 30 is 33.3 (thread makers’ tables)', () => {
    expect(texOfWeight(40)).toBe(25);
    expect(texOfWeight(50)).toBe(20);
    expect(texOfWeight(30)).toBeCloseTo(33.3, 1);
    expect(weightOfTex(texOfWeight(60))).toBeCloseTo(60, 12);
  });

  it('stitches to the inch are 25.4 by the millimetres of one (1 in = 25.4 mm, NIST)', () => {
    for (const [mm, perInch] of [[1.5, 16.93], [2, 12.7], [2.5, 10.16], [3, 8.47], [4, 6.35]] as const) {
      expect(stitchesPerInch(mm / MM_PER_INCH)).toBeCloseTo(perInch, 2);
      expect(stitchLengthOf(stitchesPerInch(mm / MM_PER_INCH)) * MM_PER_INCH).toBeCloseTo(mm, 12);
    }
  });
});
