// The parts of a path that lie in an area.

import { boundsMeet, boundsOf } from '../geometry/bounds.ts';
import { splitPath } from '../geometry/change.ts';
import { whereIs } from '../geometry/inside.ts';
import { pathLength, pointAlong } from '../geometry/measure.ts';
import { meetPaths } from '../geometry/meet-paths.ts';
import type { Path } from '../geometry/path.ts';
import type { Frame } from '../geometry/point.ts';

/** The stretches of a path inside a closed boundary or on it; the path itself when all of it is. */
export function within<F extends Frame>(boundary: Path<F>, path: Path<F>): readonly Path<F>[] {
  if (!boundsMeet(boundsOf(boundary), boundsOf(path))) return [];
  const cuts = meetPaths(path, boundary).flatMap((meeting) => (meeting.kind === 'overlap' ? meeting.alongA : [meeting.alongA]));
  const pieces = cuts.length === 0 ? [path] : splitPath(path, cuts);
  const inside = pieces.filter((piece) => whereIs(boundary, pointAlong(piece, pathLength(piece) / 2).point) !== 'outside');
  return inside.length === pieces.length ? [path] : inside;
}
