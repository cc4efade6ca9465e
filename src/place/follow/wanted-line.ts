// A line to be followed at a distance, taken apart into even places: where the line runs, and where the needle should run beside it.

import { lengthsBefore, pathLength, pointAlong } from '../../geometry/measure.ts';
import { nearestOnPath } from '../../geometry/nearest.ts';
import { type Path, segmentsOf } from '../../geometry/path.ts';
import { type Frame, cross, dot } from '../../geometry/point.ts';
import { tangentOnSegment } from '../../geometry/segment.ts';
import { EYE, FIT, NEAR_ANGLE } from '../../num/tolerances.ts';

/** As the line runs. */
export type LineSide = 'left' | 'right';

/**
 * Places along a line, evenly from its start to its end with its corners among them; a closed line is gone round twice, so that a stretch may run
 * over its start. `at` inches along; `x`, `y` where the deviation is measured from and `away` how far the needle is to run from there: the line and the
 * distance but where the line bends inward more tightly than the distance (`shadowed`). There nothing stays at the distance; the wanted line has a
 * corner, and it is measured how far from that corner the needle passes. `wantedX`, `wantedY` on the wanted line; `run` inches along it.
 */
export interface WantedLine<F extends Frame> {
  readonly path: Path<F>;
  readonly length: number;
  readonly distance: number;
  readonly side: LineSide;
  /** Steps once along the line; the places are numbered 0 to `steps`, or 0 to `2 * steps` where the line is closed. */
  readonly steps: number;
  /** Inches of line a step. */
  readonly step: number;
  readonly at: Float64Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly wantedX: Float64Array;
  readonly wantedY: Float64Array;
  readonly run: Float64Array;
  /** 1 where the line has a corner. */
  readonly corner: Uint8Array;
  readonly hasFewCorners: boolean;
  readonly away: Float64Array;
  readonly shadowed: Uint8Array;
}

/** A line of more corners than this is a curve made of short straight pieces. */
const FEW_CORNERS = 24;
const FEWEST_STEPS = 120;
const MOST_STEPS = 960;

/** The places of a line, in inches; a distance of 0 asks for the line itself. */
export function wantedLine<F extends Frame>(path: Path<F>, distance: number, side: LineSide): WantedLine<F> {
  const length = pathLength(path);
  const steps = Math.max(FEWEST_STEPS, Math.min(MOST_STEPS, Math.ceil(length / EYE)));
  const step = length / steps;
  const count = (path.closed ? 2 * steps : steps) + 1;
  const row = () => new Float64Array(count);
  const [at, x, y, away, wantedX, wantedY, run] = [row(), row(), row(), row(), row(), row(), row()] as const;
  const corner = new Uint8Array(count);
  const shadowed = new Uint8Array(count);
  const off = side === 'right' ? distance : -distance;
  for (let i = 0; i < count; i++) at[i] = i * step;
  const corners = cornersOf(path);
  for (const along of corners) {
    const place = Math.round(along / step);
    for (let i = place; i < count; i += steps) {
      if (i > 0 && i < count - 1) at[i] = along + Math.round((i - place) / steps) * length;
      corner[i] = 1;
    }
  }
  for (let i = 0; i <= steps; i++) {
    const { point, tangent } = pointAlong(path, at[i]!);
    x[i] = point.x;
    y[i] = point.y;
    away[i] = distance;
    wantedX[i] = point.x - tangent.y * off;
    wantedY[i] = point.y + tangent.x * off;
    shadowed[i] = distance > 0 && nearestOnPath(path, { x: wantedX[i]!, y: wantedY[i]! }).distance < distance - FIT ? 1 : 0;
  }
  for (let i = 0; i <= steps; ) {
    let end = i;
    while (end <= steps && shadowed[end]) end++;
    if (end === i) {
      i++;
      continue;
    }
    const before = i > 0 ? i - 1 : Math.min(end, steps);
    const after = end <= steps ? end : before;
    const cornerX = (wantedX[before]! + wantedX[after]!) / 2;
    const cornerY = (wantedY[before]! + wantedY[after]!) / 2;
    for (; i < end; i++) {
      x[i] = wantedX[i] = cornerX;
      y[i] = wantedY[i] = cornerY;
      away[i] = 0;
    }
  }
  for (let i = steps + 1; i < count; i++) {
    [x, y, away, wantedX, wantedY].forEach((each) => (each[i] = each[i - steps]!));
    shadowed[i] = shadowed[i - steps]!;
  }
  for (let i = 1; i < count; i++) run[i] = run[i - 1]! + Math.hypot(wantedX[i]! - wantedX[i - 1]!, wantedY[i]! - wantedY[i - 1]!);
  return { path, length, distance, side, steps, step, at, corner, hasFewCorners: corners.length <= FEW_CORNERS, x, y, away, wantedX, wantedY, run, shadowed };
}

/** Inches along of the places where the path turns more than a smooth joint does. */
function cornersOf<F extends Frame>(path: Path<F>): readonly number[] {
  const segments = segmentsOf(path);
  const before = lengthsBefore(path);
  return segments.flatMap((s, i) => {
    const last = segments[i > 0 ? i - 1 : segments.length - 1]!;
    if (i === 0 && !path.closed) return [];
    const a = tangentOnSegment(last, 1);
    const b = tangentOnSegment(s, 0);
    return Math.abs(Math.atan2(cross(a, b), dot(a, b))) > NEAR_ANGLE ? [before[i]!] : [];
  });
}

/** The places from `from` to `to`, both included, about `most` of them; corners among them where they are few, and of the places that share one inside corner only the first. */
export function placesBetween<F extends Frame>(line: WantedLine<F>, from: number, to: number, most: number): readonly number[] {
  const steps = Math.min(to - from, most - 1);
  const every = (to - from) / Math.max(1, steps);
  const places: number[] = [];
  for (let i = from, next = from; i <= to; i++) {
    const isFirstOfCorner = line.shadowed[i] === 1 && (i === from || !line.shadowed[i - 1]);
    if (isFirstOfCorner || (!line.shadowed[i] && (i >= Math.round(next) || (line.corner[i] === 1 && line.hasFewCorners)))) places.push(i);
    if (i >= Math.round(next)) next += every;
  }
  return places;
}
