// Other people's libraries on the same offsets: areas by the buffers of jsts (the JTS Topology Suite) at a chord error of 1/10,000 in, and by
// @crhio/offset, which keeps arcs too. The latter goes wrong where a gap is exactly as wide as the foot (jsts does not), and is asked only where none is.

import crhio from '@crhio/offset';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../src/geometry/flatten.ts';
import { type OffsetOutcome, offsetClosed } from '../../src/geometry/offset/offset-closed.ts';
import type { Path } from '../../src/geometry/path.ts';
import { randomEdge } from './needle-outlines.ts';
import { areaOf, truthOf } from './needle-truth.ts';

const CHORD_ERROR = 1e-4;
const KINDS = ['star', 'blob', 'rounded', 'chain', 'slots', 'cells', 'band'] as const;
/** Kinds where things just fit. */
const EXACT: readonly string[] = ['slots', 'cells', 'band'];
const SEEDS = 60;

describe.each(KINDS)('%s, seeds 1 to 60', (kind) => {
  const edges = edgesOf(kind);

  it.each(['outside', 'inside'] as const)('has the area of a jsts buffer, %s', (where) => {
    expect(edges.length).toBeGreaterThan(20);
    for (const { seed, path, radius } of edges) {
      const ours = offsetClosed(path, radius, where);
      const off = Math.abs(areaByJsts(path, where === 'outside' ? radius : -radius) - areaReached(ours, where));
      // Both the flattened edge and the flattened buffer may be off by the chord error all along.
      expect(off, `seed ${seed}`).toBeLessThan(2 * CHORD_ERROR * (1 + lengthOf(ours)));
    }
  });
});

describe.each(KINDS.filter((kind) => !EXACT.includes(kind)))('%s without exact gaps, seeds 1 to 60', (kind) => {
  const edges = edgesOf(kind);

  it.each(['outside', 'inside'] as const)('has the area of @crhio/offset, %s', (where) => {
    expect(edges.length).toBeGreaterThan(20);
    for (const { seed, path, radius } of edges) {
      const ours = offsetClosed(path, radius, where);
      const theirs = areaByCrhio(path, where === 'outside' ? -radius : radius);
      expect(Math.abs(theirs - areaReached(ours, where)), `seed ${seed}`).toBeLessThan(1e-6 * (1 + lengthOf(ours)));
    }
  });
});

/** The edges of a kind that the seeds give; some seeds give none. */
function edgesOf(kind: (typeof KINDS)[number]) {
  return Array.from({ length: SEEDS }, (_, i) => ({ seed: i + 1, edge: randomEdge(i + 1, kind) })).flatMap(({ seed, edge }) => (edge ? [{ seed, ...edge }] : []));
}

/** Area within the outer loop less the pockets, or within all loops of a window. A pocket runs against its edge. */
function areaReached(offset: OffsetOutcome<'template'>, where: 'outside' | 'inside'): number {
  if (offset.kind === 'collapsed') return 0;
  return offset.loops.reduce((sum, loop) => {
    const isPocket = where === 'outside' && loop.contacts.some((c) => c.edgeStart > c.edgeEnd);
    return sum + (isPocket ? -loop.area : loop.area);
  }, 0);
}

function lengthOf(offset: OffsetOutcome<'template'>): number {
  return offset.kind === 'collapsed' ? 0 : offset.loops.reduce((sum, loop) => sum + loop.length, 0);
}

interface Buffers {
  readonly bufferOp: (shape: unknown, distance: number, parameters: unknown) => { readonly getArea: () => number };
}

interface Factory {
  readonly createPolygon: (ring: readonly unknown[]) => unknown;
}

function areaByJsts(path: Path<'template'>, distance: number): number {
  const NewCoordinate = Coordinate as new (x: number, y: number) => unknown;
  const NewParameters = BufferParameters as new (quadrantSegments: number) => unknown;
  const factory = new (GeometryFactory as new () => Factory)();
  const points = flatten(path, CHORD_ERROR);
  const ring = [...points, points[0]!].map((p) => new NewCoordinate(p.x, p.y));
  const quadrantSegments = Math.ceil(Math.PI / 4 / Math.acos(1 - CHORD_ERROR / Math.abs(distance)));
  return (BufferOp as unknown as Buffers).bufferOp(factory.createPolygon(ring), distance, new NewParameters(quadrantSegments)).getArea();
}

/** A positive delta offsets to the right of the way the path runs, with y down. */
function areaByCrhio(path: Path<'template'>, delta: number): number {
  const offset = typeof crhio === 'function' ? crhio : crhio.default;
  const lines = offset({ vertexes: path.vertices, isClosed: true }, delta, false);
  return lines.reduce((sum, { vertexes }) => sum + areaOf(truthOf({ closed: true, vertices: vertexes })), 0);
}
