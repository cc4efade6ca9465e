// The seven ways a motif repeats along a strip. The strip is cut into equal divisions; the motif is laid in one of them
// and carried to the others by the motions that give the pattern its name.
//
//   run      p1    slid along
//   step     p11g  slid, every other one turned over the centre line (a glide)
//   scallop  p1m1  mirrored at every division line
//   spin     p2    half a turn about every division point
//   wave     p2mg  mirrored in the middle of its division, and half a turn about every division point
//   twin     p11m  mirrored across the centre line, and slid along
//   lantern  p2mm  mirrored in the middle of its division and across the centre line, and slid along
//
// Source of the groups: the seven frieze groups of plane crystallography (Coxeter, Introduction to Geometry, 3.7).

import { type Pose, after, poseOf, stay } from '../geometry/pose.ts';
import type { Frieze } from '../model/plan.ts';

type Motion = Pose<'area', 'area'>;

const ACROSS_MIDDLE: Motion = poseOf(0, 0, 0, true);
const ACROSS_CENTRE_LINE: Motion = poseOf(0, 0, Math.PI, true);
const HALF_TURN: Motion = poseOf(0, 0, Math.PI, false);

/** What stands in one division before it is carried along. */
const WITHIN: { readonly [pattern in Frieze]: readonly Motion[] } = {
  run: [stay()],
  step: [stay()],
  scallop: [stay()],
  spin: [stay()],
  wave: [stay(), ACROSS_MIDDLE],
  twin: [stay(), ACROSS_CENTRE_LINE],
  lantern: [stay(), ACROSS_MIDDLE, HALF_TURN, ACROSS_CENTRE_LINE],
};

/** How every other division is changed before it is slid into place. */
const EVERY_OTHER: { readonly [pattern in Frieze]: Motion } = {
  run: stay(),
  step: ACROSS_CENTRE_LINE,
  scallop: ACROSS_MIDDLE,
  spin: HALF_TURN,
  wave: HALF_TURN,
  twin: stay(),
  lantern: stay(),
};

/**
 * The motions that fill a strip of a length (inches) with `count` divisions, from left to right. They start from a motif
 * laid in a division whose centre is the origin; the strip's own centre is the origin of the result.
 */
export function friezeMotions(pattern: Frieze, count: number, length: number): readonly Motion[] {
  const spacing = length / count;
  const motions: Motion[] = [];
  for (let division = 0; division < count; division++) {
    const slide: Motion = poseOf((division + 0.5) * spacing - length / 2, 0);
    const change = division % 2 === 0 ? stay<'area'>() : EVERY_OTHER[pattern];
    for (const within of WITHIN[pattern]) motions.push(after(after(within, change), slide));
  }
  return motions;
}
