import { describe, expect, it } from 'vitest';
import { type Pose, after, carry, mirrorAcross, poseOf, turnAbout } from '../geometry/pose.ts';
import type { Frieze } from '../model/plan.ts';
import { friezeMotions } from './frieze.ts';

// The symmetries below are those of the seven frieze groups as crystallography lists them: which of glide, upright
// mirror, lengthwise mirror and half turn each group holds (Coxeter, Introduction to Geometry, section 3.7; from memory).

type Motion = Pose<'area', 'area'>;

const SPACING = 6;
const upright = (x: number): Motion => mirrorAcross({ x, y: 0 }, Math.PI / 2);
const lengthwise: Motion = mirrorAcross({ x: 0, y: 0 }, 0);
const halfTurn = (x: number): Motion => turnAbout({ x, y: 0 }, Math.PI);
const slide = (x: number): Motion => poseOf(x, 0);

/** A motif with no symmetry of its own: where a motion puts it tells the motion. */
function seen(motion: Motion): string {
  return [{ x: 1, y: 0.5 }, { x: 2, y: 1.75 }].map((p) => carry(motion, p)).map(({ x, y }) => `${x.toFixed(6)},${y.toFixed(6)}`.replace(/-0\.000000/g, '0.000000')).join(' ');
}

/** True when the symmetry carries the pattern onto itself, as far as both ends of the strip allow. */
function holds(pattern: Frieze, symmetry: Motion): boolean {
  const count = 12;
  const motions = friezeMotions(pattern, count, count * SPACING);
  const all = new Set(motions.map(seen));
  const inner = motions.filter((m) => Math.abs(m.x) < 3 * SPACING);
  return inner.every((m) => all.has(seen(after(m, symmetry))));
}

const GROUPS: { readonly [pattern in Frieze]: { readonly period: 1 | 2; readonly glide: boolean; readonly upright: boolean; readonly lengthwise: boolean; readonly halfTurn: boolean; readonly inDivision: number } } = {
  run: { period: 1, glide: false, upright: false, lengthwise: false, halfTurn: false, inDivision: 1 },
  step: { period: 2, glide: true, upright: false, lengthwise: false, halfTurn: false, inDivision: 1 },
  scallop: { period: 2, glide: false, upright: true, lengthwise: false, halfTurn: false, inDivision: 1 },
  spin: { period: 2, glide: false, upright: false, lengthwise: false, halfTurn: true, inDivision: 1 },
  wave: { period: 2, glide: true, upright: true, lengthwise: false, halfTurn: true, inDivision: 2 },
  twin: { period: 1, glide: true, upright: false, lengthwise: true, halfTurn: false, inDivision: 2 },
  lantern: { period: 1, glide: true, upright: true, lengthwise: true, halfTurn: true, inDivision: 4 },
};

describe('the seven frieze arrangements', () => {
  for (const [name, group] of Object.entries(GROUPS)) {
    const pattern = name as Frieze;
    it(`${name} has the symmetries of its group and no others`, () => {
      const places = [0, SPACING / 2];
      expect(holds(pattern, slide(group.period * SPACING))).toBe(true);
      expect(holds(pattern, slide(SPACING))).toBe(group.period === 1);
      expect(holds(pattern, after(lengthwise, slide(SPACING)))).toBe(group.glide);
      expect(holds(pattern, lengthwise)).toBe(group.lengthwise);
      expect(places.some((x) => holds(pattern, upright(x)))).toBe(group.upright);
      expect(places.some((x) => holds(pattern, halfTurn(x)))).toBe(group.halfTurn);
    });

    it(`${name} puts ${group.inDivision} in each division, all different`, () => {
      const motions = friezeMotions(pattern, 8, 8 * SPACING);
      expect(new Set(motions.map(seen)).size).toBe(8 * group.inDivision);
    });
  }

  it('centres the strip: the first and last division lie evenly about the middle', () => {
    const motions = friezeMotions('run', 5, 61);
    expect(motions[0]!.x).toBeCloseTo(-24.4, 12);
    expect(motions[4]!.x).toBeCloseTo(24.4, 12);
  });
});
