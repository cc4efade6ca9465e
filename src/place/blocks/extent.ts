// How far a line of lines and arcs reaches in a direction.

import { type Path, segmentsOf } from '../../geometry/path.ts';
import { type Frame, type Point, type Vec, angleOf, dot, moved, scaled } from '../../geometry/point.ts';
import { partOfAngle } from '../../geometry/segment.ts';

/** The least and the greatest of a path measured along a unit vector, in inches from the origin; exact for arcs. */
export function extentAlong<F extends Frame>(path: Path<F>, way: Vec<F>): readonly [least: number, most: number] {
  let [least, most] = [Infinity, -Infinity];
  const meet = (p: Point<F>) => {
    const at = dot({ x: p.x, y: p.y }, way);
    least = Math.min(least, at);
    most = Math.max(most, at);
  };
  for (const s of segmentsOf(path)) {
    meet(s.from);
    meet(s.to);
    if (s.kind === 'arc') for (const to of [way, scaled(way, -1)]) if (partOfAngle(s, angleOf(to)) <= 1) meet(moved(s.centre, to, s.radius));
  }
  return [least, most];
}
