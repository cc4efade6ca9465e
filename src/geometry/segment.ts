// One stretch of a path: a straight line or a circular arc, with all that is measured of it in closed form.

import { normalised } from '../num/angle.ts';
import { SAME_ANGLE, SAME_POINT } from '../num/tolerances.ts';
import { type Frame, type Point, type Vec, distance, heading, moved, quarterTurned, unit } from './point.ts';

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
  // The rise of the arc over its chord is half the chord times the bulge.
  if (Math.abs(bulge) * chord <= 2 * SAME_POINT) return lineFrom(from, to);
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

/**
 * The point a part of the way along; 0 at the start, 1 at the end. An arc of up to a half turn is stepped off along its
 * chord, because going round a far centre would cost a flat arc its last digits.
 */
export function pointOnSegment<F extends Frame>(s: Segment<F>, part: number): Point<F> {
  if (part === 0) return s.from;
  if (part === 1) return s.to;
  const dx = s.to.x - s.from.x;
  const dy = s.to.y - s.from.y;
  if (s.kind === 'line') return { x: s.from.x + dx * part, y: s.from.y + dy * part };
  if (Math.abs(s.sweep) > Math.PI) {
    const angle = s.start + s.sweep * part;
    return { x: s.centre.x + s.radius * Math.cos(angle), y: s.centre.y + s.radius * Math.sin(angle) };
  }
  const half = s.sweep / 2;
  const grown = Math.sin(half * part) / Math.sin(half);
  const cos = Math.cos(half * (part - 1)) * grown;
  const sin = Math.sin(half * (part - 1)) * grown;
  return { x: s.from.x + cos * dx - sin * dy, y: s.from.y + sin * dx + cos * dy };
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
  const bearing = bearingOf(s);
  const part = partAt(bearing, p);
  if (part <= 0) return { part: 0, distance: distance(s.from, p) };
  if (part >= 1) return { part: 1, distance: distance(s.to, p) };
  return { part, distance: Math.abs(sideOf(bearing, p)) };
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

/**
 * A segment seen from its middle, the form in which a line and an arc obey the same formulas and a flat arc keeps all its digits
 * (its centre, far away, is never used). The curvature is positive when the arc turns clockwise on the screen, in 1 / inch.
 */
export interface Bearing<F extends Frame> {
  readonly middle: Point<F>;
  /** Unit tangent at the middle, the way the segment runs. */
  readonly tangent: Vec<F>;
  /** The tangent turned a quarter clockwise: to the right of the way the segment runs. */
  readonly normal: Vec<F>;
  readonly curvature: number;
  readonly length: number;
}

/** The segment seen from its middle. A segment of no length is given the direction of x. */
export function bearingOf<F extends Frame>(s: Segment<F>): Bearing<F> {
  const dx = s.to.x - s.from.x;
  const dy = s.to.y - s.from.y;
  const chord = Math.hypot(dx, dy);
  const half: Point<F> = { x: (s.from.x + s.to.x) / 2, y: (s.from.y + s.to.y) / 2 };
  if (s.kind === 'line' || s.radius === 0) {
    const tangent: Vec<F> = chord === 0 ? { x: 1, y: 0 } : { x: dx / chord, y: dy / chord };
    return { middle: half, tangent, normal: quarterTurned(tangent), curvature: 0, length: chord };
  }
  const curvature = Math.sign(s.sweep) / s.radius;
  const length = s.radius * Math.abs(s.sweep);
  if (chord === 0 || Math.abs(s.sweep) > Math.PI) {
    const tangent = tangentOnSegment(s, 0.5);
    const out = heading<F>(s.start + s.sweep / 2);
    return { middle: moved(s.centre, out, s.radius), tangent, normal: quarterTurned(tangent), curvature, length };
  }
  const tangent: Vec<F> = { x: dx / chord, y: dy / chord };
  const normal = quarterTurned(tangent);
  return { middle: moved(half, normal, (-chord * Math.tan(s.sweep / 4)) / 2), tangent, normal, curvature, length };
}

/**
 * How far a point lies to the right of the whole line or circle a segment belongs to, seen the way it runs; negative to the left.
 * Maths: the power of the point, (|p - c|^2 - r^2) / (|p - c| + r), divided through by the radius.
 */
export function sideOf<F extends Frame>(b: Bearing<F>, p: Point<F>): number {
  const x = p.x - b.middle.x;
  const y = p.y - b.middle.y;
  const inward = x * b.normal.x + y * b.normal.y;
  if (b.curvature === 0) return inward;
  const toCentre = Math.hypot(b.normal.x - b.curvature * x, b.normal.y - b.curvature * y);
  return (2 * inward - b.curvature * (x * x + y * y)) / (1 + toCentre);
}

/** At which part of the segment the point lies square to it; below 0 before its start, above 1 beyond its end. */
export function partAt<F extends Frame>(b: Bearing<F>, p: Point<F>): number {
  if (b.length === 0) return 0;
  const x = p.x - b.middle.x;
  const y = p.y - b.middle.y;
  const along = x * b.tangent.x + y * b.tangent.y;
  if (b.curvature === 0) return 0.5 + along / b.length;
  const inward = x * b.normal.x + y * b.normal.y;
  return 0.5 + Math.atan2(b.curvature * along, 1 - b.curvature * inward) / (b.curvature * b.length);
}

/** The unit vector square to the whole line or circle at a point: towards its right side, seen the way the segment runs. */
export function rightOf<F extends Frame>(b: Bearing<F>, p: Point<F>): Vec<F> {
  if (b.curvature === 0) return b.normal;
  const x = b.normal.x - b.curvature * (p.x - b.middle.x);
  const y = b.normal.y - b.curvature * (p.y - b.middle.y);
  return unit({ x, y });
}

/** The segment cut into pieces of at most a half turn each, as a path needs them; a line or a shorter arc comes back as it is. */
export function halfTurnsOf<F extends Frame>(s: Segment<F>): readonly Segment<F>[] {
  if (s.kind === 'line') return [s];
  const count = Math.ceil((Math.abs(s.sweep) - SAME_ANGLE) / Math.PI);
  if (count <= 1) return [s];
  return Array.from({ length: count }, (_, i) => stretchOfSegment(s, i / count, (i + 1) / count));
}

/** The bulge of a segment of at most a half turn: tan of a quarter of its sweep, 0 for a line. Source: DXF reference, polyline bulge. */
export function bulgeOf<F extends Frame>(s: Segment<F>): number {
  return s.kind === 'line' ? 0 : Math.max(-1, Math.min(1, Math.tan(s.sweep / 4)));
}
