import { describe, expect, it } from 'vitest';
import { greatestKink, measureFit } from '../../../test/property/fit-measure.ts';
import { boundsOf } from '../bounds.ts';
import { pathLength, signedArea } from '../measure.ts';
import { type Point, point } from '../point.ts';
import { ellipse, ellipseCurve, fitEllipseArc } from './ellipse.ts';

const p = (x: number, y: number): Point<'template'> => point(x, y);

/** Perimeter of an ellipse by the Gauss-Kummer series, pi (a + b) sum (binomial(1/2, n)^2 h^n), summed to rounding. */
function perimeter(a: number, b: number): number {
  const h = ((a - b) / (a + b)) ** 2;
  let coefficient = 1;
  let sum = 0;
  for (let n = 0; n < 5000; n++) {
    sum += coefficient * coefficient * h ** n;
    coefficient *= (0.5 - n) / (n + 1);
  }
  return Math.PI * (a + b) * sum;
}

describe('the series itself', () => {
  it('gives the published perimeter of the ellipse with semi-axes 3 and 2', () => {
    expect(perimeter(3, 2)).toBeCloseTo(15.865439589, 9);
  });
});

describe('ellipse', () => {
  it.each<[number, number]>([[3, 2], [2, 3], [5, 1], [1.25, 1.2], [8, 0.5], [0.75, 0.25]])('%d by %d follows the curve, smooth all round', (rx, ry) => {
    const curve = ellipseCurve(p(1, -2), rx, ry, 0.4);
    for (const within of [0.01, 0.0005, 1e-5]) {
      const path = ellipse(p(1, -2), rx, ry, 0.4, within);
      const fit = measureFit(path, curve, 0, 2 * Math.PI);
      expect(fit.toPath).toBeLessThanOrEqual(within);
      expect(fit.toCurve).toBeLessThanOrEqual(within);
      expect(greatestKink(fit)).toBeLessThan(1e-9);
    }
  });

  it('has the perimeter and the area of the formulas', () => {
    for (const [rx, ry] of [[3, 2], [5, 1], [8, 0.5]] as const) {
      for (const within of [0.0005, 1e-6]) {
        const path = ellipse(p(0, 0), rx, ry, 0, within);
        expect(Math.abs(pathLength(path) - perimeter(rx, ry))).toBeLessThan(within);
        // Area pi a b; a strip as wide as the tolerance all round is the most it can differ.
        expect(Math.abs(signedArea(path) - Math.PI * rx * ry)).toBeLessThan(within * perimeter(rx, ry));
      }
    }
  });

  it('needs few arcs: 28 for 3 by 2 at half a thousandth', () => {
    // Biarcs with ends on the curve: n = integral |k'|^(1/3) ds / (324 tol)^(1/3) a quarter (Meek and Walton, quoted from memory), which is 3.7 here.
    expect(ellipse(p(0, 0), 3, 2, 0, 0.0005).vertices.length).toBeLessThanOrEqual(29);
  });

  it('is symmetric about both axes to the last digit but one', () => {
    const { vertices } = ellipse(p(0, 0), 3, 2, 0);
    for (const v of vertices) {
      for (const [sx, sy] of [[-1, 1], [1, -1], [-1, -1]] as const) {
        const isStart = Math.abs(v.y) < 1e-12;
        expect(isStart || vertices.some((w) => Math.hypot(w.x - sx * v.x, w.y - sy * v.y) < 1e-12)).toBe(true);
      }
    }
    const box = boundsOf(ellipse(p(0, 0), 3, 2, 0));
    for (const [value, expected] of [[box.minX, -3], [box.maxX, 3], [box.minY, -2], [box.maxY, 2]] as const) expect(value).toBeCloseTo(expected, 9);
  });

  it('is an exact circle when the axes are equal', () => {
    const path = ellipse(p(1, 2), 1.5, 1.5, 0.3);
    expect(path.vertices).toHaveLength(2);
    expect(pathLength(path)).toBeCloseTo(3 * Math.PI, 12);
    expect(signedArea(path)).toBeCloseTo(2.25 * Math.PI, 12);
  });
});

describe('fitEllipseArc', () => {
  it.each<[number, number]>([[0, Math.PI / 2], [0.3, 2], [1, -2.5], [-2, 5], [0, -2 * Math.PI], [3, 0.01]])('follows the stretch from %d through %d', (start, sweep) => {
    const curve = ellipseCurve(p(0.5, 0.25), 4, 1.5, -0.7);
    const path = fitEllipseArc(p(0.5, 0.25), 4, 1.5, -0.7, start, sweep, 0.0005);
    const fit = measureFit(path, curve, start, start + sweep);
    expect(Math.max(fit.toPath, fit.toCurve)).toBeLessThanOrEqual(0.0005);
    expect(greatestKink(fit)).toBeLessThan(1e-9);
    const end = path.vertices[path.vertices.length - 1]!;
    expect(end.x).toBeCloseTo(curve(start + sweep).point.x, 12);
    expect(end.y).toBeCloseTo(curve(start + sweep).point.y, 12);
  });

  it('keeps circular stretches exact, at most a half turn each', () => {
    for (const [sweep, count] of [[1, 1], [Math.PI, 1], [-4, 2], [2 * Math.PI, 2]] as const) {
      const path = fitEllipseArc(p(0, 0), 2, 2, 0.5, 0.1, sweep);
      expect(path.vertices).toHaveLength(count + 1);
      expect(pathLength(path)).toBeCloseTo(2 * Math.abs(sweep), 12);
    }
  });
});
