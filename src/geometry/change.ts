// Paths made from paths: run the other way, carried to another frame, cut, joined, started elsewhere.

import { type Outcome, fail, ok } from '../num/outcome.ts';
import { SAME_POINT } from '../num/tolerances.ts';
import { atVertex, lengthsBefore, pathLength, pointAlong, withinPath } from './measure.ts';
import { type Path, type Vertex, endOf, segmentsOf, startOf } from './path.ts';
import { type Frame, type Point, distance, partWay } from './point.ts';
import { type Pose, carryVec } from './pose.ts';
import { bulgeOf, pointOnSegment, stretchOfSegment } from './segment.ts';

/** The same path run the other way; a closed path still starts at the same vertex. */
export function reversedPath<F extends Frame>(path: Path<F>): Path<F> {
  const { vertices, closed } = path;
  const count = vertices.length;
  const reversed: Vertex[] = [];
  for (let i = 0; i < count; i++) {
    const at = vertices[closed ? (count - i) % count : count - 1 - i]!;
    // The stretch that leaves this vertex now is the one that came to it before.
    const before = vertices[closed ? (count - i - 1 + count) % count : count - 2 - i];
    reversed.push({ x: at.x, y: at.y, bulge: before && before.bulge !== 0 ? -before.bulge : 0 });
  }
  return { closed, vertices: reversed };
}

/** The path as seen in the other frame; a flip turns its arcs the other way. */
export function carryPath<From extends Frame, To extends Frame>(pose: Pose<From, To>, path: Path<From>): Path<To> {
  const x = carryVec<From, To>(pose, { x: 1, y: 0 });
  const y = carryVec<From, To>(pose, { x: 0, y: 1 });
  return {
    closed: path.closed,
    vertices: path.vertices.map((v) => ({
      x: pose.x + x.x * v.x + y.x * v.y,
      y: pose.y + x.y * v.x + y.y * v.y,
      bulge: pose.flipped && v.bulge !== 0 ? -v.bulge : v.bulge,
    })),
  };
}

/**
 * The open path from one distance along to another, in inches. On a closed path distances are taken round it, and a stretch
 * with `to` less than `from` runs over its start; a whole round or more gives one whole round. On an open path the ends are
 * held within it, and with `to` not beyond `from` a single point is left. A cut within rounding slack of a vertex is made at it.
 */
export function stretchOfPath<F extends Frame>(path: Path<F>, from: number, to: number): Path<F> {
  const total = pathLength(path);
  if (total === 0) return { closed: false, vertices: path.vertices.slice(0, 1).map((v) => ({ ...v, bulge: 0 })) };
  const start = atVertex(path, from);
  if (!path.closed) return run(path, start, atVertex(path, Math.max(start, withinPath(path, to))));
  if (to - from >= total - SAME_POINT) return run(path, start, start + total);
  const stop = atVertex(path, to);
  return run(path, start, stop >= start ? stop : stop + total);
}

/**
 * The path cut at distances along it, in inches and in any order; pieces of no length are left out. A closed path cut once gives one
 * open path all round; cut nowhere, the path itself comes back.
 */
export function splitPath<F extends Frame>(path: Path<F>, distances: readonly number[]): readonly Path<F>[] {
  const total = pathLength(path);
  if (total === 0) return [path];
  const cuts = distances.map((d) => atVertex(path, d)).sort((a, b) => a - b);
  const apart = cuts.filter((d, i) => i === 0 || d - cuts[i - 1]! > SAME_POINT);
  const ends = path.closed ? apart : [0, ...apart.filter((d) => d > 0 && d < total), total];
  if (path.closed && ends.length > 0) ends.push(ends[0]! + total);
  if (ends.length < (path.closed ? 2 : 3)) return [path];
  return ends.slice(1).map((end, i) => run(path, ends[i]!, end));
}

/** Why two paths could not be joined. */
export type JoinProblem =
  | { readonly kind: 'closed'; readonly message: string }
  | { readonly kind: 'empty'; readonly message: string }
  | { readonly kind: 'apart'; readonly gap: number; readonly message: string };

/**
 * The path that runs through `a` and on through `b`, when the end of `a` and the start of `b` are no farther apart than `within`
 * inches. A gap is closed by moving both ends to the middle of it.
 */
