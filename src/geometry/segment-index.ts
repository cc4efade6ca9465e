// A spatial index of the segments of a path, made once for a path and kept with it.
// The index is a packed Hilbert R-tree (flatbush).

import Flatbush from 'flatbush';
import { type Bounds, boundsOfSegment } from './bounds.ts';
import { type Path, segmentsOf } from './path.ts';
import type { Frame } from './point.ts';

/** Up to so many segments, looking at each in turn is quicker than an index. */
const FEW = 24;

const boundsOfPaths = new WeakMap<object, readonly Bounds[]>();
const indexOfPaths = new WeakMap<object, Flatbush>();

/** Extents of each segment of a path, in order. */
export function segmentBounds<F extends Frame>(path: Path<F>): readonly Bounds[] {
  const known = boundsOfPaths.get(path);
  if (known) return known;
  const bounds = segmentsOf(path).map(boundsOfSegment);
  boundsOfPaths.set(path, bounds);
  return bounds;
}

/** The index of a path's segments; undefined when they are so few that an index would not pay. */
export function segmentIndex<F extends Frame>(path: Path<F>): Flatbush | undefined {
  const bounds = segmentBounds(path);
  if (bounds.length <= FEW) return undefined;
  const known = indexOfPaths.get(path);
  if (known) return known;
  const index = indexOf(bounds);
  indexOfPaths.set(path, index);
  return index;
}

/** An index of rectangles, of which there must be at least one. */
export function indexOf(all: readonly Bounds[]): Flatbush {
  const index = new Flatbush(all.length);
  for (const b of all) index.add(b.minX, b.minY, b.maxX, b.maxY);
  index.finish();
  return index;
}

/** The segments of a path whose extents reach into a rectangle, in order. */
export function segmentsIn<F extends Frame>(path: Path<F>, within: Bounds): readonly number[] {
  const { minX, minY, maxX, maxY } = within;
  const index = segmentIndex(path);
  if (index) return index.search(minX, minY, maxX, maxY).sort((a, b) => a - b);
  const found: number[] = [];
  segmentBounds(path).forEach((b, i) => {
    if (b.minX <= maxX && b.maxX >= minX && b.minY <= maxY && b.maxY >= minY) found.push(i);
  });
  return found;
}
