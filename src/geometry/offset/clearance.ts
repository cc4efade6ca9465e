// How near a point comes to an edge, asked for a great many points near it.

import { boundsHold } from '../bounds.ts';
import { type Path, segmentsOf } from '../path.ts';
import { type Frame, type Point, distance } from '../point.ts';
import { segmentBounds, segmentIndex } from '../segment-index.ts';
import { type Bearing, type Segment, bearingOf, partAt, sideOf } from '../segment.ts';

/** Up to so many segments, looking at the extents of each in turn is quicker than an index. */
const FEW = 64;

/** Whether a point lies at least so many inches from every segment of an edge. */
export type IsClear<F extends Frame> = (p: Point<F>, least: number) => boolean;

/** Makes the question "is nothing of this edge nearer than that?" quick to ask. */
export function clearanceFrom<F extends Frame>(edge: Path<F>): IsClear<F> {
  const segments = segmentsOf(edge);
  const bearings = segments.map(bearingOf);
  const bounds = segmentBounds(edge);
  const isTooNear = (i: number, p: Point<F>, least: number) => isNearer(segments[i]!, bearings[i]!, p, least);
  const index = segments.length > FEW ? segmentIndex(edge) : undefined;
  if (index) return (p, least) => !index.search(p.x - least, p.y - least, p.x + least, p.y + least).some((i) => isTooNear(i, p, least));
  return (p, least) => {
    for (let i = 0; i < segments.length; i++) {
      if (boundsHold(bounds[i]!, p, least) && isTooNear(i, p, least)) return false;
    }
    return true;
  };
}

function isNearer<F extends Frame>(s: Segment<F>, bearing: Bearing<F>, p: Point<F>, than: number): boolean {
  // The whole line or circle is never farther than the segment on it.
  const side = Math.abs(sideOf(bearing, p));
  if (side >= than) return false;
  const part = partAt(bearing, p);
  if (part <= 0) return distance(s.from, p) < than;
  if (part >= 1) return distance(s.to, p) < than;
  return true;
}
