// Where two lines or arcs meet.
// A meeting is a crossing (each passes through the other away from its ends), a touching (at an end of either, or where
// the two are tangent), or an overlap (a collinear or cocircular stretch they share).
//
// Maths: seen from the middle of a segment, the line or circle it belongs to is k |v|^2 = 2 v . n (curvature k, unit
// normal n), for a line as for an arc. Subtracting one such equation from the other leaves the radical line (Coxeter
// and Greitzer, Geometry Revisited, 2.2), on which the meetings are the roots of one quadratic; they are then polished
// by Newton's method. No centre enters, so flat arcs are as exact as tight ones. Ends are judged by distance first, so
// that what is decided at an end does not depend on how shallow the crossing is.

import { SAME_NUMBER, SAME_POINT } from '../num/tolerances.ts';
import { type Frame, type Point, type Vec, between, cross, distance, dot, moved, plus, quarterTurned, scaled, size } from './point.ts';
import { type Bearing, type Segment, bearingOf, nearestOnSegment, partAt, pointOnSegment, rightOf, sideOf } from './segment.ts';

/** Parts run from 0 at a segment's start to 1 at its end. */
export type SegmentMeeting<F extends Frame> =
  | { readonly kind: 'crossing' | 'touching'; readonly at: Point<F>; readonly partA: number; readonly partB: number }
  /** Along `a`; the parts of `b` fall when it runs the other way. */
  | {
      readonly kind: 'overlap';
      readonly from: Point<F>;
      readonly to: Point<F>;
      readonly partsA: readonly [number, number];
      readonly partsB: readonly [number, number];
    };

/** Where a meeting of two segments lies on each, before its kind is settled. */
interface Spot<F extends Frame> {
  readonly at: Point<F>;
  readonly partA: number;
  readonly partB: number;
}

/**
 * All meetings of two segments, in order along `a`; none when they stay apart by more than rounding slack. An end within
 * rounding slack of the other segment counts as lying on it, with its part exactly 0 or 1.
 */
export function meetSegments<F extends Frame>(a: Segment<F>, b: Segment<F>): readonly SegmentMeeting<F>[] {
  const bearingA = bearingOf(a);
  const bearingB = bearingOf(b);
  // No point of a segment is farther from its middle than half its length.
  const reach = (bearingA.length + bearingB.length) / 2 + SAME_POINT;
  if (Math.abs(bearingA.middle.x - bearingB.middle.x) > reach || Math.abs(bearingA.middle.y - bearingB.middle.y) > reach) return [];
  const touches = endTouches(a, bearingA, b, bearingB);
  const meetings: SegmentMeeting<F>[] = settled(a, b, touches, bearingA.length);
  for (const { kind, at } of meetingsOfWholes(bearingA, bearingB)) {
    const partA = partAt(bearingA, at);
    const partB = partAt(bearingB, at);
    if (!(partA > 0 && partA < 1 && partB > 0 && partB < 1)) continue;
    const spot: Spot<F> = { at, partA, partB };
    // Too near an end that touches already to be told apart from it.
    if (touches.some((touch) => isTogetherBetween(a, b, touch, spot))) continue;
    meetings.push({ kind, ...spot });
  }
  return meetings.sort((one, other) => firstPart(one) - firstPart(other));
}

function firstPart<F extends Frame>(m: SegmentMeeting<F>): number {
  return m.kind === 'overlap' ? m.partsA[0] : m.partA;
}

/** Ends of either segment that lie on the other, each spot once, in order along `a`. */
function endTouches<F extends Frame>(a: Segment<F>, bearingA: Bearing<F>, b: Segment<F>, bearingB: Bearing<F>): readonly Spot<F>[] {
  const found: Spot<F>[] = [];
  for (const end of [0, 1] as const) {
    const at = end === 0 ? a.from : a.to;
    const partB = partTouched(b, bearingB, at);
    if (partB !== undefined) found.push({ at, partA: end, partB });
  }
  for (const end of [0, 1] as const) {
    const at = end === 0 ? b.from : b.to;
    const partA = partTouched(a, bearingA, at);
    if (partA !== undefined) found.push({ at, partA, partB: end });
  }
  if (found.length < 2) return found;
  const spots: Spot<F>[] = [];
  for (const spot of found) {
    const same = spots.some(
      (s) =>
        Math.abs(s.partA - spot.partA) * bearingA.length <= 2 * SAME_POINT &&
        Math.abs(s.partB - spot.partB) * bearingB.length <= 2 * SAME_POINT,
    );
    if (!same) spots.push(spot);
  }
  return spots.sort((one, other) => one.partA - other.partA);
}

/** The part of a segment a point lies on, exact at its ends; undefined when the point is off it. */
function partTouched<F extends Frame>(s: Segment<F>, bearing: Bearing<F>, p: Point<F>): number | undefined {
  // The segment is no nearer than the whole line or circle.
  if (Math.abs(sideOf(bearing, p)) > SAME_POINT) return undefined;
  if (distance(s.from, p) <= SAME_POINT) return 0;
  if (distance(s.to, p) <= SAME_POINT) return 1;
  const part = partAt(bearing, p);
  return part > 0 && part < 1 ? part : undefined;
}

