// The elliptical arc of path data, given by its end points, as lines and arcs.
// Source: SVG 2 (W3C), appendix B.2 "Elliptical arc implementation notes": B.2.4 conversion from endpoint to center parameterization, B.2.5
// correction of out-of-range radii. A sweep flag of 1 runs clockwise on the screen, which is this project's positive sweep.
// Circular arcs are taken from the chord and the radius directly, so that they stay exact; more than a half turn comes as two arcs.

import { SAME_NUMBER } from '../../num/tolerances.ts';
import { fitEllipseArc } from '../fit/ellipse.ts';
import { type Path, openPath, straight } from '../path.ts';
import { type Frame, type Point, distance } from '../point.ts';

/** What follows an A in path data; radii in inches, tilt (the x-axis-rotation) in radians. */
export interface EndpointArc<F extends Frame> {
  readonly from: Point<F>;
  readonly rx: number;
  readonly ry: number;
  readonly tilt: number;
  readonly large: boolean;
  readonly clockwise: boolean;
  readonly to: Point<F>;
}

/** The arc as an open path; arcs of an ellipse that is not a circle are fitted within `within` inches. */
export function endpointArc<F extends Frame>(arc: EndpointArc<F>, within: number): Path<F> {
  const rx = Math.abs(arc.rx);
  const ry = Math.abs(arc.ry);
  if (rx === 0 || ry === 0 || distance(arc.from, arc.to) === 0) return straight(arc.from, arc.to);
  if (Math.abs(rx - ry) <= SAME_NUMBER * rx) return circularArc(arc.from, rx, arc.large, arc.clockwise, arc.to);
  return ellipticalArc({ ...arc, rx, ry }, within);
}

/** The arc of a circle of a given radius between two points; a radius too small to reach is grown to half the chord. */
export function circularArc<F extends Frame>(from: Point<F>, radius: number, large: boolean, clockwise: boolean, to: Point<F>): Path<F> {
  const half = distance(from, to) / 2;
  const r = Math.max(radius, half);
  // From the middle of the chord to the centre.
  const off = Math.sqrt((r - half) * (r + half));
  const way = clockwise ? 1 : -1;
  if (!large || off === 0) {
    return openPath([{ ...from, bulge: (way * half) / (r + off) }, { ...to, bulge: 0 }]);
  }
  const rise = r + off;
  const bulge = way * Math.tan(Math.atan2(rise, half) / 2);
  const top = {
    x: (from.x + to.x) / 2 + (way * rise * (to.y - from.y)) / (2 * half),
    y: (from.y + to.y) / 2 - (way * rise * (to.x - from.x)) / (2 * half),
  };
  return openPath([{ ...from, bulge }, { ...top, bulge }, { ...to, bulge: 0 }]);
}

function ellipticalArc<F extends Frame>({ from, rx, ry, tilt, large, clockwise, to }: EndpointArc<F>, within: number): Path<F> {
  const cos = Math.cos(tilt);
  const sin = Math.sin(tilt);
  // Step 1: the axes of the ellipse, with the origin half way along the chord.
  const dx = (from.x - to.x) / 2;
  const dy = (from.y - to.y) / 2;
  const x1 = cos * dx + sin * dy;
  const y1 = -sin * dx + cos * dy;
  // B.2.5: radii too small to reach are grown together until they do.
  const reach = Math.hypot(x1 / rx, y1 / ry);
  const grown = Math.max(1, reach);
  const a = rx * grown;
  const b = ry * grown;
  // Step 2: in units of the radii the ellipse is a unit circle, and the centre lies square to the chord.
  const u = { x: x1 / a, y: y1 / b };
  const halfChord = Math.hypot(u.x, u.y);
  const off = reach >= 1 ? 0 : Math.sqrt((1 - halfChord) * (1 + halfChord)) / halfChord;
  const way = large === clockwise ? -1 : 1;
  const centreUnit = { x: way * off * u.y, y: -way * off * u.x };
  // Step 3.
  const cx = a * centreUnit.x;
  const cy = b * centreUnit.y;
  const centre: Point<F> = { x: cos * cx - sin * cy + (from.x + to.x) / 2, y: sin * cx + cos * cy + (from.y + to.y) / 2 };
  // Step 4: eccentric angles.
  const start = Math.atan2(u.y - centreUnit.y, u.x - centreUnit.x);
  const end = Math.atan2(-u.y - centreUnit.y, -u.x - centreUnit.x);
  const turn = 2 * Math.PI;
  const raw = (end - start) % turn;
  const sweep = clockwise ? (raw < 0 ? raw + turn : raw) : raw > 0 ? raw - turn : raw;
  const fitted = fitEllipseArc(centre, a, b, tilt, start, sweep, within).vertices;
  const last = fitted.length - 1;
  return openPath(fitted.map((v, i) => (i === 0 ? { ...from, bulge: v.bulge } : i === last ? { ...to, bulge: 0 } : v)));
}
