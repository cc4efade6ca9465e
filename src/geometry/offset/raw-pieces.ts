// The pieces an offset is cut from: each line moved sideways, each arc with its radius changed, and at each corner that
// stands out towards the offset an arc about it. Every point at exactly the offset distance from the edge, on the asked
// side, lies on one of them, because its nearest point on the edge is either inside a segment, square to it, or at a
// vertex, within the fan between the two squares there.
// Source: R. T. Farouki and C. A. Neff, "Analytic properties of plane offset curves", Computer Aided Geometric Design 7
// (1990), for the offset of a corner as an arc and of an arc as a concentric one.

import { SAME_ANGLE, SAME_POINT, WELD } from '../../num/tolerances.ts';
import { type Frame, type Point, type Vec, angleOf, distance, moved, quarterTurned, scaled, unit } from '../point.ts';
import { type Arc, type Segment, arcAround, segmentLength } from '../segment.ts';
import type { Touch } from './contact.ts';
import { turnBetween } from './corner-turn.ts';

export interface RawPiece<F extends Frame> extends Touch {
  /** Runs the way the edge runs. */
  readonly segment: Segment<F>;
  /** Too short to have a direction, as of an inside arc of exactly the offset distance: its ends are one place. */
  readonly isPoint: boolean;
  /** The piece before (points at corners left out) ends where this one starts, and in the same direction. */
  readonly isSmoothBefore: boolean;
}

/** Which way the offset lies from an edge as it runs: 1 to the right, -1 to the left. */
export type Side = 1 | -1;

/**
 * All pieces at a distance (inches) on one side of a closed edge, in its order.
 * @param before inches along the edge at the start of each segment, and at the end of the last
 */
export function rawPieces<F extends Frame>(edge: readonly Segment<F>[], before: readonly number[], away: number, side: Side): readonly RawPiece<F>[] {
  const spans: Span<F>[] = [];
  edge.forEach((segment, index) => {
    if (segmentLength(segment) > SAME_POINT) spans.push(spanOf(segment, index, away, side));
  });
  const pieces: RawPiece<F>[] = [];
  let into = spans[spans.length - 1];
  for (const out of spans) {
    const edgeStart = before[out.index]!;
    const followsPiece = into!.leaves === 'piece';
    const corner = cornerArcs(into!, out, away, side);
    let isSmooth = followsPiece && distance(into!.end, out.start) <= 2 * WELD;
    for (const segment of corner) {
      const isPoint = away * Math.abs(segment.sweep) <= WELD;
      const isSecond = segment !== corner[0];
      pieces.push({ kind: 'corner', edge: out.index, edgeStart, edgeEnd: edgeStart, segment, isPoint, isSmoothBefore: isSecond || followsPiece });
      if (!isPoint) isSmooth = true;
    }
    if (out.leaves !== 'nothing') {
      const isPoint = out.leaves === 'point';
      pieces.push({ kind: 'edge', edge: out.index, edgeStart, edgeEnd: before[out.index + 1]!, segment: offsetOf(out), isPoint, isSmoothBefore: isSmooth });
    }
    into = out;
  }
  return pieces;
}

/** A segment of the edge with its tangents and what its offset is. */
interface Span<F extends Frame> {
  readonly segment: Segment<F>;
  readonly index: number;
  readonly startTangent: Vec<F>;
  readonly endTangent: Vec<F>;
  /** Ends of the offset, and its radius (of an arc). */
  readonly start: Point<F>;
  readonly end: Point<F>;
  readonly radius: number;
  /** An arc tighter than the offset distance leaves nothing; one as tight, to rounding slack, a point. */
  readonly leaves: 'piece' | 'point' | 'nothing';
}

function spanOf<F extends Frame>(segment: Segment<F>, index: number, away: number, side: Side): Span<F> {
  const { from, to } = segment;
  const chord = unit<F>({ x: to.x - from.x, y: to.y - from.y });
  const isArc = segment.kind === 'arc';
  const half = isArc ? segment.sweep / 2 : 0;
  const startTangent = isArc ? turned(chord, -half) : chord;
  const endTangent = isArc ? turned(chord, half) : chord;
  const radius = isArc ? segment.radius - side * Math.sign(half) * away : Infinity;
  return {
    segment,
    index,
    startTangent,
    endTangent,
    start: moved(from, quarterTurned(startTangent), side * away),
    end: moved(to, quarterTurned(endTangent), side * away),
    radius,
    leaves: isArc && Math.abs(2 * half * radius) <= WELD ? 'point' : radius < 0 ? 'nothing' : 'piece',
  };
}

function turned<F extends Frame>(v: Vec<F>, angle: number): Vec<F> {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return { x: cos * v.x - sin * v.y, y: sin * v.x + cos * v.y };
}

function offsetOf<F extends Frame>({ segment, start, end, radius, leaves }: Span<F>): Segment<F> {
  if (segment.kind === 'line' || leaves === 'point') return { kind: 'line', from: start, to: end };
  return { kind: 'arc', from: start, to: end, centre: segment.centre, radius, start: segment.start, sweep: segment.sweep };
}

/** The arc about a corner that stands out towards the offset, in two when it is over a half turn; none where the path runs on or turns in. */
function cornerArcs<F extends Frame>(into: Span<F>, out: Span<F>, away: number, side: Side): readonly Arc<F>[] {
  const sweep = turnBetween(into.segment, into.endTangent, out.segment, out.startTangent);
  if (side * sweep >= 0 || away * Math.abs(sweep) <= SAME_POINT) return [];
  const centre = out.segment.from;
  const start = angleOf(scaled(quarterTurned(into.endTangent), side));
  if (Math.abs(sweep) <= Math.PI + SAME_ANGLE) return [{ kind: 'arc', from: into.end, to: out.start, centre, radius: away, start, sweep }];
  const first = arcAround(centre, away, start, sweep / 2);
  const second = arcAround(centre, away, start + sweep / 2, sweep / 2);
  return [
    { ...first, from: into.end },
    { ...second, from: first.to, to: out.start },
  ];
}
