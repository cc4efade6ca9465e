// Random cubics, wild and degenerate, fitted with arcs and measured against the true curve. Seeds are in the names.

import { describe, expect, it } from 'vitest';
import { cubic, fitCubic } from '../../src/geometry/fit/bezier.ts';
import type { Point } from '../../src/geometry/point.ts';
import { type Random, random } from '../../src/num/random.ts';
import { SAME_ANGLE, SAME_POINT } from '../../src/num/tolerances.ts';
import { measureFit } from './fit-measure.ts';

type P = Point<'template'>;
type Four = readonly [P, P, P, P];

const anywhere = (r: Random): P => ({ x: r.between(-6, 6), y: r.between(-6, 6) });
const onGrid = (r: Random): P => ({ x: r.whole(0, 3), y: r.whole(0, 3) });

const KINDS: Readonly<Record<string, (r: Random) => Four>> = {
  wild: (r) => [anywhere(r), anywhere(r), anywhere(r), anywhere(r)],
  // A small grid makes cusps, loops, doubled points and curves that run back along a line.
  grid: (r) => [onGrid(r), onGrid(r), onGrid(r), onGrid(r)],
  gentle: (r) => [{ x: 0, y: 0 }, { x: r.between(1, 3), y: r.between(-1, 1) }, { x: r.between(3, 5), y: r.between(-1, 1) }, { x: 6, y: r.between(-2, 2) }],
  'nearly straight': (r) => [{ x: 0, y: 0 }, { x: 2, y: r.between(-1e-3, 1e-3) }, { x: 4, y: r.between(-1e-3, 1e-3) }, { x: 6, y: r.between(-1e-6, 1e-6) }],
  'no handle': (r) => {
    const [a, b, c] = [anywhere(r), anywhere(r), anywhere(r)];
    return r.next() < 0.5 ? [a, a, b, c] : [a, b, c, c];
  },
  'tiny handle': (r) => {
    const [a, b, c] = [anywhere(r), anywhere(r), anywhere(r)];
    const slip = 10 ** r.between(-14, -2);
    return [a, { x: a.x + slip, y: a.y - slip }, b, c];
  },
  // The cubic with a cusp, its control polygon pulled a little out of shape.
  'nearly cusped': (r) => [{ x: 0, y: 0 }, { x: 3 + r.between(-1, 1) * 10 ** r.between(-9, -1), y: 3 }, { x: 0, y: 3 }, { x: 3, y: 0 }],
};

function checkFit([p0, p1, p2, p3]: Four, within: number, label: string): number {
  const path = fitCubic(p0, p1, p2, p3, within);
  const curve = cubic(p0, p1, p2, p3);
  const measured = measureFit(path, curve, 0, 1);
  expect(measured.toPath, label).toBeLessThanOrEqual(within);
  expect(measured.toCurve, label).toBeLessThanOrEqual(within);
  expect(path.vertices.every((v) => Math.abs(v.bulge) <= 1), label).toBe(true);
  const fastest = Math.max(...[0, 0.25, 0.5, 0.75, 1].map((t) => Math.hypot(curve(t).tangent.x, curve(t).tangent.y)));
  for (const { at, angle, shorter } of measured.kinks) {
    // Where ends were brought together within rounding slack, a piece turns by that over its length.
    if (angle <= SAME_ANGLE + (2 * SAME_POINT) / shorter) continue;
    // Anything else must be a cusp: the curve all but stands still there.
    const stands = Array.from({ length: 4001 }, (_, i) => curve(i / 4000)).some(
      (c) => Math.hypot(c.point.x - at.x, c.point.y - at.y) < 0.01 && Math.hypot(c.tangent.x, c.tangent.y) < 2e-3 * fastest,
    );
    expect(stands, `${label}: kink of ${angle} at ${at.x}, ${at.y}`).toBe(true);
  }
  return measured.pieces;
}

describe('fitting arcs to random cubics', () => {
  for (const [kind, make] of Object.entries(KINDS)) {
    it(`keeps within the tolerance, tangent-continuous but at cusps: ${kind} (seed 41)`, () => {
      const r = random(41);
      for (let i = 0; i < 25; i++) {
        const four = make(r);
        const within = r.pick([0.05, 0.0005, 0.0005, 0.00002]);
        checkFit(four, within, `${kind} ${i} ${JSON.stringify(four)} within ${within}`);
      }
    });
  }
});
