// On which side of one path another leaves a place they share.
//
// Tangents alone do not tell: paths may leave in the same direction and curve apart. So the order of the branches is read off a
// small circle round the place. The circle is smaller than the way to the next meeting or vertex on any branch, so that each
// branch (a line, or an arc up to a half turn) cuts it once, no two cross within it, and their order on it is their order at
// the place.

import { TURN, normalised } from '../num/angle.ts';
import { SAME_ANGLE, SAME_POINT } from '../num/tolerances.ts';
import { lengthsBefore, pointAlong } from './measure.ts';
import { meetSegments } from './meet-segments.ts';
import { type Path, segmentsOf } from './path.ts';
import { type Frame, angleOf, distance } from './point.ts';
import { type Segment, reversedSegment, stretchOfSegment, tangentOnSegment } from './segment.ts';

/** Distances along a path, in order, at which something meets it. */
export type Events = readonly number[];

/** The lines or arcs that leave a place, up to the next event or vertex; none where an open path ends. */
export interface Branches<F extends Frame> {
  readonly ahead: Segment<F> | undefined;
  readonly behind: Segment<F> | undefined;
}

/** The branches of a path at a distance along it, in inches; both run away from the place. */
export function branchesAt<F extends Frame>(path: Path<F>, along: number, events: Events): Branches<F> {
  const segments = segmentsOf(path);
  const lengths = lengthsBefore(path);
  const total = lengths[lengths.length - 1]!;
  if (total === 0) return { ahead: undefined, behind: undefined };
  const here = pointAlong(path, along).segment;
  const piece = (i: number, from: number, to: number): Segment<F> => {
    const length = lengths[i + 1]! - lengths[i]!;
    return stretchOfSegment(segments[i]!, (from - lengths[i]!) / length, to === lengths[i + 1] ? 1 : (to - lengths[i]!) / length);
  };

  let ahead: Segment<F> | undefined;
  if (path.closed || along < total) {
    const next = events[countUpTo(events, along + 2 * SAME_POINT)];
    const end = lengths[here + 1]!;
    ahead = piece(here, along, next !== undefined && next < end ? next : end);
  }

  let behind: Segment<F> | undefined;
  if (path.closed || along > 0) {
    const isAtStart = along <= lengths[here]!;
    const segment = isAtStart ? segmentBefore(lengths, here) : here;
    const from = isAtStart ? lengths[segment + 1]! : along;
    const last = events[countUpTo(events, from - 2 * SAME_POINT) - 1];
    const start = lengths[segment]!;
    behind = reversedSegment(piece(segment, last !== undefined && last > start ? last : start, from));
  }
  return { ahead, behind };
}

/** How many of the events lie at or before a distance along. */
function countUpTo(events: Events, along: number): number {
  let low = 0;
  let high = events.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (events[middle]! <= along) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The segment of some length before one, round the start if need be. */
function segmentBefore(lengths: readonly number[], segment: number): number {
  const count = lengths.length - 1;
  let before = segment;
  do before = (before + count - 1) % count;
  while (lengths[before + 1] === lengths[before] && before !== segment);
  return before;
}

/**
 * On which side of a path a branch from the same place leaves: 1 to the right as the path runs, -1 to the left, 0 when the branch
 * is not there, the path ends there, or it cannot be told.
 */
export function sideOfBranch<F extends Frame>({ ahead, behind }: Branches<F>, branch: Segment<F> | undefined): 1 | -1 | 0 {
  if (!ahead || !behind || !branch) return 0;
  const radius = Math.min(...[ahead, behind, branch].map((s) => distance(s.from, s.to)), wayToCrossing(ahead, behind)) / 2;
  if (radius <= SAME_POINT) return 0;
  const onward = headingAt(ahead, radius);
  const back = normalised(headingAt(behind, radius) - onward);
  const turn = normalised(headingAt(branch, radius) - onward);
  // The places of the branches may differ by rounding slack.
  const slack = SAME_ANGLE + (2 * SAME_POINT) / radius;
  if (turn <= slack || turn >= TURN - slack || Math.abs(turn - back) <= slack) return 0;
  return turn < back ? 1 : -1;
}

/** How far from their common start the two branches of one path meet again; infinite when they do not. */
function wayToCrossing<F extends Frame>(ahead: Segment<F>, behind: Segment<F>): number {
  const again = meetSegments(ahead, behind).flatMap((m) => (m.kind !== 'overlap' && Math.max(m.partA, m.partB) > 0 ? [distance(ahead.from, m.at)] : []));
  return Math.min(Infinity, ...again);
}

/** The direction, from the start of a segment, of the place where it leaves a circle about that start. */
function headingAt<F extends Frame>(s: Segment<F>, radius: number): number {
  const start = angleOf(tangentOnSegment(s, 0));
  // A chord turns away from the tangent by half the angle of its arc: chord = 2 r sin(half).
  return s.kind === 'line' ? start : start + Math.sign(s.sweep) * Math.asin(Math.min(1, radius / (2 * s.radius)));
}