export function joinPaths<F extends Frame>(a: Path<F>, b: Path<F>, within: number): Outcome<Path<F>, JoinProblem> {
  if (a.closed || b.closed) return fail({ kind: 'closed', message: 'a closed path has no end to join' });
  const end = endOf(a);
  const start = startOf(b);
  if (!end || !start) return fail({ kind: 'empty', message: 'a path without vertices cannot be joined' });
  const gap = distance(end, start);
  if (gap > within) return fail({ kind: 'apart', gap, message: `the ends are ${gap} in apart, more than ${within} in` });
  const meet = gap <= SAME_POINT ? start : partWay(end, start, 0.5);
  const first = b.vertices[0]!;
  return ok({ closed: false, vertices: [...a.vertices.slice(0, -1), { ...meet, bulge: first.bulge }, ...b.vertices.slice(1)] });
}

/** The open path made closed, when its ends are no farther apart than `within` inches; a gap is closed by moving both ends to the middle of it. */
export function closeUp<F extends Frame>(path: Path<F>, within: number): Outcome<Path<F>, JoinProblem> {
  if (path.closed) return ok(path);
  const start = startOf(path);
  const end = endOf(path);
  if (!start || !end || path.vertices.length < 2) return fail({ kind: 'empty', message: 'a path without a stretch cannot be closed' });
  const gap = distance(start, end);
  if (gap > within) return fail({ kind: 'apart', gap, message: `the ends are ${gap} in apart, more than ${within} in` });
  const meet = gap <= SAME_POINT ? start : partWay(start, end, 0.5);
  return ok({ closed: true, vertices: [{ ...meet, bulge: path.vertices[0]!.bulge }, ...path.vertices.slice(1, -1)] });
}

/** The same closed path, started a distance along it; an open path comes back as it is. */
export function startingAt<F extends Frame>(path: Path<F>, along: number): Path<F> {
  if (!path.closed || pathLength(path) === 0) return path;
  const start = atVertex(path, along);
  if (start === 0) return path;
  return { closed: true, vertices: run(path, start, start + pathLength(path)).vertices.slice(0, -1) };
}

/** An open path lengthened straight on at either end, by so many inches. */
export function lengthened<F extends Frame>(path: Path<F>, before: number, after: number): Path<F> {
  const total = pathLength(path);
  if (path.closed || total === 0) return path;
  const vertices = [...path.vertices];
  if (before > 0) {
    const { point, tangent } = pointAlong(path, 0);
    vertices.unshift({ x: point.x - tangent.x * before, y: point.y - tangent.y * before, bulge: 0 });
  }
  if (after > 0) {
    const { point, tangent } = pointAlong(path, total);
    vertices.push({ x: point.x + tangent.x * after, y: point.y + tangent.y * after, bulge: 0 });
  }
  return { closed: false, vertices };
}

/** The open path between two distances; `to` may lie up to one round of a closed path beyond `from`. */
function run<F extends Frame>(path: Path<F>, from: number, to: number): Path<F> {
  const segments = segmentsOf(path);
  const lengths = lengthsBefore(path);
  const total = pathLength(path);
  const first = pointAlong(path, from);
  if (to <= from) return { closed: false, vertices: [{ ...first.point, bulge: 0 }] };
  const vertices: Vertex[] = [];
  let last: Point<F> = first.point;
  for (let i = first.segment; i < 2 * segments.length; i++) {
    const number = i % segments.length;
    const rounds = i < segments.length ? 0 : total;
    const length = lengths[number + 1]! - lengths[number]!;
    const starts = lengths[number]! + rounds;
    if (starts >= to) break;
    const s = segments[number]!;
    const a = i === first.segment ? first.part : 0;
    const b = starts + length <= to ? 1 : (to - starts) / length;
    const at = pointOnSegment(s, a);
    // A whole stretch keeps its own bulge to the last digit.
    const bulge = a === 0 && b === 1 ? path.vertices[number]!.bulge : bulgeOf(stretchOfSegment(s, a, b));
    vertices.push({ x: at.x, y: at.y, bulge });
    last = pointOnSegment(s, b);
  }
  vertices.push({ x: last.x, y: last.y, bulge: 0 });
  return { closed: false, vertices };
}
