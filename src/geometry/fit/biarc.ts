// Two arcs that lead from one point and direction to another and share a tangent where they join.
// Maths: K. M. Bolton, "Biarc curves", Computer-Aided Design 7 (1975) 89-92, quoted from memory. Of the one-parameter family of
// biarcs the plain choice is the one with equal legs: with the joint half way between p0 + d t0 and p1 - d t1, each arc touches two
// legs of length d, and d is the positive root of 2 (1 - t0.t1) d^2 + 2 (v.(t0 + t1)) d - v.v = 0, v = p1 - p0. With legs a and b
// instead the condition |v - a t0 - b t1| = a + b reads v.v - 2 a v.t0 - 2 b v.t1 = 2 a b (1 - t0.t1).

import { SAME_NUMBER } from '../../num/tolerances.ts';
import { type Frame, type Point, type Vec, between, cross, dot, moved, partWay, plus } from '../point.ts';
import { type Segment, arcByBulge } from '../segment.ts';

export type Biarc<F extends Frame> = readonly [Segment<F>, Segment<F>];

/**
 * The biarc from `p0`, leaving in the unit direction `t0`, to `p1`, arriving in the unit direction `t1`. Neither arc is more than a half
 * turn; a flat one is a straight line. Undefined when there is none: the points are the same, or the two directions are
 * and lead away from `p1`.
 */
export function biarc<F extends Frame>(p0: Point<F>, t0: Vec<F>, p1: Point<F>, t1: Vec<F>): Biarc<F> | undefined {
  const v = between(p0, p1);
  const chordSquared = dot(v, v);
  if (chordSquared === 0) return undefined;
  const ahead = dot(v, plus(t0, t1));
  const under = ahead + Math.sqrt(ahead * ahead + spread(t0, t1) * chordSquared);
  const chord = Math.sqrt(chordSquared);
  if (under <= SAME_NUMBER * chord) return halfCircles(p0, t0, p1, v, chord);
  const leg = chordSquared / under;
  return byLegs(p0, t0, leg, p1, t1, leg);
}

/**
 * The biarc of the same family whose joint lies at `near`, or next to it when `near` is not quite on the circle that the joints of the
 * family lie on. Undefined when its arcs would not both be less than a half turn.
 */
export function biarcThrough<F extends Frame>(p0: Point<F>, t0: Vec<F>, p1: Point<F>, t1: Vec<F>, near: Point<F>): Biarc<F> | undefined {
  const v = between(p0, p1);
  const w = between(p0, near);
  const leg0 = dot(w, w) / (2 * dot(w, t0));
  const leg1 = (dot(v, v) - 2 * leg0 * dot(v, t0)) / (2 * dot(v, t1) + leg0 * spread(t0, t1));
  if (!(leg0 > 0 && leg1 > 0 && leg0 < Infinity && leg1 < Infinity)) return undefined;
  return byLegs(p0, t0, leg0, p1, t1, leg1);
}

function byLegs<F extends Frame>(p0: Point<F>, t0: Vec<F>, leg0: number, p1: Point<F>, t1: Vec<F>, leg1: number): Biarc<F> {
  const joint = partWay(moved(p0, t0, leg0), moved(p1, t1, -leg1), leg0 / (leg0 + leg1));
  const back = { x: -t1.x, y: -t1.y };
  return [arcByBulge(p0, joint, bulgeFrom(t0, between(p0, joint))), arcByBulge(joint, p1, -bulgeFrom(back, between(p1, joint)))];
}

/** 2 (1 - t0.t1) = |t0 - t1|^2 of two unit vectors, without the cancellation. */
function spread<F extends Frame>(t0: Vec<F>, t1: Vec<F>): number {
  return (t0.x - t1.x) ** 2 + (t0.y - t1.y) ** 2;
}

/** Equal directions square to the chord: two half circles, an S. */
function halfCircles<F extends Frame>(p0: Point<F>, t0: Vec<F>, p1: Point<F>, v: Vec<F>, chord: number): Biarc<F> | undefined {
  if (dot(v, t0) < -SAME_NUMBER * chord) return undefined;
  const bulge = cross(t0, v) > 0 ? 1 : -1;
  const joint = partWay(p0, p1, 0.5);
  return [arcByBulge(p0, joint, bulge), arcByBulge(joint, p1, -bulge)];
}

/** The bulge of the arc that leaves in the unit direction `t` and ends a chord away: tan of half the angle from one to the other. */
function bulgeFrom<F extends Frame>(t: Vec<F>, chord: Vec<F>): number {
  const under = Math.hypot(chord.x, chord.y) + dot(t, chord);
  return under === 0 ? 0 : Math.max(-1, Math.min(1, cross(t, chord) / under));
}
