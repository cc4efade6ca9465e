// Ellipses, whole and in stretches, as chains of arcs; circles stay exact circles.
// Maths: the ellipse by its eccentric angle, centre + (rx cos t, ry sin t) turned by the tilt (SVG 2, B.2.2 "Parameterization alternatives").
// A whole ellipse is fitted over one quarter and mirrored, so that it is as symmetric as it should be; the arcs that meet on an axis are halves
// of one.

import { FIT, SAME_NUMBER, SAME_POINT } from '../../num/tolerances.ts';
import { type Path, type Vertex, circle, closedPath, openPath } from '../path.ts';
import type { Frame, Point } from '../point.ts';
import { tidied } from '../tidy.ts';
import { fitCurve } from './curve.ts';
import type { Curve } from './look.ts';

/**
 * The closed path, clockwise on the screen from the end of the first axis, that follows an ellipse within `within` inches. The semi-axes `rx` and `ry` are in inches, not
 * negative; `tilt` turns the first axis clockwise from x, in radians. Equal semi-axes give the exact circle.
 */
export function ellipse<F extends Frame>(centre: Point<F>, rx: number, ry: number, tilt: number, within: number = FIT): Path<F> {
  if (isRound(rx, ry)) return turned(circle<F>({ x: 0, y: 0 }, rx), centre, tilt);
  const quarter = fitCurve(ellipseCurve<F>({ x: 0, y: 0 }, rx, ry, 0), 0, Math.PI / 2, within).vertices;
  // Rounding would keep the mirror images from meeting exactly.
  const clean = quarter.map((v, i): Vertex => (i === 0 ? { ...v, x: rx, y: 0 } : i === quarter.length - 1 ? { ...v, x: 0, y: ry } : v));
  const half = [...clean.slice(0, -1), ...backwards(clean).map((v) => ({ ...v, x: -v.x })).slice(0, -1)];
  const whole = [...half, ...half.map((v) => ({ x: -v.x, y: -v.y, bulge: v.bulge }))];
  return tidied(turned(closedPath<F>(whole), centre, tilt));
}

/**
 * The open path that follows an ellipse from eccentric angle `start` through `sweep` (radians, clockwise on the screen when positive, at most a whole turn)
 * within `within` inches. Equal semi-axes give exact arcs.
 */
export function fitEllipseArc<F extends Frame>(
  centre: Point<F>, rx: number, ry: number, tilt: number, start: number, sweep: number, within: number = FIT,
): Path<F> {
  const curve = ellipseCurve(centre, rx, ry, tilt);
  if (!isRound(rx, ry)) return fitCurve(curve, start, start + sweep, within);
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / Math.PI - SAME_NUMBER));
  const bulge = Math.max(-1, Math.min(1, Math.tan(sweep / count / 4)));
  return openPath(Array.from({ length: count + 1 }, (_, i) => ({ ...curve(start + (sweep * i) / count).point, bulge: i === count ? 0 : bulge })));
}

/** An ellipse by its eccentric angle in radians, clockwise on the screen. */
export function ellipseCurve<F extends Frame>(centre: Point<F>, rx: number, ry: number, tilt: number): Curve<F> {
  const cosTilt = Math.cos(tilt);
  const sinTilt = Math.sin(tilt);
  const along = (x: number, y: number) => ({ x: cosTilt * x - sinTilt * y, y: sinTilt * x + cosTilt * y });
  return (t) => {
    const cos = Math.cos(t);
    const sin = Math.sin(t);
    const out = along(rx * cos, ry * sin);
    return { point: { x: centre.x + out.x, y: centre.y + out.y }, tangent: along(-rx * sin, ry * cos) };
  };
}

function isRound(rx: number, ry: number): boolean {
  return Math.abs(rx - ry) <= SAME_POINT;
}

function turned<F extends Frame>(path: Path<F>, centre: Point<F>, tilt: number): Path<F> {
  const cos = Math.cos(tilt);
  const sin = Math.sin(tilt);
  const vertices = path.vertices.map((v) => ({ x: centre.x + cos * v.x - sin * v.y, y: centre.y + sin * v.x + cos * v.y, bulge: v.bulge }));
  return { closed: path.closed, vertices };
}

/** An open chain run the other way and mirrored, which leaves the bulges their sign. */
function backwards(vertices: readonly Vertex[]): readonly Vertex[] {
  return vertices.map((v, i) => ({ x: v.x, y: v.y, bulge: i === 0 ? 0 : vertices[i - 1]!.bulge })).reverse();
}
