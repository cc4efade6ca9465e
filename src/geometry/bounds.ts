// Extents: the upright rectangle that just holds a point, a segment, a path or several of them. Arcs count exactly.

import { type Path, segmentsOf } from './path.ts';
import type { Frame, Point } from './point.ts';
import { type Pose, carry } from './pose.ts';
import { type Segment, partOfAngle, pointOnSegment } from './segment.ts';

/** An upright rectangle, in inches. When it holds nothing, its least values are above its greatest. */
export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** The bounds of nothing at all: the neutral element of `unionBounds`. */
export const NO_BOUNDS: Bounds = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };

const boundsOfPath = new WeakMap<object, Bounds>();

/** Extents of a path, arcs counted exactly; `NO_BOUNDS` for a path without vertices. */
export function boundsOf<F extends Frame>(path: Path<F>): Bounds {
  const known = boundsOfPath.get(path);
  if (known) return known;
  const bounds = unionBounds([boundsOfPoints(path.vertices), ...segmentsOf(path).filter((s) => s.kind === 'arc').map(boundsOfSegment)]);
  boundsOfPath.set(path, bounds);
  return bounds;
}

/** Extents of a line or arc. */
export function boundsOfSegment<F extends Frame>(s: Segment<F>): Bounds {
  let minX = Math.min(s.from.x, s.to.x);
  let minY = Math.min(s.from.y, s.to.y);
  let maxX = Math.max(s.from.x, s.to.x);
  let maxY = Math.max(s.from.y, s.to.y);
  if (s.kind === 'line') return { minX, minY, maxX, maxY };
  // An arc is widest where it crosses an axis through its centre.
  for (let quarter = 0; quarter < 4; quarter++) {
    const part = partOfAngle(s, (quarter * Math.PI) / 2);
    if (part >= 1) continue;
    const p = pointOnSegment(s, part);
    if (quarter === 0) maxX = Math.max(maxX, p.x);
    else if (quarter === 1) maxY = Math.max(maxY, p.y);
    else if (quarter === 2) minX = Math.min(minX, p.x);
    else minY = Math.min(minY, p.y);
  }
  return { minX, minY, maxX, maxY };
}

/** Extents of some points. */
export function boundsOfPoints(points: Iterable<{ readonly x: number; readonly y: number }>): Bounds {
  let { minX, minY, maxX, maxY } = NO_BOUNDS;
  for (const p of points) {
    if (p.x < minX) minX = p.x;
    if (p.y < minY) minY = p.y;
    if (p.x > maxX) maxX = p.x;
    if (p.y > maxY) maxY = p.y;
  }
  return { minX, minY, maxX, maxY };
}

/** The least rectangle that holds them all. */
export function unionBounds(all: Iterable<Bounds>): Bounds {
  let { minX, minY, maxX, maxY } = NO_BOUNDS;
  for (const b of all) {
    if (b.minX < minX) minX = b.minX;
    if (b.minY < minY) minY = b.minY;
    if (b.maxX > maxX) maxX = b.maxX;
    if (b.maxY > maxY) maxY = b.maxY;
  }
  return { minX, minY, maxX, maxY };
}

/** Extents, in the other frame, of the carried rectangle: never less than those of what it holds, and more when it is turned askew. */
export function carryBounds<From extends Frame, To extends Frame>(pose: Pose<From, To>, b: Bounds): Bounds {
  if (b.minX > b.maxX || b.minY > b.maxY) return NO_BOUNDS;
  const corners: readonly Point<From>[] = [{ x: b.minX, y: b.minY }, { x: b.maxX, y: b.minY }, { x: b.maxX, y: b.maxY }, { x: b.minX, y: b.maxY }];
  return boundsOfPoints(corners.map((corner) => carry(pose, corner)));
}

/** The rectangle grown by so many inches on every side. */
export function grownBounds(b: Bounds, by: number): Bounds {
  return { minX: b.minX - by, minY: b.minY - by, maxX: b.maxX + by, maxY: b.maxY + by };
}

/** Whether two rectangles come within so many inches of each other, measured along x and along y. */
export function boundsMeet(a: Bounds, b: Bounds, within = 0): boolean {
  return a.minX <= b.maxX + within && b.minX <= a.maxX + within && a.minY <= b.maxY + within && b.minY <= a.maxY + within;
}

/** Whether a point lies in the rectangle or within so many inches of it, measured along x and along y. */
export function boundsHold<F extends Frame>(b: Bounds, p: Point<F>, within = 0): boolean {
  return p.x >= b.minX - within && p.x <= b.maxX + within && p.y >= b.minY - within && p.y <= b.maxY + within;
}

/** Width and height, in inches; 0 when it holds nothing. */
export function sizeOfBounds(b: Bounds): { readonly width: number; readonly height: number } {
  return { width: Math.max(0, b.maxX - b.minX), height: Math.max(0, b.maxY - b.minY) };
}

/** The middle of the rectangle; undefined when it holds nothing. */
export function middleOfBounds<F extends Frame>(b: Bounds): Point<F> | undefined {
  if (b.minX > b.maxX) return undefined;
  return { x: (b.minX + b.maxX) / 2, y: (b.minY + b.maxY) / 2 };
}
