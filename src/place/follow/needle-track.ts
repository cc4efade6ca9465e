// A needle line made ready for asking, again and again from nearly the same place, on which side of it a point lies and how far away. The foot
// of the point is looked for near where it was last, so that the answer belongs to one stretch and changes smoothly while the template moves.

import { carryPath } from '../../geometry/change.ts';
import { lengthsBefore, pathLength, pointAlong } from '../../geometry/measure.ts';
import { type Path, segmentsOf } from '../../geometry/path.ts';
import { poseOf } from '../../geometry/pose.ts';
import { bearingOf } from '../../geometry/segment.ts';

/** One needle line, face up or face down (mirrored in x, run the same way), in inches. */
export interface NeedleTrack {
  readonly flipped: boolean;
  readonly closed: boolean;
  readonly length: number;
  readonly count: number;
  /** For each line or arc: middle, tangent, normal (to the right), curvature, length, inches before it. */
  readonly pieces: Float64Array;
  /** Points evenly along the line, x and y, the first at its start; round a closed line three times, so that looking on from anywhere need not turn back. */
  readonly points: Float64Array;
  /** How many once round, and inches between them. */
  readonly slots: number;
  readonly step: number;
}

/** Where a point's foot is; written over by each question, because there are so many. */
export interface Foot {
  /** Which piece, the guess for the next question. */
  piece: number;
  /** Inches along the needle line. */
  along: number;
  /** How far the point lies to the right of the needle line, in inches; negative to the left. */
  side: number;
  /** The way that makes `side` grow fastest: a unit vector. */
  x: number;
  y: number;
  /** How far the foot would lie beyond the end of an open needle line, in inches. */
  beyond: number;
}

const STRIDE = 9;
/** Points to an inch for a first look; refined from there against the true line. */
const LOOK = 64;

/** The needle line ready for asking. */
export function needleTrack(path: Path<'template'>, flipped: boolean): NeedleTrack {
  const seen = flipped ? carryPath<'template', 'template'>(poseOf(0, 0, 0, true), path) : path;
  const before = lengthsBefore(seen);
  const length = pathLength(seen);
  const kept = segmentsOf(seen).map((s, i) => ({ b: bearingOf(s), before: before[i]! })).filter(({ b }) => b.length > 0);
  const pieces = new Float64Array(kept.length * STRIDE);
  kept.forEach(({ b, before: start }, i) => pieces.set([b.middle.x, b.middle.y, b.tangent.x, b.tangent.y, b.normal.x, b.normal.y, b.curvature, b.length, start], i * STRIDE));
  const steps = Math.max(32, Math.ceil(length * LOOK));
  const points = new Float64Array(2 * (seen.closed ? 3 * steps : steps + 1));
  for (let i = 0; i < points.length / 2; i++) {
    const { point } = pointAlong(seen, ((seen.closed ? i % steps : i) * length) / steps);
    points[2 * i] = point.x;
    points[2 * i + 1] = point.y;
  }
  return { flipped, closed: seen.closed, length, count: kept.length, pieces, points, slots: steps, step: length / steps };
}

export function newFoot(): Foot {
  return { piece: 0, along: 0, side: 0, x: 0, y: 0, beyond: 0 };
}

