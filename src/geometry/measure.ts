// Lengths, areas and places along a path, in closed form.

import { SAME_POINT } from '../num/tolerances.ts';
import { type Path, segmentsOf } from './path.ts';
import type { Frame, Point, Vec } from './point.ts';
import { type Arc, pointOnSegment, segmentLength, tangentOnSegment } from './segment.ts';

const lengthsOfPath = new WeakMap<object, readonly number[]>();

/** Inches along the path before each of its segments, and after the last: one more entry than there are segments. */
export function lengthsBefore<F extends Frame>(path: Path<F>): readonly number[] {
  const known = lengthsOfPath.get(path);
  if (known) return known;
  const lengths = [0];
  let sum = 0;
  for (const s of segmentsOf(path)) lengths.push((sum += segmentLength(s)));
  lengthsOfPath.set(path, lengths);
  return lengths;
}

/** Length of the path in inches, all round when it is closed. */
export function pathLength<F extends Frame>(path: Path<F>): number {
  return lengthsBefore(path).at(-1) ?? 0;
}

/**
 * The area a closed path goes round, in square inches: positive when it runs clockwise on the screen. An open path is closed
 * with a straight line. Maths: the polygon of the chords by the surveyor's formula, plus the circular segments
 * r^2 / 2 (t - sin t) over them.
 */
export function signedArea<F extends Frame>(path: Path<F>): number {
  const { vertices } = path;
  const first = vertices[0];
  if (!first) return 0;
  let twice = 0;
  for (let i = 1; i + 1 < vertices.length; i++) {
    const a = vertices[i]!;
    const b = vertices[i + 1]!;
    twice += (a.x - first.x) * (b.y - first.y) - (b.x - first.x) * (a.y - first.y);
  }
  let area = twice / 2;
  for (const s of segmentsOf(path)) if (s.kind === 'arc') area += areaOverChord(s);
  return area;
}

/** Area between an arc and its chord, with the sign of its sweep. */
export function areaOverChord<F extends Frame>(arc: Arc<F>): number {
  const t = arc.sweep;
  if (Math.abs(t) > 1) return (arc.radius * arc.radius * (t - Math.sin(t))) / 2;
  // For a flat arc t - sin t would leave no digits: sum its series, and go by the chord, not the radius.
  let term = (t * t * t) / 6;
  let excess = 0;
  for (let n = 4; Math.abs(term) > Math.abs(excess) * Number.EPSILON; n += 2) {
    excess += term;
    term *= -(t * t) / (n * (n + 1));
  }
  const chordSquared = (arc.to.x - arc.from.x) ** 2 + (arc.to.y - arc.from.y) ** 2;
  return (chordSquared * excess) / (8 * Math.sin(t / 2) ** 2);
}

/** A place on a path. */
export interface PathPlace<F extends Frame> {
  readonly point: Point<F>;
  /** Unit vector the way the path runs; zero only on a path of no length. */
  readonly tangent: Vec<F>;
  readonly segment: number;
  /** 0 at the segment's start, 1 at its end. */
  readonly part: number;
}

/**
 * The place a distance along the path, in inches from its start. A closed path is gone round as often as need be; on an open
 * one the place stays between its ends. At a corner it is the start of the segment that follows. A path without vertices
 * has only the origin.
 */
export function pointAlong<F extends Frame>(path: Path<F>, distance: number): PathPlace<F> {
  const segments = segmentsOf(path);
  const lengths = lengthsBefore(path);
  const total = pathLength(path);
  const first = path.vertices[0];
  if (total === 0) return { point: { x: first?.x ?? 0, y: first?.y ?? 0 }, tangent: { x: 0, y: 0 }, segment: 0, part: 0 };
  const along = withinPath(path, distance);
  const segment = segmentHolding(lengths, along);
  const s = segments[segment]!;
  const part = Math.min(1, (along - lengths[segment]!) / (lengths[segment + 1]! - lengths[segment]!));
  return { point: pointOnSegment(s, part), tangent: tangentOnSegment(s, part), segment, part };
}

/** The same distance along between 0 and the path's length: wrapped round a closed path, held at the ends of an open one. */
export function withinPath<F extends Frame>(path: Path<F>, distance: number): number {
  const total = pathLength(path);
  if (!path.closed) return Math.max(0, Math.min(total, distance));
  if (total === 0) return 0;
  const rest = distance % total;
  const wrapped = rest < 0 ? rest + total : rest;
  return wrapped < total ? wrapped : 0;
}

/** Inches along the path of a part of one of its segments. */
export function distanceAlong<F extends Frame>(path: Path<F>, segment: number, part: number): number {
  const lengths = lengthsBefore(path);
  const before = lengths[segment]!;
  return part === 1 ? lengths[segment + 1]! : before + part * (lengths[segment + 1]! - before);
}

/** The same distance along, moved to a vertex where one lies within rounding slack; on a closed path the end is the start. */
export function atVertex<F extends Frame>(path: Path<F>, distance: number): number {
  const lengths = lengthsBefore(path);
  const total = pathLength(path);
  const along = withinPath(path, distance);
  if (total === 0) return 0;
  const segment = segmentHolding(lengths, along);
  if (along - lengths[segment]! <= SAME_POINT) return lengths[segment]!;
  const next = lengths[segment + 1]!;
  if (next - along > SAME_POINT) return along;
  return path.closed && next === total ? 0 : next;
}

/** The last segment of some length that starts at or before a distance along (and does not end there, unless it is the last of all). */
function segmentHolding(lengths: readonly number[], along: number): number {
  let low = 0;
  let high = lengths.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (lengths[middle]! <= along) low = middle;
    else high = middle - 1;
  }
  while (low > 0 && lengths[low + 1] === lengths[low]) low--;
  return low;
}
