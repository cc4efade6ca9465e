// Inside, outside or on a closed path.
// Maths: the winding number by crossings of a ray to the right (Sunday, "Inclusion of a Point in a Polygon", 2001), with
// arcs cut where they turn back in y. On a piece that only rises or only falls, the side of the circle tells which
// side of the piece a point lies.

import { SAME_POINT } from '../num/tolerances.ts';
import { boundsHold, boundsOf } from './bounds.ts';
import { nearestOnPath } from './nearest.ts';
import { type Path, segmentsOf } from './path.ts';
import type { Frame, Point } from './point.ts';
import { segmentsIn } from './segment-index.ts';
import { type Segment, bearingOf, partOfAngle, pointOnSegment, sideOf } from './segment.ts';

/**
 * Where a point lies: `on` within rounding slack of the path, `inside` where the path goes round it (any number of times, net of
 * those the other way), otherwise `outside`. An open path is taken as closed by a straight line, on which nothing is `on`.
 */
export function whereIs<F extends Frame>(path: Path<F>, p: Point<F>): 'inside' | 'outside' | 'on' {
  if (!boundsHold(boundsOf(path), p, SAME_POINT)) return 'outside';
  if (nearestOnPath(path, p).distance <= SAME_POINT) return 'on';
  return windingAround(path, p) === 0 ? 'outside' : 'inside';
}

/** How many times a closed path goes clockwise round a point that is not on it; negative when counterclockwise. */
export function windingAround<F extends Frame>(path: Path<F>, p: Point<F>): number {
  const segments = segmentsOf(path);
  let winding = 0;
  for (const i of segmentsIn(path, { minX: p.x, minY: p.y, maxX: Infinity, maxY: p.y })) winding += crossingsToTheRight(segments[i]!, p);
  const first = path.vertices[0];
  const last = path.vertices[path.vertices.length - 1];
  if (!path.closed && first && last) winding += crossingsToTheRight({ kind: 'line', from: { x: last.x, y: last.y }, to: { x: first.x, y: first.y } }, p);
  return winding;
}

/** Crossings of a segment with the ray from a point to the right, falling ones less rising ones. */
function crossingsToTheRight<F extends Frame>(s: Segment<F>, p: Point<F>): number {
  const bearing = bearingOf(s);
  // To the right of a falling line (as it runs) is to its left on the screen: the ray crosses it.
  if (s.kind === 'line') return crossing(s.from.y, s.to.y, p.y, sideOf(bearing, p));
  let net = 0;
  let from = s.from;
  for (const to of [...turnsInY(s), s.to]) {
    const falls = to.y > from.y;
    // The piece is of the right half of its circle or of the left one. Beyond its ends on the hollow side, a point outside the
    // circle lies on the same side of the piece as one inside.
    const rightHalf = falls === s.sweep > 0;
    const hollow = rightHalf ? p.x < Math.min(from.x, to.x) : p.x > Math.max(from.x, to.x);
    const side = hollow ? Math.sign(s.sweep) : sideOf(bearing, p);
    net += crossing(from.y, to.y, p.y, side);
    from = to;
  }
  return net;
}

function crossing(fromY: number, toY: number, y: number, side: number): number {
  if (fromY <= y && toY > y) return side > 0 ? 1 : 0;
  if (fromY > y && toY <= y) return side < 0 ? -1 : 0;
  return 0;
}

/** Where an arc turns back in y, in order along it. */
function turnsInY<F extends Frame>(s: Segment<F>): readonly Point<F>[] {
  if (s.kind === 'line') return [];
  return [Math.PI / 2, -Math.PI / 2]
    .map((angle) => partOfAngle(s, angle))
    .filter((part) => part > 0 && part < 1)
    .sort((a, b) => a - b)
    .map((part) => pointOnSegment(s, part));
}
