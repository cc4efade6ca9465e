// Measuring a foot: its true diameter, and where the needle falls in it, from four rows sewn along a straight edge.
//
// The foot keeps its direction on the machine, so the template is laid on each of its four sides in turn, always touching it,
// and each time the gap from the template's edge to the stitching is measured. With a foot of radius r whose needle falls at
// (x, y) from its centre (x to the sewer's right, y towards the sewer), the centre stays r from the edge, so
//
//   template at the left:    gap = r + x        template behind the foot (away from the sewer):      gap = r + y
//   template at the right:   gap = r - x        template in front of it (towards the sewer):         gap = r - y
//
// Four measures for three unknowns. The least squares of the four errors are least (normal equations; the columns for r, x and
// y are orthogonal) at r = the mean of the four gaps, x = (left - right) / 2, y = (behind - front) / 2. What is left over is one
// number: either pair of opposite gaps adds up to the diameter, so the two sums must agree. A template that slipped while it
// was sewn against spoils one of them.

import { SAME_POINT, TEMPLATE_LAY_STILL } from '../../num/tolerances.ts';
import { GREATEST_DIAMETER } from './foot-limits.ts';
import type { Place } from '../plan.ts';

/** Gaps from the edge to the stitching, in inches, by where the template lay, as the sewer sees it. */
export interface FourGaps {
  readonly left: number;
  readonly right: number;
  /** The template lay beyond the foot, away from the sewer. */
  readonly behind: number;
  /** The template lay between the foot and the sewer. */
  readonly front: number;
}

export type FootMeasured =
  | {
      readonly kind: 'measured';
      readonly diameter: number;
      /** From the foot's centre: x to the sewer's right, y towards the sewer. */
      readonly needleOffset: Place;
      /** By how much the two pairs disagree about the diameter, in inches: how well it was measured. */
      readonly apart: number;
    }
  /** The pairs disagree by more than measuring explains: the diameter each gives. */
  | { readonly kind: 'slipped'; readonly sideways: number; readonly lengthways: number }
  /** A gap that no foot leaves: nothing, less than nothing, no number, or so wide that the foot would be wider than any. */
  | { readonly kind: 'no-gap'; readonly side: keyof FourGaps };

/** The diameter of a foot and the place of its needle from the four gaps; see the head of the file for the maths. */
export function measureFoot(gaps: FourGaps): FootMeasured {
  const { left, right, behind, front } = gaps;
  for (const side of ['left', 'right', 'behind', 'front'] as const) {
    if (!(gaps[side] > 0 && gaps[side] <= GREATEST_DIAMETER)) return { kind: 'no-gap', side };
  }
  const sideways = left + right;
  const lengthways = behind + front;
  const apart = Math.abs(sideways - lengthways);
  if (apart > TEMPLATE_LAY_STILL + SAME_POINT) return { kind: 'slipped', sideways, lengthways };
  return { kind: 'measured', diameter: (sideways + lengthways) / 2, needleOffset: [(left - right) / 2, (behind - front) / 2], apart };
}
