// Circular arcs as cubic Bezier curves, which is all a PDF has.
// Maths: the usual cubic with handles 4/3 tan(t/4) r for a sweep t; its greatest distance from the circle is at most
// 4/27 sin^6(t/4) / cos^2(t/4) times r (Goldapp, "Approximation of circular arcs by cubic polynomials", CAGD 8, 1991).

import type { Frame } from '../../geometry/point.ts';
import type { Arc } from '../../geometry/segment.ts';

/** How far a printed arc may stray from the true one, in inches: an eightieth of a dot of a 1200 dpi printer. */
export const ARC_ON_PAPER = 1e-5;

export type Curve = readonly [x1: number, y1: number, x2: number, y2: number, x: number, y: number];

/** The greatest distance from the arc, in inches, of one cubic over a sweep in radians. */
export function strayOfCubic(radius: number, sweep: number): number {
  const quarter = Math.abs(sweep) / 4;
  return ((4 / 27) * radius * Math.sin(quarter) ** 6) / Math.cos(quarter) ** 2;
}

/** As few cubics as stay within `stray` inches of an arc; the last ends exactly where the arc does. */
export function curvesOfArc<F extends Frame>(arc: Arc<F>, stray: number = ARC_ON_PAPER): readonly Curve[] {
  let count = Math.max(1, Math.ceil(Math.abs(arc.sweep) / (Math.PI / 2)));
  while (strayOfCubic(arc.radius, arc.sweep / count) > stray) count++;
  const step = arc.sweep / count;
  const handle = (4 / 3) * Math.tan(step / 4) * arc.radius;
  const curves: Curve[] = [];
  let { x, y } = arc.from;
  let cos = Math.cos(arc.start);
  let sin = Math.sin(arc.start);
  for (let i = 1; i <= count; i++) {
    const angle = arc.start + i * step;
    const nextCos = Math.cos(angle);
    const nextSin = Math.sin(angle);
    const endX = i === count ? arc.to.x : arc.centre.x + arc.radius * nextCos;
    const endY = i === count ? arc.to.y : arc.centre.y + arc.radius * nextSin;
    curves.push([x - handle * sin, y + handle * cos, endX + handle * nextSin, endY - handle * nextCos, endX, endY]);
    [x, y, cos, sin] = [endX, endY, nextCos, nextSin];
  }
  return curves;
}
