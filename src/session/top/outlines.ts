// The shapes a quilter draws on her top: a rectangle, a round, or a shape of straight sides. In the plan they are path data; here
// they are read back as what they were drawn as, so that their sizes can be typed.

import { boundsOf } from '../../geometry/bounds.ts';
import { type Path, circle, polygon, segmentsOf } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { readPathData } from '../../geometry/svg/read.ts';
import { writePathData } from '../../geometry/svg/write.ts';
import { SAME_POINT } from '../../num/tolerances.ts';

export type Outline =
  | { readonly kind: 'rectangle'; readonly x: number; readonly y: number; readonly width: number; readonly height: number }
  /** Its middle, and how far across it is. */
  | { readonly kind: 'round'; readonly x: number; readonly y: number; readonly across: number }
  | { readonly kind: 'shape'; readonly path: Path<'quilt'> };

/** The path data of an outline, in inches. */
export function outlineData(outline: Outline): string {
  switch (outline.kind) {
    case 'rectangle': {
      const { x, y, width, height } = outline;
      return writePathData(polygon([{ x, y }, { x: x + width, y }, { x: x + width, y: y + height }, { x, y: y + height }]));
    }
    case 'round':
      return writePathData(circle({ x: outline.x, y: outline.y }, outline.across / 2));
    case 'shape':
      return writePathData(outline.path);
  }
}

/** What an outline was drawn as; undefined for data that cannot be read. */
export function outlineOf(data: string): Outline | undefined {
  const read = readPathData<'quilt'>(data);
  const path = read.ok ? read.value[0] : undefined;
  if (!path) return undefined;
  const { minX, minY, maxX, maxY } = boundsOf(path);
  const segments = segmentsOf(path);
  const arcs = segments.every((s) => s.kind === 'arc' && Math.abs(s.radius - (maxX - minX) / 2) <= 1e3 * SAME_POINT);
  if (arcs && path.closed && Math.abs(maxX - minX - (maxY - minY)) <= 1e3 * SAME_POINT) return { kind: 'round', x: (minX + maxX) / 2, y: (minY + maxY) / 2, across: maxX - minX };
  const upright = segments.length === 4 && segments.every((s) => s.kind === 'line' && (Math.abs(s.from.x - s.to.x) <= SAME_POINT || Math.abs(s.from.y - s.to.y) <= SAME_POINT));
  if (upright && path.closed) return { kind: 'rectangle', x: minX, y: minY, width: maxX - minX, height: maxY - minY };
  return { kind: 'shape', path };
}

/** The outline drawn by pulling from one corner to the other, or from the middle of a round to its edge. */
export function pulled(kind: 'rectangle' | 'round', from: Point<'quilt'>, to: Point<'quilt'>): Outline {
  if (kind === 'round') return { kind, x: from.x, y: from.y, across: 2 * Math.hypot(to.x - from.x, to.y - from.y) };
  return { kind, x: Math.min(from.x, to.x), y: Math.min(from.y, to.y), width: Math.abs(to.x - from.x), height: Math.abs(to.y - from.y) };
}

/** The outline moved, in inches. */
export function movedOutline(outline: Outline, dx: number, dy: number): Outline {
  if (outline.kind !== 'shape') return { ...outline, x: outline.x + dx, y: outline.y + dy };
  return { kind: 'shape', path: { closed: outline.path.closed, vertices: outline.path.vertices.map((v) => ({ ...v, x: v.x + dx, y: v.y + dy })) } };
}
