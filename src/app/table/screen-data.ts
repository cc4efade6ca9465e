// Path data for the screen: as written for files, but to a ten-thousandth of an inch, which is finer than any screen shows and
// much sooner done for the many lines of a large top.

import type { Frame } from '../../geometry/point.ts';
import { type Path, segmentsOf } from '../../geometry/path.ts';
import { type Segment, stretchOfSegment } from '../../geometry/segment.ts';

/** The path in inches, arcs as arcs; nothing for a path without vertices. */
export function screenData<F extends Frame>(path: Path<F>): string {
  const first = path.vertices[0];
  if (!first) return '';
  let data = `M${short(first.x)} ${short(first.y)}`;
  for (const segment of segmentsOf(path)) {
    for (const s of inReach(segment)) {
      const to = `${short(s.to.x)} ${short(s.to.y)}`;
      const radius = s.kind === 'arc' ? short(s.radius) : 0;
      data += s.kind === 'arc' ? `A${radius} ${radius} 0 0 ${s.sweep > 0 ? 1 : 0} ${to}` : `L${to}`;
    }
  }
  return path.closed ? `${data}Z` : data;
}

/** Of nearly half a turn, an arc's rise would hang on the digits that are left off; such an arc is written as two. */
export function inReach<F extends Frame>(segment: Segment<F>): readonly Segment<F>[] {
  if (segment.kind === 'line' || Math.abs(segment.sweep) <= Math.PI / 2) return [segment];
  return [stretchOfSegment(segment, 0, 0.5), stretchOfSegment(segment, 0.5, 1)];
}

/** To a ten-thousandth of an inch. */
export function short(inches: number): number {
  return Math.round(inches * 1e4) / 1e4;
}
