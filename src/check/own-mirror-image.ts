// Whether a template is its own mirror image, so that turning it over gives nothing that turning it round does not.

import { centroid } from '../geometry/centroid.ts';
import { carryPath } from '../geometry/change.ts';
import { nearestOnPath } from '../geometry/nearest.ts';
import { type Path, segmentsOf } from '../geometry/path.ts';
import { type Point, angleOf, between, distance } from '../geometry/point.ts';
import { mirrorAcross } from '../geometry/pose.ts';
import { pointOnSegment } from '../geometry/segment.ts';
import type { TemplateShape } from '../model/kit/shape.ts';
import { JOIN, SAME_POINT } from '../num/tolerances.ts';

const known = new WeakMap<TemplateShape, boolean>();

/** Whether the template's edges, windows included, fall on themselves when mirrored across some line, within what counts as meeting. */
export function isOwnMirrorImage(shape: TemplateShape): boolean {
  const before = known.get(shape);
  if (before !== undefined) return before;
  const is = findMirror(shape);
  known.set(shape, is);
  return is;
}

function findMirror({ outline, windows }: TemplateShape): boolean {
  const centre = centroid(outline);
  if (!centre) return false;
  const landmarks = landmarksOf(outline);
  return landmarks.some((landmark) => {
    if (distance(centre, landmark) <= SAME_POINT) return false;
    const mirror = mirrorAcross(centre, angleOf(between(centre, landmark)));
    const paths = [outline, ...windows.map(({ path }) => path)];
    return paths.every((path) => landmarksOf(carryPath(mirror, path)).every((p) => paths.some((other) => nearestOnPath(other, p).distance <= JOIN)));
  });
}

/** A line of symmetry goes through the balance point and meets the outline at a corner or square in the middle of a line or arc. */
function landmarksOf(path: Path<'template'>): readonly Point<'template'>[] {
  return segmentsOf(path).flatMap((s) => [s.from, pointOnSegment(s, 1 / 2)]);
}
