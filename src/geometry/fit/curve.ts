// A smooth curve replaced by a chain of arcs, tangent-continuous, within a tolerance, with few arcs.
// The way: the curve is looked at closely and parted at its corners; if one biarc will not do for a smooth run, it is parted at its inflections, and
// each part is covered by the longest biarcs that fit; then the tolerance is drawn tighter as long as the count stays the same, so
// that the arcs share the error evenly and no scrap is left at the end. Biarcs have their ends and directions on the curve.
// Maths: the error of a biarc grows with the cube of its length (D. S. Meek and D. J. Walton, "Approximating smooth planar curves by arc splines",
// J. Comput. Appl. Math. 59 (1995) 221-231, quoted from memory), which steers the search for the longest one.

import { FIT, SAME_POINT } from '../../num/tolerances.ts';
import { closeUp } from '../change.ts';
import { type Path, type Vertex, openPath } from '../path.ts';
import { type Frame, distance } from '../point.ts';
import { bulgeOf } from '../segment.ts';
import { tidied } from '../tidy.ts';
import { type Curve, type Sample, type SmoothRun, inflectionsOf, placeOnRun, smoothRuns } from './look.ts';
import { fittedBiarc } from './stray.ts';

/** The part of the tolerance that is used; the rest covers what is missed between the places where curve and arcs are compared. */
const USED = 0.99;

/** A curve is looked at in this many parts unless the caller says otherwise. */
const STEPS = 64;

/**
 * The open path of lines and arcs that follows a curve from parameter `t0` to `t1`, nowhere farther from it than `within` inches. It starts and ends
 * on the curve and is tangent-continuous except where the curve itself has a corner. `steps` equal parts of the parameter must be fine
 * enough that none hides a whole wiggle. A curve that goes nowhere comes back as a straight path from its start to its end.
 */
export function fitCurve<F extends Frame>(curve: Curve<F>, t0: number, t1: number, within: number = FIT, steps = STEPS): Path<F> {
  if (t1 < t0) return fitCurve(backwards(curve), -t0, -t1, within, steps);
  const start = curve(t0).point;
  const end = curve(t1).point;
  const allowed = Math.max(within, SAME_POINT) * USED;
  const vertices: Vertex[] = [];
  for (const run of smoothRuns(curve, t0, t1, steps)) {
    const last = vertices[vertices.length - 1];
    const next = fitRun(run, allowed);
    if (last && distance(last, next[0]!) <= SAME_POINT) vertices.pop();
    vertices.push(...next);
  }
  if (vertices.length < 2) return openPath([{ ...start, bulge: 0 }, { ...end, bulge: 0 }]);
  vertices[0] = { x: start.x, y: start.y, bulge: vertices[0]!.bulge };
  vertices[vertices.length - 1] = { x: end.x, y: end.y, bulge: 0 };
  return tidied(openPath<F>(vertices));
}

/** The closed path that follows a curve which ends where it starts; a gap of more than rounding slack is closed by a straight line. */
export function fitClosedCurve<F extends Frame>(curve: Curve<F>, t0: number, t1: number, within: number = FIT, steps = STEPS): Path<F> {
  const open = fitCurve(curve, t0, t1, within, steps);
  const closed = closeUp(open, SAME_POINT);
  return closed.ok ? closed.value : { closed: true, vertices: open.vertices };
}

/** The curve run the other way, by the negative of its parameter. */
function backwards<F extends Frame>(curve: Curve<F>): Curve<F> {
  return (t) => {
    const { point, tangent } = curve(-t);
    return { point, tangent: { x: -tangent.x, y: -tangent.y } };
  };
}

/** The vertices that follow one smooth run. */
function fitRun<F extends Frame>(run: SmoothRun<F>, within: number): readonly Vertex[] {
  const a = run.samples[0]!;
  const b = run.samples[run.samples.length - 1]!;
  if (error(run, a, b, within) <= within) return verticesThrough(run, [a, b]);
  const stops = [...inflectionsOf(run).map((t) => placeOnRun(run, t)), b];
  const knots = [a];
  for (const stop of stops) {
    const from = knots[knots.length - 1]!;
    if (stop.t !== from.t) knots.push(...evened(run, from, stop, within));
  }
  return verticesThrough(run, knots);
}

