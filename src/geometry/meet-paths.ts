// Where two paths meet, or one path meets itself: crossings, touchings and shared stretches, each told once, also where it
// lies at a vertex.

import { SAME_POINT } from '../num/tolerances.ts';
import { boundsMeet, boundsOf, grownBounds } from './bounds.ts';
import { atVertex, distanceAlong, pathLength, withinPath } from './measure.ts';
import { meetSegments } from './meet-segments.ts';
import { type Path, segmentsOf } from './path.ts';
import type { Frame, Point } from './point.ts';
import { segmentBounds, segmentsIn } from './segment-index.ts';
import { type Events, branchesAt, sideOfBranch } from './branches.ts';

/** Distances along are inches from each path's start; on a closed path they are less than its length. */
export type PathMeeting<F extends Frame> =
  /** `crossing`: at the place the paths change sides. `touching`: they meet there and do not, or one of them ends. */
  | { readonly kind: 'crossing' | 'touching'; readonly at: Point<F>; readonly alongA: number; readonly alongB: number }
  | SharedStretch<F>;

/** A stretch that two paths have in common. */
export interface SharedStretch<F extends Frame> {
  readonly kind: 'overlap';
  /** In the order of `a`. */
  readonly from: Point<F>;
  readonly to: Point<F>;
  /** Where the stretch begins and ends on `a`; over the start of a closed path the second is the lesser, all the way round they are equal. */
  readonly alongA: readonly [number, number];
  /** The same on `b`, which may run the other way. */
  readonly alongB: readonly [number, number];
  /** In inches. */
  readonly length: number;
  /** Whether `b` runs along the stretch the way `a` does. */
  readonly sameWay: boolean;
  /** Whether the paths change sides over the stretch; of a path that doubles back on itself it cannot be told. */
  readonly crosses: boolean;
}

/** All meetings of two paths, in order along `a`: each crossing, touching and shared stretch once; none when they stay apart. */
export function meetPaths<F extends Frame>(a: Path<F>, b: Path<F>): readonly PathMeeting<F>[] {
  if (!boundsMeet(boundsOf(a), boundsOf(b), SAME_POINT)) return [];
  const found = emptyFinds<F>();
  segmentBounds(a).forEach((bounds, i) => {
    for (const j of segmentsIn(b, grownBounds(bounds, SAME_POINT))) gather(found, a, i, b, j);
  });
  return settled(a, b, found);
}

/**
 * All meetings of a path with itself, in order of the first time it is there (`alongA`; `alongB` is the second time). Going on
 * from one stretch to the next is no meeting; doubling back is.
 */
export function meetItself<F extends Frame>(path: Path<F>): readonly PathMeeting<F>[] {
  const found = emptyFinds<F>();
  segmentBounds(path).forEach((bounds, i) => {
    for (const j of segmentsIn(path, grownBounds(bounds, SAME_POINT))) if (j > i) gather(found, path, i, path, j);
  });
  const spots = found.spots
    .filter((s) => !isSame(path, s.alongA, s.alongB))
    .map((s) => (s.alongA <= s.alongB ? s : { ...s, alongA: s.alongB, alongB: s.alongA }));
  return settled(path, path, { spots, stretches: found.stretches });
}

interface Spot<F extends Frame> {
  readonly kind: 'crossing' | 'touching';
  readonly at: Point<F>;
  readonly alongA: number;
  readonly alongB: number;
}

interface Stretch<F extends Frame> {
  readonly from: Point<F>;
  readonly to: Point<F>;
  readonly alongA: number;
  readonly alongB: number;
  readonly length: number;
  /** 1 when `b` runs the way `a` does, -1 when it runs against it. */
  readonly way: 1 | -1;
}

interface Finds<F extends Frame> {
  readonly spots: readonly Spot<F>[];
  readonly stretches: readonly Stretch<F>[];
}

interface Gathering<F extends Frame> {
  readonly spots: Spot<F>[];
  readonly stretches: Stretch<F>[];
}

function emptyFinds<F extends Frame>(): Gathering<F> {
  return { spots: [], stretches: [] };
}

/** Adds the meetings of one segment of each path, in distances along. */
function gather<F extends Frame>(found: Gathering<F>, a: Path<F>, i: number, b: Path<F>, j: number): void {
  for (const m of meetSegments(segmentsOf(a)[i]!, segmentsOf(b)[j]!)) {
    if (m.kind === 'overlap') {
      const fromA = distanceAlong(a, i, m.partsA[0]);
      found.stretches.push({
        from: m.from,
        to: m.to,
        alongA: atVertex(a, fromA),
        alongB: atVertex(b, distanceAlong(b, j, m.partsB[0])),
        length: distanceAlong(a, i, m.partsA[1]) - fromA,
        way: m.partsB[1] >= m.partsB[0] ? 1 : -1,
      });
    } else {
      found.spots.push({ kind: m.kind, at: m.at, alongA: atVertex(a, distanceAlong(a, i, m.partA)), alongB: atVertex(b, distanceAlong(b, j, m.partB)) });
    }
  }
}

