import { describe, expect, it } from 'vitest';
import { greatestKink, measureFit } from '../../../test/property/fit-measure.ts';
import { pathLength } from '../measure.ts';
import { type Point, point } from '../point.ts';
import { cubic, fitCubic, fitQuadratic } from './bezier.ts';

const p = (x: number, y: number): Point<'template'> => point(x, y);

function fitted(points: readonly [number, number][], within: number) {
  const [a, b, c, d] = points.map(([x, y]) => p(x, y)) as [Point<'template'>, Point<'template'>, Point<'template'>, Point<'template'>];
  const path = fitCubic(a, b, c, d, within);
  return { path, ...measureFit(path, cubic(a, b, c, d), 0, 1) };
}

describe('fitCubic', () => {
  it.each<[string, [number, number][], number]>([
    ['a symmetric S', [[0, 0], [1, 2], [2, -2], [3, 0]], 20],
    ['an S with level ends', [[0, 0], [3, 0], [0, 2], [3, 2]], 20],
    ['a loop', [[0, 0], [5, 3], [-2, 3], [3, 0]], 24],
    ['a closed loop', [[0, 0], [3, 3], [-3, 3], [0, 0]], 20],
    ['nearly a cusp', [[0, 0], [3.01, 3], [0, 3], [3, 0]], 18],
    ['no first handle', [[0, 0], [0, 0], [2, 1], [3, 0]], 8],
    ['no last handle', [[0, 0], [1, 2], [3, 0], [3, 0]], 10],
    ['almost straight', [[0, 0], [1, 1e-5], [2, -1e-5], [3, 0]], 2],
  ])('follows %s within half a thousandth, tangent-continuous, with few arcs', (_, points, most) => {
    const fit = fitted(points, 0.0005);
    expect(fit.toPath).toBeLessThanOrEqual(0.0005);
    expect(fit.toCurve).toBeLessThanOrEqual(0.0005);
    expect(greatestKink(fit)).toBeLessThan(1e-9);
    expect(fit.pieces).toBeLessThanOrEqual(most);
    expect(fit.pieces).toBeGreaterThan(1);
  });

  it.each([0.01, 0.0005, 1e-5, 1e-6])('uses no more than %d of deviation, and uses most of it', (within) => {
    const fit = fitted([[0, 0], [1, 2], [3, 2], [3, 0]], within);
    expect(Math.max(fit.toPath, fit.toCurve)).toBeLessThanOrEqual(within);
    expect(fit.toPath).toBeGreaterThan(within / 4);
  });

  it('turns on the spot at a true cusp and nowhere else', () => {
    const fit = fitted([[0, 0], [3, 3], [0, 3], [3, 0]], 0.0005);
    expect(fit.toPath).toBeLessThanOrEqual(0.0005);
    const sharp = fit.kinks.filter((k) => k.angle > 1e-6);
    expect(sharp).toHaveLength(1);
    // By symmetry the cusp is at t = 1/2, where (3, 3), (0, 3) carry three eighths each.
    expect(sharp[0]!.at.x).toBeCloseTo(1.5, 6);
    expect(sharp[0]!.at.y).toBeCloseTo(2.25, 6);
    expect(sharp[0]!.angle).toBeCloseTo(Math.PI, 3);
  });

  it('gives a straight cubic as one line, whatever its handles', () => {
    for (const points of [[[0, 0], [1, 0], [2, 0], [3, 0]], [[0, 0], [0, 0], [3, 0], [3, 0]]] as [number, number][][]) {
      const { path } = fitted(points, 0.0005);
      expect(path.vertices).toEqual([{ x: 0, y: 0, bulge: 0 }, { x: 3, y: 0, bulge: 0 }]);
    }
  });

  it('runs out and back along a line that turns round', () => {
    // x(t) = 12 t (1-t)^2 - 3 t^2 (1-t) + 3 t^3 turns where x'/3 = 4 (1-t)^2 - 10 t (1-t) + 4 t^2 = 18 t^2 - 18 t + 4 is nought.
    const { path } = fitted([[0, 0], [4, 0], [-1, 0], [3, 0]], 0.0005);
    const at = (t: number) => 12 * t * (1 - t) ** 2 - 3 * t ** 2 * (1 - t) + 3 * t ** 3;
    const turns = [(18 - Math.sqrt(18 ** 2 - 4 * 18 * 4)) / 36, (18 + Math.sqrt(18 ** 2 - 4 * 18 * 4)) / 36].map(at);
    expect(path.vertices).toHaveLength(4);
    expect(path.vertices[1]!.x).toBeCloseTo(turns[0]!, 8);
    expect(path.vertices[2]!.x).toBeCloseTo(turns[1]!, 8);
  });

  it('gives a point as a straight path of no length', () => {
    const { path } = fitted([[1, 1], [1, 1], [1, 1], [1, 1]], 0.0005);
    expect(pathLength(path)).toBe(0);
    expect(path.vertices).toHaveLength(2);
  });

  it('is the same curve run the other way', () => {
    const there = fitted([[0, 0], [1, 2], [3, 2], [5, -1]], 0.0005);
    const back = fitted([[5, -1], [3, 2], [1, 2], [0, 0]], 0.0005);
    expect(Math.abs(pathLength(back.path) - pathLength(there.path))).toBeLessThan(0.0005);
    expect(Math.abs(back.pieces - there.pieces)).toBeLessThanOrEqual(2);
  });

  it('takes the usual cubic for a quarter circle for one arc when the tolerance lets it', () => {
    // Handles of 4 (sqrt 2 - 1) / 3 stay within 2.7253e-4 of the circle (known figure; the greatest radial error of that choice).
    const k = (4 * (Math.SQRT2 - 1)) / 3;
    const points: [number, number][] = [[1, 0], [1, k], [k, 1], [0, 1]];
    const fit = fitted(points, 0.0005);
    expect(fit.pieces).toBe(1);
    expect(fit.toPath).toBeCloseTo(2.7253e-4, 7);
    expect(fitted(points, 0.0001).pieces).toBeGreaterThan(1);
  });
});

describe('fitQuadratic', () => {
  it('has the length of the parabola', () => {
    // y = x^2 from 0 to 1: (2 sqrt 5 + asinh 2) / 4, standard closed form.
    const path = fitQuadratic(p(0, 0), p(0.5, 0), p(1, 1), 1e-6);
    expect(Math.abs(pathLength(path) - (2 * Math.sqrt(5) + Math.asinh(2)) / 4)).toBeLessThan(1e-7);
    const off = path.vertices.map(({ x, y }) => (y - x * x) / Math.hypot(1, 2 * x));
    expect(Math.max(...off.map(Math.abs))).toBeLessThanOrEqual(1e-6);
  });

  it('runs out and back when its control point lies beyond both ends', () => {
    const path = fitQuadratic(p(0, 0), p(4, 0), p(1, 0), 0.0005);
    // Turns at t = 4/7, x = 16/7.
    expect(path.vertices).toHaveLength(3);
    expect(path.vertices[1]!.x).toBeCloseTo(16 / 7, 8);
  });
});
