// A needle line as the set-out solvers read it: stretches of one direction or one circle each, so that a circle is one
// stretch and not two halves, with the angle of the normal as the one variable along an arc.
//
// On every arc P = C - rho N and T is N turned a quarter counterclockwise: N points to the right of the way the line runs, and rho,
// the radius, is positive where the line turns clockwise. A place on an arc is then told by the direction of N alone, whichever
// way the arc turns.

import { TURN, normalised } from '../../num/angle.ts';
import { SAME_NUMBER, WELD } from '../../num/tolerances.ts';
import { lengthsBefore, pathLength } from '../../geometry/measure.ts';
import { type Path, segmentsOf } from '../../geometry/path.ts';
import { type Point, type Vec, angleOf, between, cross, distance, dot, heading, moved, quarterTurned, unit } from '../../geometry/point.ts';
import { type Segment, segmentLength } from '../../geometry/segment.ts';

type At = Point<'template'>;

/** What tells at a glance how far two stretches can be apart: a circle that holds the stretch. */
interface Held {
  readonly middle: At;
  readonly spread: number;
}

/** A straight stretch: from `from` along the unit vector `way`. */
export interface StraightStretch extends Held {
  readonly kind: 'line';
  readonly from: At;
  readonly way: Vec<'template'>;
  /** Inches along the needle line where it starts, and its length. */
  readonly starts: number;
  readonly length: number;
}

/** A stretch of one circle; it may go all the way round. */
export interface RoundStretch extends Held {
  readonly kind: 'arc';
  readonly centre: At;
  /** Radius in inches, positive where the line turns clockwise. */
  readonly rho: number;
  /** Direction of the normal at its start, and through how many radians it turns (of the sign of rho). */
  readonly normal: number;
  readonly sweep: number;
  readonly starts: number;
  readonly length: number;
}

export type Stretch = StraightStretch | RoundStretch;

export interface NeedleCurve {
  readonly path: Path<'template'>;
  readonly closed: boolean;
  readonly length: number;
  readonly stretches: readonly Stretch[];
  /** No two places of it are farther apart than this (never less than the truth, seldom much more), in inches. */
  readonly widest: number;
}

/** A place on the curve: inches along it, where that is, and the unit vector of the way it runs. */
export interface CurvePlace {
  readonly along: number;
  readonly at: At;
  readonly way: Vec<'template'>;
}

const known = new WeakMap<object, NeedleCurve>();

/** The needle line as stretches, in order along it; kept with the path. */
export function needleCurve(path: Path<'template'>): NeedleCurve {
  const before = known.get(path);
  if (before) return before;
  const stretches = merged(rawStretches(path), path.closed, pathLength(path));
  const curve: NeedleCurve = { path, closed: path.closed, length: pathLength(path), stretches, widest: widestChord(path) };
  known.set(path, curve);
  return curve;
}

/** The place of a round stretch whose normal has a direction in radians, or undefined when the stretch does not come there. */
export function placeByNormal(curve: NeedleCurve, arc: RoundStretch, normal: number): CurvePlace | undefined {
  const part = partByNormal(arc, normal);
  if (part === undefined) return undefined;
  const n = heading<'template'>(normal);
  return { along: onCurve(curve, arc.starts + part * arc.length), at: moved(arc.centre, n, -arc.rho), way: { x: n.y, y: -n.x } };
}

/** The place of a straight stretch so many inches from its start, or undefined when it lies beyond its ends. */
export function placeByReach(curve: NeedleCurve, line: StraightStretch, reach: number): CurvePlace | undefined {
  if (reach < -WELD || reach > line.length + WELD) return undefined;
  const held = Math.min(line.length, Math.max(0, reach));
  return { along: onCurve(curve, line.starts + held), at: moved(line.from, line.way, held), way: line.way };
}

/** How far from the start of a straight stretch a point lies, measured along it. */
export function reachOf(line: StraightStretch, p: At): number {
  return dot(line.way, between(line.from, p));
}

/** Whether a place of one stretch and a place of the other can be from `least` to `most` inches apart, as far as the circles round them tell. */
export function canBeApart(a: Stretch, b: Stretch, least: number, most: number): boolean {
  const between = Math.hypot(b.middle.x - a.middle.x, b.middle.y - a.middle.y);
  const slack = a.spread + b.spread + WELD;
  return between + slack >= least && between - slack <= most;
}

/** Inches of needle line from one place clockwise on to the other; on an open line undefined when the other comes before. */
export function runFrom(curve: NeedleCurve, from: number, to: number): number | undefined {
  if (to > from) return to - from;
  return curve.closed ? to - from + curve.length : undefined;
}

/** Where along the arc (0 to 1) its normal has a direction; undefined when it never has. */
function partByNormal(arc: RoundStretch, normal: number): number | undefined {
  const whole = Math.abs(arc.sweep);
  const turned = normalised(arc.sweep > 0 ? normal - arc.normal : arc.normal - normal);
  const slack = WELD / Math.abs(arc.rho);
  if (turned <= whole) return turned / whole;
  if (turned <= whole + slack) return 1;
  return turned >= TURN - slack ? 0 : undefined;
}

function onCurve(curve: NeedleCurve, along: number): number {
  if (!curve.closed) return Math.min(along, curve.length);
  return along >= curve.length ? along - curve.length : along;
}

function rawStretches(path: Path<'template'>): readonly Stretch[] {
  const lengths = lengthsBefore(path);
  return segmentsOf(path).flatMap((s, i) => (segmentLength(s) <= WELD ? [] : [stretchOf(s, lengths[i]!)]));
}

