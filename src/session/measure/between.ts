// The distance and the angle between two things, as a tape and a protractor would have them.

import { gapBetween } from '../../geometry/gap.ts';
import { nearestOnPath } from '../../geometry/nearest.ts';
import { type Path, segmentsOf } from '../../geometry/path.ts';
import { type Point, angleOf, between, distance } from '../../geometry/point.ts';
import { normalised, toDegrees } from '../../num/angle.ts';
import { SAME_POINT } from '../../num/tolerances.ts';

/** A place, or a line as a whole. */
export type Measurable = { readonly kind: 'place'; readonly at: Point<'quilt'> } | { readonly kind: 'line'; readonly path: Path<'quilt'> };

export interface Measured {
  /** In inches. */
  readonly distance: number;
  /** The two places it is measured between. */
  readonly from: Point<'quilt'>;
  readonly to: Point<'quilt'>;
  /** Degrees: between two straight lines, 0 to 90; of the way from one place to another, clockwise from level, 0 to 360. */
  readonly angle?: { readonly of: 'lines' | 'way'; readonly degrees: number };
}

/** From one thing to another, the shortest way; undefined when a line is empty. */
export function measuredBetween(a: Measurable, b: Measurable): Measured | undefined {
  if (a.kind === 'line' && b.kind === 'line') {
    const gap = gapBetween(a.path, b.path, Infinity);
    if (!gap) return undefined;
    const [first, second] = [directionOf(a.path), directionOf(b.path)];
    const angle = first === undefined || second === undefined ? undefined : ({ of: 'lines', degrees: acute(toDegrees(second - first)) } as const);
    return { distance: gap.distance, from: gap.onA, to: gap.onB, ...(angle && { angle }) };
  }
  const from = a.kind === 'place' ? a.at : nearest(a.path, b.kind === 'place' ? b.at : { x: 0, y: 0 });
  const to = b.kind === 'place' ? b.at : nearest(b.path, from);
  const away = distance(from, to);
  if (!Number.isFinite(away)) return undefined;
  return { distance: away, from, to, ...(away > SAME_POINT && { angle: { of: 'way', degrees: toDegrees(normalised(angleOf(between(from, to)))) } }) };
}

function nearest(path: Path<'quilt'>, p: Point<'quilt'>): Point<'quilt'> {
  return nearestOnPath(path, p).point;
}

/** Radians, of a path that is one straight line. */
function directionOf(path: Path<'quilt'>): number | undefined {
  const segments = segmentsOf(path);
  const only = segments[0];
  return segments.length === 1 && only?.kind === 'line' ? angleOf(between(only.from, only.to)) : undefined;
}

function acute(degrees: number): number {
  const half = ((degrees % 180) + 180) % 180;
  return Math.min(half, 180 - half);
}
