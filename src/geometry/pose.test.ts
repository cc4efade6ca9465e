import { describe, expect, it } from 'vitest';
import { point, vec } from './point.ts';
import { type Pose, after, carry, carryVec, inverse, mirrorAcross, poseOf, stay, turnAbout } from './pose.ts';

const near = (x: number, y: number) => ({ x: expect.closeTo(x, 12) as number, y: expect.closeTo(y, 12) as number });

describe('poses', () => {
  it('flips, then turns clockwise, then moves', () => {
    const pose = poseOf<'template', 'quilt'>(10, 20, Math.PI / 2, true);
    // (1, 0) flips to (-1, 0), turns to (0, -1), moves to (10, 19).
    expect(carry(pose, point(1, 0))).toEqual(near(10, 19));
    expect(carryVec(pose, vec(1, 0))).toEqual(near(0, -1));
    expect(carry(pose, point(0, 1))).toEqual(near(9, 20));
  });

  it('staying changes nothing', () => {
    expect(carry(stay<'quilt'>(), point(3, -7))).toEqual({ x: 3, y: -7 });
  });

  it('turns about a centre: three quarter turns of a corner', () => {
    expect(carry(turnAbout<'area'>(point(6, 6), Math.PI / 2), point(7, 6))).toEqual(near(6, 7));
    expect(carry(turnAbout<'area'>(point(6, 6), (3 * Math.PI) / 2), point(7, 6))).toEqual(near(6, 5));
    expect(carry(turnAbout<'area'>(point(6, 6), 1.234), point(6, 6))).toEqual(near(6, 6));
  });

  it('mirrors across a diagonal: x and y change places', () => {
    const mirror = mirrorAcross<'area'>(point(0, 0), Math.PI / 4);
    expect(carry(mirror, point(3, 1))).toEqual(near(1, 3));
    // Across a vertical line at x = 2.
    expect(carry(mirrorAcross<'area'>(point(2, 9), Math.PI / 2), point(5, 1))).toEqual(near(-1, 1));
    // The direction of the line may be given either way.
    expect(carry(mirrorAcross<'area'>(point(2, 9), -Math.PI / 2), point(5, 1))).toEqual(near(-1, 1));
  });

  it('two mirrors make a turn of twice the angle between them (Euclidean motions, Coxeter, Introduction to Geometry, 3.1)', () => {
    const both = after(mirrorAcross<'area'>(point(1, 1), 0.3), mirrorAcross<'area'>(point(1, 1), 0.8));
    expect(both.flipped).toBe(false);
    expect(both.angle).toBeCloseTo(1, 12);
    expect(carry(both, point(4, 2))).toEqual(near(carry(turnAbout<'area'>(point(1, 1), 1), point(4, 2)).x, carry(turnAbout<'area'>(point(1, 1), 1), point(4, 2)).y));
  });

  it('after and inverse hold for every mixture of flips', () => {
    for (const one of [false, true]) {
      for (const two of [false, true]) {
        const first: Pose<'template', 'area'> = poseOf(1.5, -2, 0.7, one);
        const then: Pose<'area', 'quilt'> = poseOf(-4, 3.25, -2.9, two);
        const p = point<'template'>(2.5, 0.75);
        const direct = carry(then, carry(first, p));
        expect(carry(after(first, then), p)).toEqual(near(direct.x, direct.y));
        expect(carry(inverse(after(first, then)), direct)).toEqual(near(2.5, 0.75));
        expect(after(first, then).flipped).toBe(one !== two);
      }
    }
  });
});
