// Which area lies under a place of the quilt.

import { type Pose, carry, inverse } from '../geometry/pose.ts';
import type { Point } from '../geometry/point.ts';
import { whereIs } from '../geometry/inside.ts';
import type { Area, LaidTop } from '../top/area.ts';

/** The area at a place: a drawn area before the pieced one it lies on; undefined off the top. */
export function areaAt(top: LaidTop, p: Point<'quilt'>): Area | undefined {
  const hits = top.areas.filter((area) => area.kind !== 'top' && holds(area, p));
  return hits.find((area) => area.kind === 'drawn') ?? hits[0];
}

function holds(area: Area, p: Point<'quilt'>): boolean {
  const there = carry(backOf(area.frame), p);
  // The boundary never reaches farther from the centre than the extents laid end to end; this spares most areas the walk.
  const reach = area.width + area.height;
  if (Math.abs(there.x) > reach || Math.abs(there.y) > reach) return false;
  return whereIs(area.boundary, there) !== 'outside';
}

const inverses = new WeakMap<Pose<'area', 'quilt'>, Pose<'quilt', 'area'>>();

function backOf(frame: Pose<'area', 'quilt'>): Pose<'quilt', 'area'> {
  const known = inverses.get(frame);
  if (known) return known;
  const back = inverse(frame);
  inverses.set(frame, back);
  return back;
}
