// What a circle must not enter, asked about many times: how near the nearest of it is, which of it lies near, and whether a
// straight way is barred.

import type Flatbush from 'flatbush';
import type { Bounds } from '../geometry/bounds.ts';
import { boundsMeet, boundsOf } from '../geometry/bounds.ts';
import { meetSegments } from '../geometry/meet-segments.ts';
import { type Path, segmentsOf } from '../geometry/path.ts';
import type { Frame, Point } from '../geometry/point.ts';
import { indexOf, segmentBounds } from '../geometry/segment-index.ts';
import { type Segment, lineFrom, nearestOnSegment } from '../geometry/segment.ts';

export interface Obstacle<F extends Frame> {
  readonly path: Path<F>;
  /** How far to stay away from it, in inches; none when left out. */
  readonly keep?: number;
}

/** One line or arc of an obstacle near a place. */
export interface NearObstacle<F extends Frame> {
  readonly segment: Segment<F>;
  /** Index of the obstacle it belongs to. */
  readonly obstacle: number;
  /** What is left between it and the place when it keeps its distance, in inches. */
  readonly room: number;
  /** Part of the segment where it is nearest. */
  readonly part: number;
  readonly keep: number;
}

export interface Obstacles<F extends Frame> {
  /** What is left round a place, in inches, looked for up to `atMost`; less than 0 where something keeps it away. */
  readonly room: (p: Point<F>, atMost: number) => number;
  /** The lines and arcs that leave no more than `within` inches, nearest first. */
  readonly near: (p: Point<F>, within: number) => readonly NearObstacle<F>[];
  /** Whether the straight way from one place to another meets a line or arc. */
  readonly bars: (from: Point<F>, to: Point<F>) => boolean;
}

/** The obstacles that reach into some bounds, put in an index. */
export function obstaclesIn<F extends Frame>(all: readonly Obstacle<F>[], within: Bounds): Obstacles<F> {
  const segments: Segment<F>[] = [];
  const owners: number[] = [];
  const keeps: number[] = [];
  const bounds: Bounds[] = [];
  let mostKept = 0;
  all.forEach(({ path, keep = 0 }, obstacle) => {
    if (!boundsMeet(boundsOf(path), within, keep)) return;
    const boxes = segmentBounds(path);
    segmentsOf(path).forEach((segment, i) => {
      if (!boundsMeet(boxes[i]!, within, keep)) return;
      segments.push(segment);
      owners.push(obstacle);
      keeps.push(keep);
      bounds.push(boxes[i]!);
    });
    mostKept = Math.max(mostKept, keep);
  });
  const index: Flatbush | undefined = bounds.length > 0 ? indexOf(bounds) : undefined;
  const search = ({ x, y }: Point<F>, reach: number) => index?.search(x - reach, y - reach, x + reach, y + reach) ?? [];

  return {
    room: (p, atMost) => {
      let least = atMost;
      for (const i of search(p, atMost + mostKept)) {
        const box = bounds[i]!;
        const dx = Math.max(0, box.minX - p.x, p.x - box.maxX);
        const dy = Math.max(0, box.minY - p.y, p.y - box.maxY);
        const keep = keeps[i]!;
        if (least + keep > 0 && dx * dx + dy * dy >= (least + keep) * (least + keep)) continue;
        const room = nearestOnSegment(segments[i]!, p).distance - keep;
        if (room < least) least = room;
      }
      return least;
    },
    near: (p, within) =>
      search(p, within + mostKept)
        .flatMap((i): readonly NearObstacle<F>[] => {
          const { part, distance } = nearestOnSegment(segments[i]!, p);
          const room = distance - keeps[i]!;
          return room <= within ? [{ segment: segments[i]!, obstacle: owners[i]!, room, part, keep: keeps[i]! }] : [];
        })
        .sort((a, b) => a.room - b.room),
    bars: (from, to) => {
      const way = lineFrom(from, to);
      const hit = index?.search(Math.min(from.x, to.x), Math.min(from.y, to.y), Math.max(from.x, to.x), Math.max(from.y, to.y)) ?? [];
      return hit.some((i) => meetSegments(way, segments[i]!).length > 0);
    },
  };
}
