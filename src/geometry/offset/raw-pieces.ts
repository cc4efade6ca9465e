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
  const spans = edge.flatMap((segment, index) => (segmentLength(segment) > SAME_POINT ? [spanOf(segment, index, away, side)] : []));
  const own = spans.map((span) => edgePiece(span, before[span.index]!, before[span.index + 1]!, away, side));
  const pieces: RawPiece<F>[] = [];
  spans.forEach((out, i) => {
    const last = (i + spans.length - 1) % spans.length;
    const into = spans[last]!;
    const corner = cornerPieces(into, out, before[out.index]!, away, side);
    const followsPiece = own[last] !== undefined && !own[last].isPoint;
    corner.forEach((piece, k) => pieces.push({ ...piece, isSmoothBefore: k > 0 || followsPiece }));
    const piece = own[i];
    if (!piece) return;
    const followsCorner = corner.some(({ isPoint }) => !isPoint);
    pieces.push({ ...piece, isSmoothBefore: followsCorner || (followsPiece && distance(into.end, out.start) <= 2 * WELD) });
  });
  return pieces;
}

/** A segment of the edge with its tangents and the ends of its offset. */
interface Span<F extends Frame> {
  readonly segment: Segment<F>;
  readonly index: number;
  readonly startTangent: Vec<F>;
  readonly endTangent: Vec<F>;
  readonly start: Point<F>;
  readonly end: Point<F>;
}

function spanOf<F extends Frame>(segment: Segment<F>, index: number, away: number, side: Side): Span<F> {
  const chord = unit<F>({ x: segment.to.x - segment.from.x, y: segment.to.y - segment.from.y });
  const half = segment.kind === 'line' ? 0 : segment.sweep / 2;
  const startTangent = turned(chord, -half);
  const endTangent = turned(chord, half);
  return {
    segment,
    index,
    startTangent,
    endTangent,
    start: moved(segment.from, quarterTurned(startTangent), side * away),
    end: moved(segment.to, quarterTurned(endTangent), side * away),
  };
}

function turned<F extends Frame>(v: Vec<F>, angle: number): Vec<F> {
  if (angle === 0) return v;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return { x: cos * v.x - sin * v.y, y: sin * v.x + cos * v.y };
}

type Piece<F extends Frame> = Omit<RawPiece<F>, 'isSmoothBefore'>;

function edgePiece<F extends Frame>(span: Span<F>, edgeStart: number, edgeEnd: number, away: number, side: Side): Piece<F> | undefined {
  const { segment, index, start, end } = span;
  const touch = { kind: 'edge', edge: index, edgeStart, edgeEnd } as const;
  if (segment.kind === 'line') return { ...touch, segment: { kind: 'line', from: start, to: end }, isPoint: false };
  const radius = segment.radius - side * Math.sign(segment.sweep) * away;
  // Too short to tell from a point: its ends are one place, and what lies between them is touched from there.
  if (Math.abs(radius * segment.sweep) <= WELD) return { ...touch, segment: { kind: 'line', from: start, to: end }, isPoint: true };
  return radius < 0 ? undefined : { ...touch, segment: { ...segment, from: start, to: end, radius }, isPoint: false };
}

/** The arc about a corner that stands out towards the offset, in two when it is over a half turn; none where the path runs on or turns in. */
function cornerPieces<F extends Frame>(into: Span<F>, out: Span<F>, edgeAt: number, away: number, side: Side): readonly Piece<F>[] {
  const sweep = turnBetween(into.segment, into.endTangent, out.segment, out.startTangent);
  if (side * sweep >= 0 || away * Math.abs(sweep) <= SAME_POINT) return [];
  const centre = out.segment.from;
  const start = angleOf(scaled(quarterTurned(into.endTangent), side));
  const piece = (arc: Arc<F>): Piece<F> => ({ kind: 'corner', edge: out.index, edgeStart: edgeAt, edgeEnd: edgeAt, segment: arc, isPoint: away * Math.abs(arc.sweep) <= WELD });
  if (Math.abs(sweep) <= Math.PI + SAME_ANGLE) return [piece({ kind: 'arc', from: into.end, to: out.start, centre, radius: away, start, sweep })];
  const first = arcAround(centre, away, start, sweep / 2);
  const second = arcAround(centre, away, start + sweep / 2, sweep / 2);
  return [piece({ ...first, from: into.end }), piece({ ...second, from: first.to, to: out.start })];
}