function settled<F extends Frame>(a: Path<F>, b: Path<F>, found: Finds<F>): readonly PathMeeting<F>[] {
  const stretches = chained(a, b, found.stretches);
  const spots: Spot<F>[] = [];
  const seen = new Map<number, Spot<F>[]>();
  for (const spot of found.spots) {
    if (stretches.some((s) => isHeld(a, s.alongA, s.length, 1, spot.alongA) && isHeld(b, s.alongB, s.length, s.way, spot.alongB))) continue;
    // Spots at a vertex come once from each segment there, with the same distance along the path the vertex is of.
    const cell = Math.round(spot.alongA / (4 * SAME_POINT));
    const near = [cell - 1, cell, cell + 1].flatMap((c) => seen.get(c) ?? []);
    if (near.some((s) => isSame(a, s.alongA, spot.alongA) && isSame(b, s.alongB, spot.alongB))) continue;
    seen.set(cell, [...(seen.get(cell) ?? []), spot]);
    spots.push(spot);
  }
  const endsA = [...spots.map((s) => s.alongA), ...stretches.flatMap((s) => [s.alongA, withinPath(a, s.alongA + s.length)])];
  const endsB = [...spots.map((s) => s.alongB), ...stretches.flatMap((s) => [s.alongB, withinPath(b, s.alongB + s.way * s.length)])];
  const eventsA = inOrder(a === b ? [...endsA, ...endsB] : endsA);
  const eventsB = a === b ? eventsA : inOrder(endsB);
  return [
    ...spots.map((s) => toldSpot(a, b, s, eventsA, eventsB)),
    ...stretches.map((s) => toldStretch(a, b, s, eventsA, eventsB)),
  ].sort((one, other) => firstAlong(one) - firstAlong(other));
}

function inOrder(distances: readonly number[]): Events {
  return [...distances].sort((x, y) => x - y);
}

function firstAlong<F extends Frame>(m: PathMeeting<F>): number {
  return m.kind === 'overlap' ? m.alongA[0] : m.alongA;
}

/** Whether two distances along a path are the same place; the start of a closed path is also its end. */
function isSame<F extends Frame>(path: Path<F>, one: number, other: number): boolean {
  const gap = Math.abs(one - other);
  return gap <= 2 * SAME_POINT || (path.closed && gap >= pathLength(path) - 2 * SAME_POINT);
}

/** Whether a stretch from a distance along, running on or back, holds a place. */
function isHeld<F extends Frame>(path: Path<F>, from: number, length: number, way: 1 | -1, along: number): boolean {
  if (isSame(path, from, along)) return true;
  const ahead = way * (along - from);
  const onward = path.closed && ahead < 0 ? ahead + pathLength(path) : ahead;
  return onward >= 0 && onward <= length + 2 * SAME_POINT;
}

/** Shared stretches that follow each other on both paths made into one, also over the start of `a`. */
function chained<F extends Frame>(a: Path<F>, b: Path<F>, found: readonly Stretch<F>[]): readonly Stretch<F>[] {
  const follows = (one: Stretch<F>, next: Stretch<F>) =>
    one.way === next.way &&
    isSame(a, withinPath(a, one.alongA + one.length), next.alongA) &&
    isSame(b, withinPath(b, one.alongB + one.way * one.length), next.alongB);
  const linked = (one: Stretch<F>, next: Stretch<F>): Stretch<F> => ({ ...one, to: next.to, length: one.length + next.length });
  const chains: Stretch<F>[] = [];
  for (const next of [...found].sort((one, other) => one.alongA - other.alongA)) {
    const i = chains.findIndex((chain) => follows(chain, next));
    if (i >= 0) chains[i] = linked(chains[i]!, next);
    else chains.push(next);
  }
  for (let i = 0; a.closed && i < chains.length; i++) {
    const next = chains.findIndex((chain, j) => j !== i && follows(chains[i]!, chain));
    if (next < 0) continue;
    chains[i] = linked(chains[i]!, chains[next]!);
    chains.splice(next, 1);
    i = -1;
  }
  return chains;
}

function toldSpot<F extends Frame>(a: Path<F>, b: Path<F>, s: Spot<F>, eventsA: Events, eventsB: Events): PathMeeting<F> {
  if (s.kind === 'crossing') return s;
  const onB = branchesAt(b, s.alongB, eventsB);
  const onA = branchesAt(a, s.alongA, eventsA);
  return { ...s, kind: sideOfBranch(onA, onB.ahead) * sideOfBranch(onA, onB.behind) < 0 ? 'crossing' : 'touching' };
}

function toldStretch<F extends Frame>(a: Path<F>, b: Path<F>, s: Stretch<F>, eventsA: Events, eventsB: Events): SharedStretch<F> {
  const endA = atVertex(a, s.alongA + s.length);
  const endB = atVertex(b, s.alongB + s.way * s.length);
  const firstB = branchesAt(b, s.alongB, eventsB);
  const lastB = branchesAt(b, endB, eventsB);
  // Where `b` comes from and where it goes, seen along `a`.
  const into = sideOfBranch(branchesAt(a, s.alongA, eventsA), s.way === 1 ? firstB.behind : firstB.ahead);
  const outOf = sideOfBranch(branchesAt(a, endA, eventsA), s.way === 1 ? lastB.ahead : lastB.behind);
  return {
    kind: 'overlap',
    from: s.from,
    to: s.to,
    alongA: [s.alongA, endA],
    alongB: [s.alongB, endB],
    length: s.length,
    sameWay: s.way === 1,
    crosses: into * outOf < 0,
  };
}
