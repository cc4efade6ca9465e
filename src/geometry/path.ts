// Line-arc paths: the one curve type of the project. Lines and arcs are closed under offsetting, exact in DXF,
// SVG and the canvas, and measured in closed form.
// A vertex carries the bulge of the stretch that starts at it: bulge = tan(sweep / 4), as in DXF, positive when the
// arc turns clockwise on the screen; 0 is a straight line. No arc is more than a half turn, so |bulge| <= 1.

import type { Frame, Point } from './point.ts';
import { type Segment, arcByBulge, bulgeOf, halfTurnsOf, lineFrom } from './segment.ts';

declare const drawnIn: unique symbol;

export interface Vertex {
  readonly x: number;
  readonly y: number;
  readonly bulge: number;
}

/** A chain of lines and arcs, in inches. An open path of n vertices has n - 1 stretches, a closed one n. */
export interface Path<F extends Frame> {
  readonly closed: boolean;
  readonly vertices: readonly Vertex[];
  readonly [drawnIn]?: (frame: F) => F;
}

export function openPath<F extends Frame>(vertices: readonly Vertex[]): Path<F> {
  return { closed: false, vertices };
}

export function closedPath<F extends Frame>(vertices: readonly Vertex[]): Path<F> {
  return { closed: true, vertices };
}

/** A closed path of straight lines through the points. */
export function polygon<F extends Frame>(points: readonly Point<F>[]): Path<F> {
  return { closed: true, vertices: points.map(({ x, y }) => ({ x, y, bulge: 0 })) };
}

/** The straight path from one point to another. */
export function straight<F extends Frame>(from: Point<F>, to: Point<F>): Path<F> {
  return { closed: false, vertices: [{ x: from.x, y: from.y, bulge: 0 }, { x: to.x, y: to.y, bulge: 0 }] };
}

/** A whole circle, clockwise on the screen, starting at its rightmost point. */
export function circle<F extends Frame>(centre: Point<F>, radius: number): Path<F> {
  return {
    closed: true,
    vertices: [{ x: centre.x + radius, y: centre.y, bulge: 1 }, { x: centre.x - radius, y: centre.y, bulge: 1 }],
  };
}

const segmentsOfPath = new WeakMap<object, readonly Segment<Frame>[]>();

/** The lines and arcs of a path in order; stretches of no length are kept, so that index i starts at vertex i. */
export function segmentsOf<F extends Frame>(path: Path<F>): readonly Segment<F>[] {
  const known = segmentsOfPath.get(path);
  if (known) return known as unknown as readonly Segment<F>[];
  const { vertices, closed } = path;
  const count = closed ? vertices.length : vertices.length - 1;
  const segments: Segment<F>[] = [];
  for (let i = 0; i < count; i++) {
    const a = vertices[i]!;
    const b = vertices[(i + 1) % vertices.length]!;
    const from: Point<F> = { x: a.x, y: a.y };
    const to: Point<F> = { x: b.x, y: b.y };
    segments.push(a.bulge === 0 ? lineFrom(from, to) : arcByBulge(from, to, a.bulge));
  }
  segmentsOfPath.set(path, segments as unknown as readonly Segment<Frame>[]);
  return segments;
}

/**
 * The path made of these segments, each starting where the one before ends. Segment i starts at vertex i, unless there are
 * arcs of more than a half turn, which take two vertices.
 */
export function pathOfSegments<F extends Frame>(segments: readonly Segment<F>[], closed: boolean): Path<F> {
  const vertices: Vertex[] = segments.flatMap(halfTurnsOf).map((s) => ({ x: s.from.x, y: s.from.y, bulge: bulgeOf(s) }));
  const last = segments[segments.length - 1];
  if (!closed && last) vertices.push({ x: last.to.x, y: last.to.y, bulge: 0 });
  return { closed, vertices };
}

/** Where a path starts; undefined for a path without vertices. */
export function startOf<F extends Frame>(path: Path<F>): Point<F> | undefined {
  const first = path.vertices[0];
  return first && { x: first.x, y: first.y };
}

/** Where a path ends (a closed path ends where it starts); undefined for a path without vertices. */
export function endOf<F extends Frame>(path: Path<F>): Point<F> | undefined {
  const last = path.closed ? path.vertices[0] : path.vertices[path.vertices.length - 1];
  return last && { x: last.x, y: last.y };
}
