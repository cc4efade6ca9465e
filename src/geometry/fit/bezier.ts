// Cubic and quadratic Beziers, the curves of drawing files, as chains of arcs.
// Maths: Bernstein form and its derivatives; a quadratic is the cubic with handles two thirds of the way to its control point (SVG 2, 9.3.7, leaves
// this to the reader; G. Farin, "Curves and surfaces for CAGD", degree elevation). What is smooth, bent or a cusp is found in the fit itself.

import { FIT } from '../../num/tolerances.ts';
import type { Path } from '../path.ts';
import { type Frame, type Point, type Vec, partWay } from '../point.ts';
import { fitCurve } from './curve.ts';
import type { Curve } from './look.ts';

/** A cubic has at most two inflections and one loop, so this many parts hide nothing. */
const STEPS_OF_CUBIC = 16;

/**
 * The open path of lines and arcs that follows a cubic Bezier from `p0` to `p3` within `within` inches, tangent-continuous except at a true cusp. A cubic
 * whose four points are the same comes back as a straight path of no length.
 */
export function fitCubic<F extends Frame>(p0: Point<F>, p1: Point<F>, p2: Point<F>, p3: Point<F>, within: number = FIT): Path<F> {
  return fitCurve(cubic(p0, p1, p2, p3), 0, 1, within, STEPS_OF_CUBIC);
}

/** The same for a quadratic Bezier from `p0` to `p2`. */
export function fitQuadratic<F extends Frame>(p0: Point<F>, p1: Point<F>, p2: Point<F>, within: number = FIT): Path<F> {
  return fitCubic(p0, partWay(p0, p1, 2 / 3), partWay(p2, p1, 2 / 3), p2, within);
}

/** A cubic Bezier by its parameter, 0 to 1. At an end whose handle has no length the tangent is the direction in which the curve leaves or arrives. */
export function cubic<F extends Frame>(p0: Point<F>, p1: Point<F>, p2: Point<F>, p3: Point<F>): Curve<F> {
  const a: Vec<F> = { x: p1.x - p0.x, y: p1.y - p0.y };
  const b: Vec<F> = { x: p2.x - p1.x, y: p2.y - p1.y };
  const c: Vec<F> = { x: p3.x - p2.x, y: p3.y - p2.y };
  const isStill = (v: Vec<F>) => v.x === 0 && v.y === 0;
  const leaving = !isStill(a) ? a : !isStill(b) ? b : c;
  const arriving = !isStill(c) ? c : !isStill(b) ? b : a;
  return (t) => {
    const u = 1 - t;
    const point = {
      x: u * u * u * p0.x + 3 * u * u * t * p1.x + 3 * u * t * t * p2.x + t * t * t * p3.x,
      y: u * u * u * p0.y + 3 * u * u * t * p1.y + 3 * u * t * t * p2.y + t * t * t * p3.y,
    };
    if (t === 0) return { point: p0, tangent: leaving };
    if (t === 1) return { point: p3, tangent: arriving };
    return { point, tangent: { x: u * u * a.x + 2 * u * t * b.x + t * t * c.x, y: u * u * a.y + 2 * u * t * b.y + t * t * c.y } };
  };
}