/** Where the biarcs from `a` to `b` end: as few as will do, their errors evened out. */
function evened<F extends Frame>(run: SmoothRun<F>, a: Sample<F>, b: Sample<F>, within: number): readonly Sample<F>[] {
  let best = longest(run, a, b, within, Infinity)!;
  const count = best.ends.length;
  if (count === 1) return best.ends;
  let high = within;
  let low = within * ((count - 1) / count) ** 3 / 2;
  // Each biarc takes up the cube root of its error of the whole work; the first guess shares that out evenly.
  let next = within * ((count - 1 + Math.cbrt(best.lastError / within)) / count) ** 3;
  for (let i = 0; i < 4; i++) {
    const tighter = longest(run, a, b, Math.max(low, Math.min(high, next)), count);
    if (tighter) [high, best] = [next, tighter];
    else low = next;
    next = Math.sqrt(low * high);
  }
  return best.ends;
}

/** Biarcs laid one after another: where each ends, and how far the last one strays. */
interface Laid<F extends Frame> {
  readonly ends: readonly Sample<F>[];
  readonly lastError: number;
}

/** The biarcs from `a` to `b`, each as long as it can be; undefined when more than `most` are needed. */
function longest<F extends Frame>(run: SmoothRun<F>, a: Sample<F>, b: Sample<F>, within: number, most: number): Laid<F> | undefined {
  const ends: Sample<F>[] = [];
  let from = a;
  let guess = b.t - a.t;
  let lastError = 0;
  while (from.t !== b.t) {
    if (ends.length === most) return undefined;
    const { to, off } = farthest(run, from, b, within, guess);
    // No step forward at all: the curve jumps, and a straight line has to do.
    if (to.t === from.t) return { ends: [...ends, b], lastError };
    ends.push(to);
    guess = to.t - from.t;
    from = to;
    lastError = off;
  }
  return { ends, lastError };
}

/** A place that takes up this part of the tolerance is far enough; closer would cost more looking than it saves arcs. */
const FAR_ENOUGH = 0.92;

/** The farthest place towards `b` that one biarc from `from` reaches within the tolerance, and how far it then strays. */
function farthest<F extends Frame>(run: SmoothRun<F>, from: Sample<F>, b: Sample<F>, within: number, guess: number): { readonly to: Sample<F>; readonly off: number } {
  const whole = b.t - from.t;
  let good = 0;
  let reached: { readonly to: Sample<F>; readonly off: number } | undefined;
  let bad = Infinity;
  let part = Math.min(1, guess / whole);
  for (let i = 0; i < 60; i++) {
    const to = part === 1 ? b : placeOnRun(run, from.t + whole * part);
    const off = error(run, from, to, within);
    if (off <= within) [good, reached] = [part, { to, off }];
    else bad = part;
    if (good === 1 || (off <= within && off >= FAR_ENOUGH * within) || bad - good <= 0.01 * good) break;
    // The error grows with the cube of the length: aim a little short of the tolerance, and stay well inside what is known.
    const aim = Number.isFinite(off) ? part * Math.cbrt((0.96 * within) / Math.max(off, within * 1e-3)) : part / 2;
    const low = good + (Math.min(bad, 8 * good) - good) * 0.05;
    const high = bad === Infinity ? 1 : bad - 0.05 * (bad - good);
    part = Math.min(1, Math.max(low, Math.min(high, aim)));
  }
  return reached ?? { to: b, off: 0 };
}

/** A biarc stands for a stretch that turns no more than this in all: a little over the quarter turns that are so common. */
const MOST_TURN = 0.6 * Math.PI;

/** How far the one biarc from `a` to `b` strays from the curve; infinite when it must not be used. */
function error<F extends Frame>(run: SmoothRun<F>, a: Sample<F>, b: Sample<F>, within: number): number {
  if (b.turned - a.turned > MOST_TURN) return Infinity;
  // Turning no more than that, the curve is less than twice as long as its chord, and so is the biarc.
  if (distance(a.point, b.point) * 2 <= within) return 0;
  return fittedBiarc(run, a, b)?.stray ?? Infinity;
}

/** The vertices of the biarcs that lead through the samples one after another. */
function verticesThrough<F extends Frame>(run: SmoothRun<F>, knots: readonly Sample<F>[]): readonly Vertex[] {
  const vertices: Vertex[] = [];
  for (let i = 0; i + 1 < knots.length; i++) {
    const a = knots[i]!;
    const fitted = fittedBiarc(run, a, knots[i + 1]!);
    if (!fitted) vertices.push({ x: a.point.x, y: a.point.y, bulge: 0 });
    else for (const s of fitted.arcs) vertices.push({ x: s.from.x, y: s.from.y, bulge: bulgeOf(s) });
  }
  const end = knots[knots.length - 1]!.point;
  vertices.push({ x: end.x, y: end.y, bulge: 0 });
  return vertices;
}
