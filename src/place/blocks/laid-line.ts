// Where the needle sews for a template laid in an area, and how two such lines lie to each other.

import { carryPath } from '../../geometry/change.ts';
import { gapBetween } from '../../geometry/gap.ts';
import { whereIs } from '../../geometry/inside.ts';
import { meetPaths } from '../../geometry/meet-paths.ts';
import { nearestOnPath } from '../../geometry/nearest.ts';
import { type Path, segmentsOf } from '../../geometry/path.ts';
import { type Frame, type Point, angleOf, between, distance, moved, unit } from '../../geometry/point.ts';
import type { Pose } from '../../geometry/pose.ts';
import { type Segment, partOfAngle, pointOnSegment } from '../../geometry/segment.ts';
import type { NeedleLine } from '../../needle/needle-line.ts';
import type { PlaceSetting } from '../place.ts';

export type Laid = Pose<'template', 'area'>;

/** The longest needle line round the outline; undefined where the foot cannot go round it. */
export function roundOutline({ needle }: PlaceSetting): NeedleLine | undefined {
  return needle.lines.find(({ from, loop }) => from === 'outline' && loop === 0);
}

/**
 * The path of the foot's centre for a template laid in an area, in the area's own axes (inches). Images of a repeat are images of this path; where
 * the needle is not in the middle of the foot, all of them are moved the same way, and meet where these meet.
 */
export function footLine(line: NeedleLine, pose: Laid): Path<'area'> {
  return carryPath(pose, line.path);
}

/**
 * How far two closed lines lie apart, in inches: more than 0 apart, 0 where they just touch, less than 0 by how deep the second reaches
 * inside the first. The depth is exact where it is reached square on two arcs or at a corner.
 */
export function apartness<F extends Frame>(a: Path<F>, b: Path<F>): number {
  const crosses = meetPaths(a, b).some(({ kind }) => kind !== 'touching');
  if (!crosses) return gapBetween(a, b, Infinity)?.distance ?? Infinity;
  return -Math.max(depthInside(a, b), depthInside(b, a));
}

function depthInside<F extends Frame>(a: Path<F>, b: Path<F>): number {
  let deepest = 0;
  const middles = segmentsOf(a).flatMap((s) => (s.kind === 'arc' ? [s.centre] : []));
  for (const s of segmentsOf(b)) {
    for (const p of [s.from, ...squarePlaces(s, middles), pointOnSegment(s, 0.25), pointOnSegment(s, 0.5), pointOnSegment(s, 0.75)]) {
      if (whereIs(a, p) === 'inside') deepest = Math.max(deepest, nearestOnPath(a, p).distance);
    }
  }
  return deepest;
}

function squarePlaces<F extends Frame>(s: Segment<F>, middles: readonly Point<F>[]): readonly Point<F>[] {
  if (s.kind === 'line') return [];
  return middles.flatMap((middle) => {
    if (distance(middle, s.centre) === 0) return [];
    const way = unit(between(s.centre, middle));
    return [moved(s.centre, way, s.radius), moved(s.centre, way, -s.radius)].filter((p) => partOfAngle(s, angleOf(between(s.centre, p))) <= 1);
  });
}
