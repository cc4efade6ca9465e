// The same path with no more vertices than it needs.

import { SAME_POINT } from '../num/tolerances.ts';
import { type Path, type Vertex, openPath, segmentsOf } from './path.ts';
import type { Frame } from './point.ts';
import { type Segment, arcByBulge, bulgeOf, nearestOnSegment, pointOnSegment } from './segment.ts';

/** The path without its stretches of no length (within rounding slack); it may be left with one vertex. */
export function withoutEmptyStretches<F extends Frame>(path: Path<F>): Path<F> {
  const { vertices, closed } = path;
  const kept: Vertex[] = [];
  for (const v of vertices) {
    const before = kept[kept.length - 1];
    if (before && Math.hypot(v.x - before.x, v.y - before.y) <= SAME_POINT) kept[kept.length - 1] = { x: before.x, y: before.y, bulge: v.bulge };
    else kept.push(v);
  }
  const first = kept[0];
  const last = kept[kept.length - 1];
  if (closed && first && last && kept.length > 1 && Math.hypot(last.x - first.x, last.y - first.y) <= SAME_POINT) kept.pop();
  if (kept.length === vertices.length) return path;
  if (!closed && kept.length > 0) kept[kept.length - 1] = { ...kept[kept.length - 1]!, bulge: 0 };
  return { closed, vertices: kept };
}

/**
 * The path without empty stretches, and with stretches that follow each other on one line, or on one circle up to a half turn,
 * made into one. The start stays where it is. The two stretches must stay within rounding slack of the one that takes their place.
 */
export function tidied<F extends Frame>(path: Path<F>): Path<F> {
  const clean = withoutEmptyStretches(path);
  const segments = segmentsOf(clean);
  const merged: Segment<F>[] = [];
  for (const s of segments) {
    const before = merged[merged.length - 1];
    // A closed path needs two stretches to go round.
    const one = before && (merged.length > 1 || !clean.closed || s !== segments[segments.length - 1]) ? asOne(before, s) : undefined;
    if (one) merged[merged.length - 1] = one;
    else merged.push(s);
  }
  if (merged.length === clean.vertices.length - (clean.closed ? 0 : 1)) return clean;
  const vertices: Vertex[] = merged.map((s) => ({ x: s.from.x, y: s.from.y, bulge: bulgeOf(s) }));
  const end = merged[merged.length - 1]?.to;
  if (clean.closed || !end) return { closed: clean.closed, vertices };
  return openPath([...vertices, { x: end.x, y: end.y, bulge: 0 }]);
}

/** The one line or arc that two stand for, if there is one. */
function asOne<F extends Frame>(a: Segment<F>, b: Segment<F>): Segment<F> | undefined {
  const sweep = (a.kind === 'arc' ? a.sweep : 0) + (b.kind === 'arc' ? b.sweep : 0);
  if (a.kind !== b.kind || Math.abs(sweep) > Math.PI) return undefined;
  if (a.kind === 'arc' && b.kind === 'arc' && Math.sign(a.sweep) !== Math.sign(b.sweep)) return undefined;
  const one = arcByBulge(a.from, b.to, Math.tan(sweep / 4));
  const joint = nearestOnSegment(one, a.to);
  if (joint.distance > SAME_POINT || joint.part <= 0 || joint.part >= 1) return undefined;
  const isOn = (s: Segment<F>) => nearestOnSegment(one, pointOnSegment(s, 0.5)).distance <= SAME_POINT;
  return isOn(a) && isOn(b) ? one : undefined;
}
