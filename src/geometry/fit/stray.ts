// The best biarc for a stretch of curve, and how far it strays from it.
// The joint is put on the curve, where the curve crosses the circle on which the joints of all its biarcs lie (the joint circle, see Bolton),
// so that the error changes sign there and both arcs share it.
// The distance to the nearer arc, f, is followed along the curve. Its change along the curve's own length is the dot product of the curve's
// tangent with the direction square to the arc, so between samples f is known to the fourth order by Hermite's cubic, and the greatest
// value of that cubic is taken, not the greatest sample. As long as the curve runs forwards along the biarc, the foot of the
// perpendicular covers the biarc from end to end, and the same figure bounds the distance the other way round.

import { type Frame, type Point, type Vec, between, distance, dot, unit } from '../point.ts';
import { type Segment, bearingOf, rightOf, sideOf, tangentOnSegment } from '../segment.ts';
import { type Biarc, biarc, biarcThrough } from './biarc.ts';
import { type Curve, type Sample, type SmoothRun, sampleAt, samplesBetween, turnBetween } from './look.ts';

/** The curve is compared with each arc at its samples, or at this many places when it has fewer there, and at the ends. */
const PLACES = 3;

export interface FittedBiarc<F extends Frame> {
  readonly arcs: Biarc<F>;
  /** The greatest distance between the curve and the arcs, in inches; infinite when the curve turns back against them. */
  readonly stray: number;
}

/** The biarc for a run from `a` to `b`, which must turn less than a half turn in all; undefined when there is none. */
export function fittedBiarc<F extends Frame>(run: SmoothRun<F>, a: Sample<F>, b: Sample<F>): FittedBiarc<F> | undefined {
  const crossing = onJointCircle(run.curve, a, b);
  const through = crossing && biarcThrough(a.point, a.tangent, b.point, b.tangent, crossing.point);
  if (through) return { arcs: through, stray: strayOf(run, a, crossing, b, through) };
  const arcs = biarc(a.point, a.tangent, b.point, b.tangent);
  if (!arcs) return undefined;
  const abreast = root(a.t, b.t, (t) => dot(between(arcs[0].to, run.curve(t).point), tangentOnSegment(arcs[1], 0)));
  return { arcs, stray: strayOf(run, a, sampleAt(run.curve, abreast ?? (a.t + b.t) / 2, b.t), b, arcs) };
}

/**
 * Where the curve between its ends crosses the joint circle: there an arc from `a` and an arc to `b` have the same tangent. The tangent at the
 * far end of an arc is the near one mirrored on the chord.
 */
function onJointCircle<F extends Frame>(curve: Curve<F>, a: Sample<F>, b: Sample<F>): Sample<F> | undefined {
  const kink = (t: number): number => {
    const { point } = t === a.t ? a : t === b.t ? b : curve(t);
    const arriving = t === a.t ? a.tangent : mirrored(a.tangent, between(a.point, point));
    const leaving = t === b.t ? b.tangent : mirrored(b.tangent, between(point, b.point));
    return turnBetween(arriving, leaving);
  };
  const t = root(a.t, b.t, kink);
  return t === undefined ? undefined : sampleAt(curve, t, b.t);
}

function mirrored<F extends Frame>(v: Vec<F>, on: Vec<F>): Vec<F> {
  const along = unit(on);
  const twice = 2 * dot(v, along);
  return { x: twice * along.x - v.x, y: twice * along.y - v.y };
}

function strayOf<F extends Frame>(run: SmoothRun<F>, a: Sample<F>, joint: Sample<F>, b: Sample<F>, [first, second]: Biarc<F>): number {
  return Math.max(strayFromArc(run, a, joint, first), strayFromArc(run, joint, b, second));
}

function strayFromArc<F extends Frame>(run: SmoothRun<F>, a: Sample<F>, b: Sample<F>, arc: Segment<F>): number {
  const bearing = bearingOf(arc);
  const seen = samplesBetween(run, a.t, b.t);
  const count = Math.max(seen.length, PLACES);
  let most = 0;
  let before: { readonly point: Point<F>; readonly off: number; readonly slope: number } | undefined;
  for (let i = 0; i <= count + 1; i++) {
    const isOwn = seen.length >= PLACES;
    const here = i === 0 ? a : i === count + 1 ? b : isOwn ? seen[i - 1]! : sampleAt(run.curve, a.t + ((b.t - a.t) * i) / (count + 1), b.t);
    const right = rightOf(bearing, here.point);
    // Forwards along the arc is a quarter turn anticlockwise of its right side.
    if (here.tangent.x * right.y - here.tangent.y * right.x <= 0) return Infinity;
    const now = { point: here.point, off: sideOf(bearing, here.point), slope: dot(here.tangent, right) };
    most = Math.max(most, Math.abs(now.off));
    if (before) {
      const step = distance(before.point, now.point);
      most = Math.max(most, peak(before.off, before.slope * step, now.off, now.slope * step));
    }
    before = now;
  }
  return most;
}

/** The greatest size, inside, of the cubic on [0, 1] with the values f and the slopes g at its ends; 0 when the ends are the greatest. */
function peak(f0: number, g0: number, f1: number, g1: number): number {
  // f0 + g0 u + p u^2 + q u^3
  const p = 3 * (f1 - f0) - 2 * g0 - g1;
  const q = 2 * (f0 - f1) + g0 + g1;
  const inside = p * p - 3 * q * g0;
  if (inside < 0) return 0;
  const s = -(p + (p < 0 ? -1 : 1) * Math.sqrt(inside));
  let most = 0;
  for (const u of [s / (3 * q), g0 / s]) {
    if (u > 0 && u < 1) most = Math.max(most, Math.abs(f0 + u * (g0 + u * (p + u * q))));
  }
  return most;
}

/** Steps of the search for a joint: the arcs meet smoothly wherever it ends, so a thousandth of the stretch is near enough. */
const STEPS_TO_ROOT = 6;

/** Where a function changes sign, roughly, by regula falsi with the Illinois rule; undefined when it has the same sign at both ends. */
function root(t0: number, t1: number, f: (t: number) => number): number | undefined {
  let a = t0;
  let b = t1;
  let atA = f(a);
  let atB = f(b);
  if (!(atA * atB < 0)) return undefined;
  for (let i = 0; i < STEPS_TO_ROOT; i++) {
    const next = a + ((b - a) * atA) / (atA - atB);
    if (!(next > Math.min(a, b) && next < Math.max(a, b))) break;
    const atNext = f(next);
    if (atNext * atB < 0) [a, atA] = [b, atB];
    else atA /= 2;
    [b, atB] = [next, atNext];
  }
  return b === t0 || b === t1 ? undefined : b;
}
