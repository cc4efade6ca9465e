// A straight reference line goes on beyond its ends: people lay a long ruler along it and read on.

import { lengthened } from '../geometry/change.ts';
import { type Path, segmentsOf } from '../geometry/path.ts';
import type { Frame } from '../geometry/point.ts';

/** Farther than any template is long, in inches. */
const BEYOND = 200;

/** A straight line carried on at both ends; anything else as it is. */
export function extended<F extends Frame>(path: Path<F>): Path<F> {
  const segments = segmentsOf(path);
  return segments.length === 1 && segments[0]?.kind === 'line' ? lengthened(path, BEYOND, BEYOND) : path;
}
