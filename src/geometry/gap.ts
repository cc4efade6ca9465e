// How near two paths come to each other.
// Maths: the shortest way between two lines or arcs that do not meet starts or ends at an end of one of them, or it
// stands square on both. Square on an arc is along a radius; square on a line and an arc is along the radius normal to
// the line; square on two arcs is along the line of their centres.

import { boundsMeet, boundsOf, boundsOfSegment, grownBounds } from './bounds.ts';
import { meetSegments } from './meet-segments.ts';
import { type Path, segmentsOf } from './path.ts';
import { type Frame, type Point, type Vec, between, moved, unit } from './point.ts';
import { segmentBounds, segmentsIn } from './segment-index.ts';
import { type Segment, nearestOnSegment, partOfAngle, pointOnSegment } from './segment.ts';

/** The shortest way from one path to another. */
export interface Gap<F extends Frame> {
  /** In inches; 0 where they meet. */
  readonly distance: number;
  readonly onA: Point<F>;
  readonly onB: Point<F>;
}

/** The shortest way between two paths, or undefined when they stay more than `within` inches apart. */
export function gapBetween<F extends Frame>(a: Path<F>, b: Path<F>, within: number): Gap<F> | undefined {
  if (!boundsMeet(boundsOf(a), boundsOf(b), within)) return undefined;
  let best: Gap<F> | undefined;
  let reach = within;
  const others = segmentsOf(b);
  const boundsA = segmentBounds(a);
  segmentsOf(a).forEach((s, i) => {
    for (const j of segmentsIn(b, grownBounds(boundsA[i]!, reach))) {
      const gap = gapBetweenSegments(s, others[j]!);
      if (gap.distance > reach || (best && gap.distance >= best.distance)) continue;
      best = gap;
      reach = gap.distance;
    }
  });
  return best;
}

/** The shortest way between two lines or arcs. */
export function gapBetweenSegments<F extends Frame>(a: Segment<F>, b: Segment<F>): Gap<F> {
  if (boundsMeet(boundsOfSegment(a), boundsOfSegment(b))) {
    const meeting = meetSegments(a, b)[0];
    if (meeting) {
      const at = meeting.kind === 'overlap' ? meeting.from : meeting.at;
      return { distance: 0, onA: at, onB: at };
    }
  }
  let best: Gap<F> = { distance: Infinity, onA: a.from, onB: b.from };
  for (const p of squareOn(a, b)) {
    const near = nearestOnSegment(b, p);
    if (near.distance < best.distance) best = { distance: near.distance, onA: p, onB: pointOnSegment(b, near.part) };
  }
  for (const p of squareOn(b, a)) {
    const near = nearestOnSegment(a, p);
    if (near.distance < best.distance) best = { distance: near.distance, onA: pointOnSegment(a, near.part), onB: p };
  }
  return best;
}

/** The ends of a segment and, of an arc, the places from which a way to the other may stand square on both. */
function squareOn<F extends Frame>(s: Segment<F>, other: Segment<F>): readonly Point<F>[] {
  if (s.kind === 'line') return [s.from, s.to];
  const along: Vec<F> = other.kind === 'arc' ? unit(between(s.centre, other.centre)) : normalOf(other);
  // About one centre every radius is square on both, and the ends find the way.
  if (along.x === 0 && along.y === 0) return [s.from, s.to];
  const places = [moved(s.centre, along, s.radius), moved(s.centre, along, -s.radius)];
  return [s.from, s.to, ...places.filter((p) => partOfAngle(s, Math.atan2(p.y - s.centre.y, p.x - s.centre.x)) <= 1)];
}

function normalOf<F extends Frame>(line: Extract<Segment<F>, { kind: 'line' }>): Vec<F> {
  const way = unit(between(line.from, line.to));
  return { x: -way.y, y: way.x };
}
