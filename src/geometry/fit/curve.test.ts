import { describe, expect, it } from 'vitest';
import { greatestKink, measureFit } from '../../../test/property/fit-measure.ts';
import { pathLength, signedArea } from '../measure.ts';
import { reversedPath } from '../change.ts';
import { fitClosedCurve, fitCurve } from './curve.ts';
import type { Curve } from './look.ts';

const sine = (amplitude: number, wavelength: number): Curve<'template'> => {
  const k = (2 * Math.PI) / wavelength;
  return (x) => ({ point: { x, y: amplitude * Math.sin(k * x) }, tangent: { x: 1, y: amplitude * k * Math.cos(k * x) } });
};

/** Length of y = A sin kx over whole waves: that of the ellipse with semi-axes sqrt(1 + A^2 k^2) / k and 1 / k; here by Simpson's rule, 20,000 parts. */
function sineLength(amplitude: number, wavelength: number, waves: number): number {
  const k = (2 * Math.PI) / wavelength;
  const n = 20_000;
  const speed = (x: number) => Math.hypot(1, amplitude * k * Math.cos(k * x));
  let sum = 0;
  for (let i = 0; i <= n; i++) sum += speed((wavelength * waves * i) / n) * (i === 0 || i === n ? 1 : i % 2 === 0 ? 2 : 4);
  return (sum * wavelength * waves) / n / 3;
}

describe('fitCurve', () => {
  it.each<[number, number, number]>([[1, 6, 1], [0.5, 2, 3], [2, 3, 2], [0.25, 8, 4]])('follows a sine wave of amplitude %d and wavelength %d, %d times', (a, l, waves) => {
    const curve = sine(a, l);
    const path = fitCurve(curve, 0, l * waves, 0.0005);
    const fit = measureFit(path, curve, 0, l * waves, 2000);
    expect(Math.max(fit.toPath, fit.toCurve)).toBeLessThanOrEqual(0.0005);
    expect(greatestKink(fit)).toBeLessThan(1e-9);
    expect(Math.abs(pathLength(path) - sineLength(a, l, waves))).toBeLessThan(0.0005);
  });

  it('has the least radius of curvature of the sine, l^2 / (4 pi^2 A), at its crests', () => {
    // 0.911891 for amplitude 1, wavelength 6 (closed form). The arc at a crest comes near it as the tolerance shrinks.
    const path = fitCurve(sine(1, 6), 0, 6, 1e-6);
    const radii = path.vertices.slice(0, -1).map((v, i) => {
      const w = path.vertices[i + 1]!;
      return (Math.hypot(w.x - v.x, w.y - v.y) * (1 + v.bulge ** 2)) / (4 * Math.abs(v.bulge));
    });
    expect(Math.abs(Math.min(...radii) / 0.911891 - 1)).toBeLessThan(0.002);
  });

  it('follows forty waves in one go when told how closely to look', () => {
    const curve = sine(0.3, 1);
    const path = fitCurve(curve, 0, 40, 0.001, 400);
    expect(Math.abs(pathLength(path) - sineLength(0.3, 1, 40))).toBeLessThan(0.04);
  });

  it('runs against the parameter when asked', () => {
    const curve = sine(1, 6);
    const back = fitCurve(curve, 5, 1, 0.0005);
    expect(back.vertices[0]).toMatchObject(curve(5).point);
    expect(back.vertices[back.vertices.length - 1]).toMatchObject(curve(1).point);
    expect(pathLength(reversedPath(back))).toBeCloseTo(pathLength(fitCurve(curve, 1, 5, 0.0005)), 4);
  });

  it('keeps the corner of a curve that has one', () => {
    const roof: Curve<'template'> = (t) => ({ point: { x: t, y: Math.abs(t - 1) }, tangent: { x: 1, y: t < 1 ? -1 : 1 } });
    const path = fitCurve(roof, 0, 3, 0.0005);
    expect(path.vertices).toHaveLength(3);
    expect(path.vertices[1]!.x).toBeCloseTo(1, 8);
    expect(path.vertices[1]!.y).toBeCloseTo(0, 8);
  });

  it('keeps the tip of a teardrop, where the tangent vanishes', () => {
    // x = cos t, y = sin t sin^2 (t/2): the member m = 2 of the teardrop curves (MathWorld, "Teardrop Curve").
    const drop: Curve<'template'> = (t) => {
      const half = Math.sin(t / 2);
      return { point: { x: Math.cos(t), y: Math.sin(t) * half ** 2 }, tangent: { x: -Math.sin(t), y: Math.cos(t) * half ** 2 + Math.sin(t) * half * Math.cos(t / 2) } };
    };
    const path = fitClosedCurve(drop, 0, 2 * Math.PI, 0.0005);
    const fit = measureFit(path, drop, 0, 2 * Math.PI);
    expect(path.closed).toBe(true);
    expect(Math.max(fit.toPath, fit.toCurve)).toBeLessThanOrEqual(0.0005);
    expect(fit.kinks.filter((k) => k.angle > 1e-6)).toHaveLength(1);
    // integral of sin^2 t sin^2 (t/2) dt = integral of sin^2 t (1 - cos t) / 2 dt over a turn = pi / 2.
    expect(Math.abs(signedArea(path) - Math.PI / 2)).toBeLessThan(0.0005 * pathLength(path));
  });

  it('closes a smooth closed curve without a kink', () => {
    // A rounded square, |x|^p + |y|^p = 1 seen as a Lissajous-like sum: x = 2 cos t + 0.1 cos 3t, y = 2 sin t - 0.1 sin 3t.
    const curve: Curve<'template'> = (t) => ({
      point: { x: 2 * Math.cos(t) + 0.1 * Math.cos(3 * t), y: 2 * Math.sin(t) - 0.1 * Math.sin(3 * t) },
      tangent: { x: -2 * Math.sin(t) - 0.3 * Math.sin(3 * t), y: 2 * Math.cos(t) - 0.3 * Math.cos(3 * t) },
    });
    const path = fitClosedCurve(curve, 0, 2 * Math.PI, 0.0005);
    const fit = measureFit(path, curve, 0, 2 * Math.PI);
    expect(Math.max(fit.toPath, fit.toCurve)).toBeLessThanOrEqual(0.0005);
    expect(greatestKink(fit)).toBeLessThan(1e-9);
    // Green: (1/2) integral x dy - y dx = pi (2^2 - 3 * 0.1^2).
    expect(Math.abs(signedArea(path) - Math.PI * (4 - 0.03))).toBeLessThan(0.0005 * pathLength(path));
  });

  it('answers a curve that goes nowhere, or is not finite, with its ends', () => {
    expect(fitCurve<'template'>(() => ({ point: { x: 1, y: 2 }, tangent: { x: 0, y: 0 } }), 0, 1).vertices).toEqual([{ x: 1, y: 2, bulge: 0 }, { x: 1, y: 2, bulge: 0 }]);
    expect(fitCurve<'template'>((t) => ({ point: { x: 1 / (t - 0.5), y: 0 }, tangent: { x: 1, y: 0 } }), 0, 1).vertices).toHaveLength(2);
  });

  it('gives up a curve whose tangent does not belong to it without going on for ever', () => {
    const path = fitCurve<'template'>((t) => ({ point: { x: t, y: 0 }, tangent: { x: 0, y: 1 } }), 0, 1, 0.01, 4);
    expect(path.vertices.length).toBeGreaterThan(1);
  });
});