function stretchOf(s: Segment<'template'>, starts: number): Stretch {
  const length = segmentLength(s);
  if (s.kind === 'line') return straightStretch(s.from, unit(between(s.from, s.to)), starts, length);
  const inward = s.sweep > 0 ? s.start + Math.PI : s.start;
  return roundStretch({ centre: s.centre, rho: s.sweep > 0 ? s.radius : -s.radius, normal: inward, sweep: s.sweep, starts, length });
}

function straightStretch(from: At, way: Vec<'template'>, starts: number, length: number): StraightStretch {
  return { kind: 'line', from, way, starts, length, middle: moved(from, way, length / 2), spread: length / 2 };
}

function roundStretch(arc: Omit<RoundStretch, 'kind' | keyof Held>): RoundStretch {
  const radius = Math.abs(arc.rho);
  const half = Math.abs(arc.sweep) / 2;
  // Up to a half turn the middle of the chord holds it most closely, beyond that the centre.
  const short = half <= Math.PI / 2;
  const out = heading<'template'>(arc.normal + arc.sweep / 2);
  const middle = short ? moved(arc.centre, out, -arc.rho * Math.cos(half)) : arc.centre;
  return { kind: 'arc', ...arc, middle, spread: short ? radius * Math.sin(half) : radius };
}

/** Neighbours on one line or one circle made one, over the start of a closed path as well. */
function merged(raw: readonly Stretch[], closed: boolean, total: number): readonly Stretch[] {
  const joined: Stretch[] = [];
  for (const stretch of raw) {
    const last = joined[joined.length - 1];
    if (last && goesOn(last, stretch)) joined[joined.length - 1] = together(last, stretch);
    else joined.push(stretch);
  }
  const first = joined[0];
  const last = joined[joined.length - 1];
  if (closed && first && last && joined.length > 1 && goesOn(last, first)) {
    const over = together(last, first);
    return [...joined.slice(1, -1), over.starts >= total ? { ...over, starts: over.starts - total } : over];
  }
  return joined;
}

function goesOn(a: Stretch, b: Stretch): boolean {
  if (a.kind === 'line') return b.kind === 'line' && Math.abs(cross(a.way, b.way)) * (a.length + b.length) <= WELD && dot(a.way, b.way) > 0;
  return b.kind === 'arc' && onOneCircle(a, b);
}

/** Whether two round stretches run the same way round one circle. */
export function onOneCircle(a: RoundStretch, b: RoundStretch): boolean {
  return Math.abs(a.rho - b.rho) <= WELD && distance(a.centre, b.centre) <= WELD;
}

function together(a: Stretch, b: Stretch): Stretch {
  const length = a.length + b.length;
  if (a.kind === 'line') return straightStretch(a.from, a.way, a.starts, length);
  const sweep = b.kind === 'arc' ? a.sweep + b.sweep : a.sweep;
  const { centre, rho, normal, starts } = a;
  return roundStretch({ centre, rho, normal, sweep: Math.abs(sweep) > TURN ? Math.sign(sweep) * TURN : sweep, starts, length });
}

/**
 * The greatest distance between two places of a path: of its vertices and, on arcs, of the places straight across from the other end,
 * where alone it can lie. Of a convex line this is exact; it is found from the directions in which two tangents are parallel.
 */
function widestChord(path: Path<'template'>): number {
  const ends: readonly At[] = path.vertices.map(({ x, y }) => ({ x, y }));
  const arcs = segmentsOf(path).flatMap((s) => (s.kind === 'arc' ? [s] : []));
  let widest = 0;
  for (const [i, a] of ends.entries()) for (const b of ends.slice(i + 1)) widest = Math.max(widest, distance(a, b));
  const covers = (s: (typeof arcs)[number], way: Vec<'template'>) => {
    const run = normalised(s.sweep > 0 ? angleOf(way) - s.start : s.start - angleOf(way));
    return run <= Math.abs(s.sweep) + SAME_NUMBER;
  };
  for (const s of arcs) {
    for (const p of ends) {
      const away = between(p, s.centre);
      if (distance(p, s.centre) > WELD && covers(s, away)) widest = Math.max(widest, distance(p, s.centre) + s.radius);
    }
  }
  for (const [i, a] of arcs.entries()) {
    for (const b of arcs.slice(i)) {
      const apart = distance(a.centre, b.centre);
      if (apart <= WELD) {
        widest = Math.max(widest, across(a, b, covers));
        continue;
      }
      const way = between(a.centre, b.centre);
      const back = between(b.centre, a.centre);
      if (covers(b, way) && covers(a, back)) widest = Math.max(widest, apart + a.radius + b.radius);
    }
  }
  return widest;
}

/** Two arcs about one centre reach farthest where one lies straight across from the other. */
function across<S extends { readonly start: number; readonly sweep: number; readonly radius: number }>(a: S, b: S, covers: (s: S, way: Vec<'template'>) => boolean): number {
  const edges = [a.start, a.start + a.sweep];
  const opposite = edges.some((angle) => covers(b, heading(angle + Math.PI))) || [b.start, b.start + b.sweep].some((angle) => covers(a, heading(angle + Math.PI)));
  return opposite ? a.radius + b.radius : 0;
}

/** The unit normal to the right of a way. */
export function rightOfWay(way: Vec<'template'>): Vec<'template'> {
  return quarterTurned(way);
}