/** The piece that holds a distance along the track, wrapped round a closed one. */
export function pieceHolding(track: NeedleTrack, along: number): number {
  const { pieces, count, length, closed } = track;
  const at = closed ? along - Math.floor(along / length) * length : along;
  let low = 0;
  let high = count - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (pieces[middle * STRIDE + 8]! <= at) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Finds the foot of a point near the piece that `foot` holds. */
export function findFoot(track: NeedleTrack, px: number, py: number, foot: Foot): void {
  let piece = foot.piece;
  let part = partOf(track, piece, px, py);
  for (let steps = 0; steps < track.count; steps++) {
    if (part >= 0 && part <= 1) break;
    const next = neighbour(track, piece, part < 0 ? -1 : 1);
    if (next < 0) return atEnd(track, piece, part, px, py, foot);
    const there = partOf(track, next, px, py);
    // Beyond the one and before the other: the corner between them is nearest.
    if (part < 0 ? there > 1 : there < 0) return atCorner(track, part < 0 ? next : piece, part < 0 ? piece : next, px, py, foot);
    piece = next;
    part = there;
  }
  onPiece(track, piece, part, px, py, foot);
  tryNeighbour(track, piece, -1, px, py, foot);
  tryNeighbour(track, piece, 1, px, py, foot);
}

/** In an inside corner both sides have a foot; the nearer one counts. */
function tryNeighbour(track: NeedleTrack, piece: number, way: -1 | 1, px: number, py: number, foot: Foot): void {
  const next = neighbour(track, piece, way);
  if (next < 0) return;
  const part = partOf(track, next, px, py);
  if (part < 0 || part > 1 || Math.abs(sideOfPiece(track, next, px, py)) >= Math.abs(foot.side)) return;
  onPiece(track, next, part, px, py, foot);
}

function neighbour({ count, closed }: NeedleTrack, piece: number, way: -1 | 1): number {
  const next = piece + way;
  if (next >= 0 && next < count) return next;
  return closed ? (next + count) % count : -1;
}

function partOf({ pieces }: NeedleTrack, piece: number, px: number, py: number): number {
  const o = piece * STRIDE;
  const x = px - pieces[o]!;
  const y = py - pieces[o + 1]!;
  const along = x * pieces[o + 2]! + y * pieces[o + 3]!;
  const curvature = pieces[o + 6]!;
  const length = pieces[o + 7]!;
  if (curvature === 0) return 0.5 + along / length;
  const inward = x * pieces[o + 4]! + y * pieces[o + 5]!;
  return 0.5 + Math.atan2(curvature * along, 1 - curvature * inward) / (curvature * length);
}

function sideOfPiece({ pieces }: NeedleTrack, piece: number, px: number, py: number): number {
  const o = piece * STRIDE;
  const x = px - pieces[o]!;
  const y = py - pieces[o + 1]!;
  const nx = pieces[o + 4]!;
  const ny = pieces[o + 5]!;
  const curvature = pieces[o + 6]!;
  const inward = x * nx + y * ny;
  if (curvature === 0) return inward;
  const cx = nx - curvature * x;
  const cy = ny - curvature * y;
  return (2 * inward - curvature * (x * x + y * y)) / (1 + Math.sqrt(cx * cx + cy * cy));
}

function onPiece(track: NeedleTrack, piece: number, part: number, px: number, py: number, foot: Foot): void {
  const { pieces } = track;
  const o = piece * STRIDE;
  const curvature = pieces[o + 6]!;
  const x = pieces[o + 4]! - curvature * (px - pieces[o]!);
  const y = pieces[o + 5]! - curvature * (py - pieces[o + 1]!);
  const size = Math.sqrt(x * x + y * y) || 1;
  foot.piece = piece;
  foot.along = pieces[o + 8]! + part * pieces[o + 7]!;
  foot.side = sideOfPiece(track, piece, px, py);
  foot.x = x / size;
  foot.y = y / size;
  foot.beyond = 0;
}

/** Beyond the end of an open line the foot is taken on the line or circle gone on with, and how far beyond is told. */
function atEnd(track: NeedleTrack, piece: number, part: number, px: number, py: number, foot: Foot): void {
  const length = track.pieces[piece * STRIDE + 7]!;
  onPiece(track, piece, part, px, py, foot);
  foot.beyond = length * (part < 0 ? -part : part - 1);
}

function atCorner(track: NeedleTrack, before: number, after: number, px: number, py: number, foot: Foot): void {
  const { pieces } = track;
  const o = after * STRIDE;
  const b = before * STRIDE;
  const half = -pieces[o + 7]! / 2;
  const turned = half * pieces[o + 6]!;
  // From the middle of the piece back to its start: along the chord of half the piece.
  const chord = pieces[o + 6] === 0 ? half : (2 * Math.sin(turned / 2)) / pieces[o + 6]!;
  const cos = Math.cos(turned / 2);
  const sin = Math.sin(turned / 2);
  const tx = pieces[o + 2]!;
  const ty = pieces[o + 3]!;
  const x = px - (pieces[o]! + chord * (cos * tx - sin * ty));
  const y = py - (pieces[o + 1]! + chord * (cos * ty + sin * tx));
  const away = Math.sqrt(x * x + y * y);
  // Which side: by the sum of the two normals at the corner.
  const turnedBefore = (pieces[b + 7]! / 2) * pieces[b + 6]!;
  const nx = Math.cos(turnedBefore) * pieces[b + 4]! - Math.sin(turnedBefore) * pieces[b + 5]! + Math.cos(turned) * pieces[o + 4]! - Math.sin(turned) * pieces[o + 5]!;
  const ny = Math.cos(turnedBefore) * pieces[b + 5]! + Math.sin(turnedBefore) * pieces[b + 4]! + Math.cos(turned) * pieces[o + 5]! + Math.sin(turned) * pieces[o + 4]!;
  const sign = x * nx + y * ny < 0 ? -1 : 1;
  const size = Math.sqrt(nx * nx + ny * ny) || 1;
  foot.piece = after;
  foot.along = pieces[o + 8]!;
  foot.side = sign * away;
  foot.x = away > 0 ? (sign * x) / away : nx / size;
  foot.y = away > 0 ? (sign * y) / away : ny / size;
  foot.beyond = 0;
}
