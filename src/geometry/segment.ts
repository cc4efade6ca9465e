// One stretch of a path: a straight line or a circular arc, with all that is measured of it in closed form.

import { normalised } from '../num/angle.ts';
import { SAME_POINT } from '../num/tolerances.ts';
import { type Frame, type Point, type Vec, distance, heading, unit } from './point.ts';

export interface Line<F extends Frame> {
  readonly kind: 'line';
  readonly from: Point<F>;
  readonly to: Point<F>;
}

/** Runs from angle `start` at `centre` through `sweep` radians; a positive sweep turns clockwise on the screen. */
export interface Arc<F extends Frame> {
  readonly kind: 'arc';
  readonly from: Point<F>;
  readonly to: Point<F>;
  readonly centre: Point<F>;
  readonly radius: number;
  readonly start: number;
  readonly sweep: number;
}

export type Segment<F extends Frame> = Line<F> | Arc<F>;

export function lineFrom<F extends Frame>(from: Point<F>, to: Point<F>): Line<F> {
  return { kind: 'line', from, to };
}

/**
 * The arc between two points with a DXF bulge (tan of a quarter of the sweep). An arc flatter than rounding slack, or
 * between points that are the same, comes back as the straight line. Source: DXF reference, polyline bulge.
 */
export function arcByBulge<F extends Frame>(from: Point<F>, to: Point<F>, bulge: number): Segment<F> {
  const chord = distance(from, to);
  if (chord === 0 || Math.abs(bulge) * chord < 2 * SAME_POINT * 1e-3) return lineFrom(from, to);
  const radius = (chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge));
  // Signed distance from the middle of the chord to the centre, along the chord turned a quarter clockwise.
  const toCentre = (chord * (1 - bulge * bulge)) / (4 * bulge);
  const centre: Point<F> = {
    x: (from.x + to.x) / 2 - (toCentre * (to.y - from.y)) / chord,
    y: (from.y + to.y) / 2 + (toCentre * (to.x - from.x)) / chord,
  };
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  return { kind: 'arc', from, to, centre, radius, start, sweep: 4 * Math.atan(bulge) };
}

/** The arc of a circle from one angle (radians, clockwise from x) through a sweep. */
export function arcAround<F extends Frame>(centre: Point<F>, radius: number, start: number, sweep: number): Arc<F> {
  const at = (angle: number): Point<F> => ({ x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) });
  return { kind: 'arc', from: at(start), to: at(start + sweep), centre, radius, start, sweep };
}

/** Length along the segment, in inches. */
export function segmentLength<F extends Frame>(s: Segment<F>): number {
  return s.kind === 'line' ? distance(s.from, s.to) : s.radius * Math.abs(s.sweep);
}

/** The point a part of the way along; 0 at the start, 1 at the end. */
export function pointOnSegment<F extends Frame>(s: Segment<F>, part: number): Point<F> {
  if (part === 0) return s.from;
  if (part === 1) return s.to;
  if (s.kind === 'line') return { x: s.from.x + (s.to.x - s.from.x) * part, y: s.from.y + (s.to.y - s.from.y) * part };
  const angle = s.start + s.sweep * part;
  return { x: s.centre.x + s.radius * Math.cos(angle), y: s.centre.y + s.radius * Math.sin(angle) };
}

/** The unit tangent, pointing the way the segment runs, a part of the way along. */
export function tangentOnSegment<F extends Frame>(s: Segment<F>, part: number): Vec<F> {
  if (s.kind === 'line') return unit({ x: s.to.x - s.from.x, y: s.to.y - s.from.y });
  const angle = s.start + s.sweep * part;
  const way = Math.sign(s.sweep);
  const out = heading<F>(angle);
  return { x: -out.y * way, y: out.x * way };
}

/** The part (0 to 1) at which the nearest point of the segment lies, and how far away it is in inches. */
export function nearestOnSegment<F extends Frame>(s: Segment<F>, p: Point<F>): { readonly part: number; readonly distance: number } {
  if (s.kind === 'line') {
    const dx = s.to.x - s.from.x;
    const dy = s.to.y - s.from.y;
    const lengthSquared = dx * dx + dy * dy;
    const raw = lengthSquared === 0 ? 0 : ((p.x - s.from.x) * dx + (p.y - s.from.y) * dy) / lengthSquared;
    const part = raw < 0 ? 0 : raw > 1 ? 1 : raw;
    return { part, distance: Math.hypot(s.from.x + dx * part - p.x, s.from.y + dy * part - p.y) };
  }
  const part = partOfAngle(s, Math.atan2(p.y - s.centre.y, p.x - s.centre.x));
  if (part <= 1) return { part, distance: Math.abs(distance(s.centre, p) - s.radius) };
  const toStart = distance(s.from, p);
  const toEnd = distance(s.to, p);
  return toStart <= toEnd ? { part: 0, distance: toStart } : { part: 1, distance: toEnd };
}

/** How far along an arc (0 at its start, 1 at its end) a direction from its centre lies; above 1 when off the arc. */
export function partOfAngle<F extends Frame>(arc: Arc<F>, angle: number): number {
  const run = arc.sweep > 0 ? angle - arc.start : arc.start - angle;
  return normalised(run) / Math.abs(arc.sweep);
}

/** The same segment run the other way. */
export function reversedSegment<F extends Frame>(s: Segment<F>): Segment<F> {
  if (s.kind === 'line') return { kind: 'line', from: s.to, to: s.from };
  return { ...s, from: s.to, to: s.from, start: s.start + s.sweep, sweep: -s.sweep };
}

/** The stretch of a segment between two parts of it, 0 <= a <= b <= 1. */
export function stretchOfSegment<F extends Frame>(s: Segment<F>, a: number, b: number): Segment<F> {
  const from = pointOnSegment(s, a);
  const to = pointOnSegment(s, b);
  if (s.kind === 'line') return { kind: 'line', from, to };
  return { ...s, from, to, start: s.start + s.sweep * a, sweep: s.sweep * (b - a) };
}
