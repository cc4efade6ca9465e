// The etchings makers put on templates: centre lines, cross, inner line, ticks, angle and division lines.
// Ids are plain and stay the same when sizes change, so that registrations keep their hold. Lines run from edge to edge
// of the outline and straight on over windows, where they show only on the plan.

import { boundsOf } from '../../../geometry/bounds.ts';
import { stretchOfPath } from '../../../geometry/change.ts';
import { whereIs } from '../../../geometry/inside.ts';
import { pathLength } from '../../../geometry/measure.ts';
import { meetPaths } from '../../../geometry/meet-paths.ts';
import { meetSegments } from '../../../geometry/meet-segments.ts';
import { offsetClosed } from '../../../geometry/offset/offset-closed.ts';
import { type Path, segmentsOf, straight } from '../../../geometry/path.ts';
import { type Point, heading, moved, point } from '../../../geometry/point.ts';
import { lineFrom, pointOnSegment } from '../../../geometry/segment.ts';
import { fromDegrees } from '../../../num/angle.ts';
import { SAME_POINT } from '../../../num/tolerances.ts';
import type { EtchedShape } from '../shape.ts';

/** How far the inner line runs from the edge, in inches: the usual seam allowance, and what a half-inch foot adds. */
export const INNER_LINE = 1 / 4;

/** Length of a tick, in inches. */
export const TICK = 1 / 4;

const ORIGIN: Point<'template'> = point(0, 0);

/** A straight etched line. */
export function line(id: string, name: string, from: Point<'template'>, to: Point<'template'>): EtchedShape {
  return { kind: 'line', id, name, path: straight(from, to) };
}

/** A curve, such as the middle line of a band. */
export function curve(id: string, name: string, path: Path<'template'>): EtchedShape {
  return { kind: 'curve', id, name, path };
}

/** The stretch of a curve round its middle that lies on the template: rounded corners may take its ends away. */
export function curveWithin(outline: Path<'template'>, id: string, name: string, path: Path<'template'>): EtchedShape {
  const length = pathLength(path);
  let [from, to] = [0, length];
  for (const meeting of meetPaths(path, outline)) {
    const along = meeting.kind === 'overlap' ? meeting.alongA[0] : meeting.alongA;
    if (along < length / 2) from = Math.max(from, along);
    else to = Math.min(to, along);
  }
  return curve(id, name, from > 0 || to < length ? stretchOfPath(path, from, to) : path);
}

/** A point, such as the middle of a window. */
export function dot(id: string, name: string, at: Point<'template'>): EtchedShape {
  return { kind: 'point', id, name, at };
}

/** The cross at the origin. */
export function crossAtCentre(): EtchedShape {
  return { kind: 'cross', id: 'cross', name: 'cross at the centre', at: ORIGIN, angle: 0 };
}

/**
 * The line from edge to edge through a place within the outline, in degrees clockwise from across; none where the place
 * is not within.
 */
export function lineThrough(outline: Path<'template'>, id: string, name: string, at: Point<'template'>, degrees: number): readonly EtchedShape[] {
  if (whereIs(outline, at) !== 'inside') return [];
  const ends = [edgeFrom(outline, at, degrees + 180), edgeFrom(outline, at, degrees)];
  return ends[0] && ends[1] ? [line(id, name, ends[0], ends[1])] : [];
}

/** `centre-across` and `centre-down` through the origin, and the cross on it. */
export function centreMarks(outline: Path<'template'>): readonly EtchedShape[] {
  return [
    ...lineThrough(outline, 'centre-across', 'centre line across', ORIGIN, 0),
    ...lineThrough(outline, 'centre-down', 'centre line down', ORIGIN, 90),
    crossAtCentre(),
  ];
}

/** `angle-30` and the like: lines through the origin so many degrees from across, up to the right, and `angle-30-down`, down to the right. */
export function angleLines(outline: Path<'template'>, ...degrees: readonly number[]): readonly EtchedShape[] {
  return degrees.flatMap((angle) => [
    ...lineThrough(outline, `angle-${angle}`, `${angle} degree line, up to the right`, ORIGIN, -angle),
    ...lineThrough(outline, `angle-${angle}-down`, `${angle} degree line, down to the right`, ORIGIN, angle),
  ]);
}

/** `inner-line`: the quarter-inch line inside the edge (`inner-line-2` and on, where it falls into several); none where there is no room. */
export function innerLine(outline: Path<'template'>): readonly EtchedShape[] {
  const inner = offsetClosed(outline, INNER_LINE, 'inside');
  if (inner.kind === 'collapsed') return [];
  return inner.loops.map((loop, i) => curve(i === 0 ? 'inner-line' : `inner-line-${i + 1}`, 'quarter-inch line inside the edge', loop.path));
}

/**
 * `tick-left-1`, `tick-right-1` ...: ticks at every whole inch to either side of the middle, down from a straight level
 * edge at height `y`, up to `reach` inches away.
 */
export function inchTicks(y: number, reach: number, length = TICK): readonly EtchedShape[] {
  const count = Math.floor(reach + SAME_POINT);
  return Array.from({ length: count }, (_, i) => i + 1).flatMap((n) => [
    line(`tick-left-${n}`, `tick ${n} in left of the centre`, point(-n, y), point(-n, y + length)),
    line(`tick-right-${n}`, `tick ${n} in right of the centre`, point(n, y), point(n, y + length)),
  ]);
}

/** Where a ray from a place within the outline first meets the edge. */
function edgeFrom(outline: Path<'template'>, at: Point<'template'>, degrees: number): Point<'template'> | undefined {
  const box = boundsOf(outline);
  const reach = box.maxX - box.minX + box.maxY - box.minY;
  const ray = lineFrom(at, moved(at, heading(fromDegrees(degrees)), reach));
  let nearest = Infinity;
  for (const side of segmentsOf(outline)) {
    for (const meeting of meetSegments(ray, side)) {
      nearest = Math.min(nearest, meeting.kind === 'overlap' ? meeting.partsA[0] : meeting.partA);
    }
  }
  return nearest < Infinity ? pointOnSegment(ray, nearest) : undefined;
}