/** Touching ends with shared stretches between them made into overlaps. */
function settled<F extends Frame>(a: Segment<F>, b: Segment<F>, touches: readonly Spot<F>[], lengthA: number): SegmentMeeting<F>[] {
  const meetings: SegmentMeeting<F>[] = [];
  for (let i = 0; i < touches.length; i++) {
    const first = touches[i]!;
    let last = first;
    while (i + 1 < touches.length && isTogetherBetween(a, b, last, touches[i + 1]!)) last = touches[++i]!;
    if ((last.partA - first.partA) * lengthA <= 2 * SAME_POINT) {
      meetings.push({ kind: 'touching', ...first });
    } else {
      meetings.push({ kind: 'overlap', from: first.at, to: last.at, partsA: [first.partA, last.partA], partsB: [first.partB, last.partB] });
    }
  }
  return meetings;
}

/**
 * Whether the segments stay within rounding slack of each other from one common spot to another. Between two spots that
 * two lines or circles share, they are farthest apart half way.
 */
function isTogetherBetween<F extends Frame>(a: Segment<F>, b: Segment<F>, one: Spot<F>, other: Spot<F>): boolean {
  const halfA = pointOnSegment(a, (one.partA + other.partA) / 2);
  const halfB = pointOnSegment(b, (one.partB + other.partB) / 2);
  return nearestOnSegment(b, halfA).distance <= SAME_POINT && nearestOnSegment(a, halfB).distance <= SAME_POINT;
}

interface WholeMeeting<F extends Frame> {
  readonly kind: 'crossing' | 'touching';
  readonly at: Point<F>;
}

/** Where the whole lines or circles of two segments meet; none when they are the same or apart. */
function meetingsOfWholes<F extends Frame>(a: Bearing<F>, b: Bearing<F>): readonly WholeMeeting<F>[] {
  const [flat, curved] = Math.abs(a.curvature) <= Math.abs(b.curvature) ? [a, b] : [b, a];
  const ratio = curved.curvature === 0 ? 0 : flat.curvature / curved.curvature;
  const apart = between(curved.middle, flat.middle);
  // The radical line: v . across = reach, with v measured from the middle of the more curved one.
  const across = plus(plus(flat.normal, scaled(apart, flat.curvature)), scaled(curved.normal, -ratio));
  const reach = (flat.curvature * dot(apart, apart)) / 2 + dot(apart, flat.normal);
  const steepness = size(across);
  // `across` is the way from centre to centre times the lesser curvature: circles about the same centre never meet.
  if (steepness <= SAME_POINT * Math.abs(flat.curvature) || steepness === 0) return [];
  const square = scaled(across, 1 / steepness);
  const foot = scaled(square, reach / steepness);
  const along = quarterTurned(square);
  const k = curved.curvature;
  const slope = dot(curved.normal, along);
  const drop = k * dot(foot, foot) - 2 * dot(foot, curved.normal);
  const at = (step: number): Point<F> => moved(curved.middle, plus(foot, scaled(along, step)));
  // The place of tangency is half way between the roots; farther off than the segments are long, it is no concern of theirs.
  if (Math.abs(slope) <= Math.abs(k) * (a.length + b.length)) {
    const touch = touchNear(at(k === 0 ? 0 : slope / k), a, b);
    if (touch) return [{ kind: 'touching', at: touch }];
  }
  return roots(k, slope, drop).map((step) => ({ kind: 'crossing', at: polished(at(step), a, b) }));
}

/** The real roots of k s^2 - 2 slope s + drop = 0, without cancellation. Source: Numerical Recipes, 5.6. */
function roots(k: number, slope: number, drop: number): readonly number[] {
  const inside = slope * slope - k * drop;
  if (inside < 0) return [];
  const q = slope + (slope < 0 ? -1 : 1) * Math.sqrt(inside);
  if (q === 0) return [];
  return k === 0 ? [drop / q] : [drop / q, q / k];
}

/** The place of tangency when the two come within rounding slack of each other without passing through by more. */
function touchNear<F extends Frame>(p: Point<F>, a: Bearing<F>, b: Bearing<F>): Point<F> | undefined {
  const rightA = rightOf(a, p);
  const way = dot(rightA, rightOf(b, p)) < 0 ? -1 : 1;
  const sideA = sideOf(a, p);
  const sideB = way * sideOf(b, p);
  return Math.abs(sideA - sideB) <= SAME_POINT ? moved(p, rightA, -(sideA + sideB) / 2) : undefined;
}

/** A point near a crossing moved onto both lines or circles by Newton's method. */
function polished<F extends Frame>(p: Point<F>, a: Bearing<F>, b: Bearing<F>): Point<F> {
  let at = p;
  for (let i = 0; i < 3; i++) {
    const rightA = rightOf(a, at);
    const rightB = rightOf(b, at);
    const turn = cross(rightA, rightB);
    if (Math.abs(turn) <= SAME_NUMBER) break;
    const sideA = sideOf(a, at);
    const sideB = sideOf(b, at);
    const step: Vec<F> = {
      x: (sideA * rightB.y - sideB * rightA.y) / turn,
      y: (sideB * rightA.x - sideA * rightB.x) / turn,
    };
    at = moved(at, step, -1);
  }
  return at;
}
