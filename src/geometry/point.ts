// Points and vectors: plain data, told apart by type, and marked with the frame they are measured in.
// Only a pose carries a point from one frame to another.

/** Where coordinates are measured: on the template's face, in an area's own axes, on the whole quilt, or on a page. */
export type Frame = 'template' | 'area' | 'quilt' | 'page';

declare const measuredIn: unique symbol;

/** A place, in inches; x to the right, y down. */
export interface Point<F extends Frame> {
  readonly x: number;
  readonly y: number;
  readonly [measuredIn]?: (frame: ['point', F]) => ['point', F];
}

/** A displacement or direction, in inches; x to the right, y down. */
export interface Vec<F extends Frame> {
  readonly x: number;
  readonly y: number;
  readonly [measuredIn]?: (frame: ['vec', F]) => ['vec', F];
}

export function point<F extends Frame>(x: number, y: number): Point<F> {
  return { x, y };
}

export function vec<F extends Frame>(x: number, y: number): Vec<F> {
  return { x, y };
}

/** The vector that leads from one point to another. */
export function between<F extends Frame>(from: Point<F>, to: Point<F>): Vec<F> {
  return { x: to.x - from.x, y: to.y - from.y };
}

/** The point reached by going `times` the vector from a point. */
export function moved<F extends Frame>(from: Point<F>, by: Vec<F>, times = 1): Point<F> {
  return { x: from.x + by.x * times, y: from.y + by.y * times };
}

/** The point a part of the way along the straight line; 0 at `a`, 1 at `b`. */
export function partWay<F extends Frame>(a: Point<F>, b: Point<F>, part: number): Point<F> {
  return { x: a.x + (b.x - a.x) * part, y: a.y + (b.y - a.y) * part };
}

export function distance<F extends Frame>(a: Point<F>, b: Point<F>): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

export function dot<F extends Frame>(a: Vec<F>, b: Vec<F>): number {
  return a.x * b.x + a.y * b.y;
}

/** Positive when `b` lies clockwise of `a` on the screen. */
export function cross<F extends Frame>(a: Vec<F>, b: Vec<F>): number {
  return a.x * b.y - a.y * b.x;
}

/** Length of a vector, in inches. */
export function size<F extends Frame>(v: Vec<F>): number {
  return Math.hypot(v.x, v.y);
}

export function scaled<F extends Frame>(v: Vec<F>, times: number): Vec<F> {
  return { x: v.x * times, y: v.y * times };
}

export function plus<F extends Frame>(a: Vec<F>, b: Vec<F>): Vec<F> {
  return { x: a.x + b.x, y: a.y + b.y };
}

/** The vector turned a quarter turn clockwise on the screen. */
export function quarterTurned<F extends Frame>(v: Vec<F>): Vec<F> {
  return { x: -v.y, y: v.x };
}

/** The unit vector of the same direction; the zero vector stays zero. */
export function unit<F extends Frame>(v: Vec<F>): Vec<F> {
  const length = Math.hypot(v.x, v.y);
  return length === 0 ? v : { x: v.x / length, y: v.y / length };
}

/** The unit vector in a direction given in radians, clockwise from x. */
export function heading<F extends Frame>(angle: number): Vec<F> {
  return { x: Math.cos(angle), y: Math.sin(angle) };
}

/** Direction of a vector in radians, clockwise from x, in (-pi, pi]. */
export function angleOf<F extends Frame>(v: Vec<F>): number {
  return Math.atan2(v.y, v.x);
}
