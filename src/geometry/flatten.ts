// Arcs to points, as fine as the caller says. Only painters and polygon libraries need this.

import { SAME_POINT } from '../num/tolerances.ts';
import { type Path, segmentsOf } from './path.ts';
import type { Frame, Point } from './point.ts';
import { type Segment, pointOnSegment } from './segment.ts';

/**
 * Points on the path such that the straight lines between them stray from it by no more than the chord error, in inches.
 * All vertices are kept; of a closed path the first point is not repeated at the end.
 * Maths: an arc split by an angle q strays r (1 - cos(q / 2)) from its chord.
 */
export function flatten<F extends Frame>(path: Path<F>, chordError: number): readonly Point<F>[] {
  const first = path.vertices[0];
  if (!first) return [];
  const points: Point<F>[] = [{ x: first.x, y: first.y }];
  for (const s of segmentsOf(path)) {
    const steps = stepsOf(s, chordError);
    for (let i = 1; i < steps; i++) points.push(pointOnSegment(s, i / steps));
    points.push(s.to);
  }
  if (path.closed && points.length > 1) points.pop();
  return points;
}

/** Into how many equal steps a segment has to be cut; 1 for a line. A chord error of nothing is taken as rounding slack. */
function stepsOf<F extends Frame>(s: Segment<F>, chordError: number): number {
  if (s.kind === 'line' || s.radius === 0) return 1;
  const error = Math.max(chordError, SAME_POINT);
  const step = 4 * Math.asin(Math.sqrt(Math.min(1, error / (2 * s.radius))));
  return Math.max(1, Math.ceil(Math.abs(s.sweep) / step));
}
