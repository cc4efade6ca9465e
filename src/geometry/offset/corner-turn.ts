// How far a path turns where one line or arc follows another.
//
// Half turns need care: at the tip of a crescent and at the cusp between two abutting half circles the tangents are
// exactly opposed, and which way round the path turned is not in them. It is in the segments themselves: since a
// simple path does not cross itself, the two sides of the cusp keep their order at every distance from its point, so
// that they can be compared well away from it.

import { TURN, shortestTurn } from '../../num/angle.ts';
import { CUSP } from '../../num/tolerances.ts';
import { type Frame, type Point, type Vec, angleOf, between, cross, distance, dot } from '../point.ts';
import { type Segment, pointOnSegment } from '../segment.ts';

/**
 * The turn in radians from the end of `into` to the start of `out`, clockwise positive. It may go beyond a half turn by next to nothing, where
 * the tangents of a cusp are crossed by rounding. The tangents are unit vectors along the way the path runs, `into`'s at its end
 * and `out`'s at its start.
 */
export function turnBetween<F extends Frame>(into: Segment<F>, endTangent: Vec<F>, out: Segment<F>, startTangent: Vec<F>): number {
  const turn = Math.atan2(cross(endTangent, startTangent), dot(endTangent, startTangent));
  if (Math.abs(turn) < Math.PI - CUSP) return turn;
  const isRight = rightSideIsNarrow(into, out);
  if (isRight === turn > 0) return turn;
  return isRight ? turn + TURN : turn - TURN;
}

/** Whether at a cusp the narrow side lies to the right of the path, so that the path turns right about its tip. */
function rightSideIsNarrow<F extends Frame>(into: Segment<F>, out: Segment<F>): boolean {
  const reach = Math.min(distance(into.from, into.to), distance(out.from, out.to)) / 2;
  const back = between(out.from, pointAtChord(into, reach, 'end'));
  const ahead = between(out.from, pointAtChord(out, reach, 'start'));
  return shortestTurn(angleOf(back) - angleOf(ahead)) > 0;
}

/** The point of a segment a straight distance away from one of its ends, no farther than its chord. */
export function pointAtChord<F extends Frame>(s: Segment<F>, chord: number, from: 'start' | 'end'): Point<F> {
  const part = partAtChord(s, chord);
  return pointOnSegment(s, from === 'start' ? part : 1 - part);
}

function partAtChord<F extends Frame>(s: Segment<F>, chord: number): number {
  if (s.kind === 'line') return chord / distance(s.from, s.to);
  return (2 * Math.asin(Math.min(1, chord / (2 * s.radius)))) / Math.abs(s.sweep);
}
