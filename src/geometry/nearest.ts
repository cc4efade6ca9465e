// The nearest place on a path, and on many paths at once.

import { boundsOf } from './bounds.ts';
import { distanceAlong } from './measure.ts';
import { type Path, segmentsOf } from './path.ts';
import { type Frame, type Point, distance } from './point.ts';
import { indexOf, segmentBounds, segmentIndex, segmentsIn } from './segment-index.ts';
import { type Segment, nearestOnSegment, pointOnSegment } from './segment.ts';

/** The place on a path that is nearest to some point. */
export interface NearestPlace<F extends Frame> {
  readonly point: Point<F>;
  /** Inches from the point asked about. */
  readonly distance: number;
  /** Inches along the path. */
  readonly along: number;
  readonly segment: number;
  /** 0 at the segment's start, 1 at its end. */
  readonly part: number;
}

/**
 * The nearest place on a path; of several, the first along it. At a corner it is the start of the segment that follows. On a
 * path without vertices nothing is near: the distance is infinite.
 */
export function nearestOnPath<F extends Frame>(path: Path<F>, p: Point<F>): NearestPlace<F> {
  const segments = segmentsOf(path);
  const first = path.vertices[0];
  if (segments.length === 0) {
    const only = first ? { x: first.x, y: first.y } : p;
    return { point: only, distance: first ? distance(only, p) : Infinity, along: 0, segment: 0, part: 0 };
  }
  const index = segmentIndex(path);
  if (!index) return placeOn(path, nearestAmong(segments, undefined, p));
  // The index ranks rectangles, not segments: what the nearest few give bounds the search, and all that reach so near are tried.
  const few = nearestAmong(segments, index.neighbors(p.x, p.y, 4), p);
  const reach = { minX: p.x - few.distance, minY: p.y - few.distance, maxX: p.x + few.distance, maxY: p.y + few.distance };
  return placeOn(path, nearestAmong(segments, segmentsIn(path, reach), p, few));
}

/** A place on one of several paths. */
export interface NearestOfPaths<F extends Frame> extends NearestPlace<F> {
  /** Index of the path. */
  readonly path: number;
}

/**
 * For asking many times about the same paths: a function from a point to the nearest place on any of them, or undefined when
 * there is none within the distance given.
 */
export function nearestIndex<F extends Frame>(paths: readonly Path<F>[]): (p: Point<F>, within?: number) => NearestOfPaths<F> | undefined {
  const owners: number[] = [];
  const numbers: number[] = [];
  const segments: Segment<F>[] = [];
  paths.forEach((path, owner) =>
    segmentsOf(path).forEach((s, number) => {
      segments.push(s);
      owners.push(owner);
      numbers.push(number);
    }),
  );
  if (segments.length === 0) return () => undefined;
  const index = indexOf(paths.flatMap((path) => segmentBounds(path)));
  return (p, within = Infinity) => {
    const few = nearestAmong(segments, index.neighbors(p.x, p.y, 4, within), p);
    const reach = Math.min(few.distance, within);
    const close = index.search(p.x - reach, p.y - reach, p.x + reach, p.y + reach).sort((a, b) => a - b);
    const best = nearestAmong(segments, close, p, few);
    if (best.index < 0 || best.distance > within) return undefined;
    const owner = owners[best.index]!;
    return { ...placeOn(paths[owner]!, { ...best, index: numbers[best.index]! }), path: owner };
  };
}

/** Shortest distance from a point to a path, in inches; infinite when the path has no vertices. */
export function distanceToPath<F extends Frame>(path: Path<F>, p: Point<F>): number {
  return nearestOnPath(path, p).distance;
}

/** A bound below which no point of the path lies from `p`, in inches: the distance to its extents. Cheap. */
export function leastDistanceToPath<F extends Frame>(path: Path<F>, p: Point<F>): number {
  const b = boundsOf(path);
  return Math.hypot(Math.max(0, b.minX - p.x, p.x - b.maxX), Math.max(0, b.minY - p.y, p.y - b.maxY));
}

interface Candidate {
  readonly index: number;
  readonly part: number;
  readonly distance: number;
}

function nearestAmong<F extends Frame>(segments: readonly Segment<F>[], which: readonly number[] | undefined, p: Point<F>, known?: Candidate): Candidate {
  let best: Candidate = known ?? { index: -1, part: 0, distance: Infinity };
  const count = which ? which.length : segments.length;
  for (let i = 0; i < count; i++) {
    const index = which ? which[i]! : i;
    const near = nearestOnSegment(segments[index]!, p);
    if (near.distance < best.distance || (near.distance === best.distance && index < best.index)) best = { index, ...near };
  }
  return best;
}

function placeOn<F extends Frame>(path: Path<F>, { index, part, distance: away }: Candidate): NearestPlace<F> {
  const segments = segmentsOf(path);
  const point = pointOnSegment(segments[index]!, part);
  if (part < 1 || (!path.closed && index === segments.length - 1)) {
    return { point, distance: away, along: distanceAlong(path, index, part), segment: index, part };
  }
  const next = (index + 1) % segments.length;
  return { point, distance: away, along: distanceAlong(path, next, 0), segment: next, part: 0 };
}
