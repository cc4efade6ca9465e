import { describe, expect, it } from 'vitest';
import { fromDegrees } from '../num/angle.ts';
import { reversedPath } from './change.ts';
import { areaOverChord, atVertex, distanceAlong, lengthsBefore, pathLength, pointAlong, signedArea, withinPath } from './measure.ts';
import { circle, closedPath, openPath, pathOfSegments, polygon, straight } from './path.ts';
import { point } from './point.ts';
import { arcAround, arcByBulge } from './segment.ts';
import { distanceToPath } from './nearest.ts';

const near = (x: number, y: number, digits = 12) => ({ x: expect.closeTo(x, digits) as number, y: expect.closeTo(y, digits) as number });
const square = polygon<'quilt'>([point(0, 0), point(4, 0), point(4, 4), point(0, 4)]);

describe('lengths and areas in closed form', () => {
  it('circle: 2 pi r and pi r^2, clockwise positive', () => {
    const path = circle(point<'quilt'>(5, -7), 2.5);
    expect(pathLength(path)).toBeCloseTo(5 * Math.PI, 13);
    expect(signedArea(path)).toBeCloseTo(6.25 * Math.PI, 13);
    expect(signedArea(reversedPath(path))).toBeCloseTo(-6.25 * Math.PI, 13);
  });

  it('circular segment: r^2 / 2 (t - sin t) (MathWorld, "Circular Segment")', () => {
    for (const degrees of [1, 20, 57, 58, 90, 135, 179, 180]) {
      const t = fromDegrees(degrees);
      const bow = closedPath<'quilt'>([{ x: 0, y: 0, bulge: Math.tan(t / 4) }, { x: 3, y: 0, bulge: 0 }]);
      const r = 1.5 / Math.sin(t / 2);
      expect(Math.abs(signedArea(bow) / ((r * r * (t - Math.sin(t))) / 2) - 1)).toBeLessThan(1e-9);
      expect(pathLength(bow)).toBeCloseTo(3 + r * t, 11);
    }
  });

  it('a flat segment tends to two thirds of chord times rise (Archimedes, Quadrature of the Parabola)', () => {
    // The error of the parabola is of the order of the rise over the chord, squared.
    const arc = arcByBulge(point<'quilt'>(1, 1), point(11, 1), 1e-6);
    expect(arc.kind).toBe('arc');
    if (arc.kind === 'arc') expect(Math.abs(areaOverChord(arc) / ((2 / 3) * 10 * 5e-6) - 1)).toBeLessThan(1e-11);
  });

  it('lens of two circles of radius r through each other\'s centres: r^2 (2 pi / 3 - sqrt 3 / 2) (MathWorld, "Lens")', () => {
    const bulge = Math.tan(fromDegrees(120) / 4);
    const h = Math.sqrt(3);
    const lens = closedPath<'quilt'>([{ x: 0, y: -h, bulge }, { x: 0, y: h, bulge }]);
    expect(signedArea(lens)).toBeCloseTo(4 * ((2 * Math.PI) / 3 - h / 2), 12);
    expect(pathLength(lens)).toBeCloseTo(2 * 2 * fromDegrees(120), 12);
  });

  it('ring piece (annulus sector): (R^2 - r^2) t / 2', () => {
    const outer = arcAround(point<'quilt'>(3, 3), 8, fromDegrees(20), fromDegrees(70));
    const inner = arcAround(point<'quilt'>(3, 3), 6, fromDegrees(90), fromDegrees(-70));
    const band = pathOfSegments<'quilt'>([outer, { kind: 'line', from: outer.to, to: inner.from }, inner, { kind: 'line', from: inner.to, to: outer.from }], true);
    expect(signedArea(band)).toBeCloseTo(((64 - 36) * fromDegrees(70)) / 2, 12);
    expect(pathLength(band)).toBeCloseTo(14 * fromDegrees(70) + 4, 12);
  });

  it('Reuleaux triangle of width s: (pi - sqrt 3) s^2 / 2, length pi s (MathWorld; Barbier)', () => {
    const bulge = Math.tan(fromDegrees(60) / 4);
    const reuleaux = closedPath<'quilt'>([{ x: 0, y: 0, bulge }, { x: 2, y: 0, bulge }, { x: 1, y: Math.sqrt(3), bulge }]);
    expect(signedArea(reuleaux)).toBeCloseTo(2 * (Math.PI - Math.sqrt(3)), 13);
    expect(pathLength(reuleaux)).toBeCloseTo(2 * Math.PI, 13);
  });

  it('stadium and square with rounded corners (Steiner): L + 2 pi r, A + L r + pi r^2', () => {
    const q = Math.tan(Math.PI / 8);
    const r = 0.25;
    const rounded = closedPath<'quilt'>([
      { x: 0, y: -r, bulge: 0 }, { x: 4, y: -r, bulge: q }, { x: 4 + r, y: 0, bulge: 0 }, { x: 4 + r, y: 4, bulge: q },
      { x: 4, y: 4 + r, bulge: 0 }, { x: 0, y: 4 + r, bulge: q }, { x: -r, y: 4, bulge: 0 }, { x: -r, y: 0, bulge: q },
    ]);
    expect(pathLength(rounded)).toBeCloseTo(17.570796327, 9);
    expect(signedArea(rounded)).toBeCloseTo(20.196349541, 9);
  });

  it('an open path counts as closed by a straight line', () => {
    expect(signedArea(openPath<'quilt'>([{ x: 1, y: 0, bulge: 1 }, { x: -1, y: 0, bulge: 0 }]))).toBeCloseTo(Math.PI / 2, 14);
    expect(signedArea(openPath<'quilt'>([]))).toBe(0);
    expect(pathLength(openPath<'quilt'>([]))).toBe(0);
  });

  it('an area far from the origin keeps its digits', () => {
    const far = polygon<'quilt'>([point(1e6, 1e6), point(1e6 + 1, 1e6), point(1e6 + 1, 1e6 + 1), point(1e6, 1e6 + 1)]);
    expect(signedArea(far)).toBe(1);
  });

  it('Viviani: distances from a point in an equilateral triangle to its sides add up to its height', () => {
    const h = Math.sqrt(3);
    const corners = [point<'quilt'>(0, 0), point<'quilt'>(2, 0), point<'quilt'>(1, h)] as const;
    for (const at of [point<'quilt'>(1, 0.3), point<'quilt'>(0.6, 0.7), point<'quilt'>(1.2, 1.1)]) {
      const sum = corners.reduce((total, corner, i) => total + distanceToPath(straight(corner, corners[(i + 1) % 3]!), at), 0);
      expect(sum).toBeCloseTo(h, 14);
    }
  });
});

describe('places along', () => {
  it('a closed path goes round and round, an open one stops', () => {
    expect(pointAlong(square, 6)).toEqual({ point: { x: 4, y: 2 }, tangent: { x: 0, y: 1 }, segment: 1, part: 0.5 });
    expect(pointAlong(square, -2)).toMatchObject({ point: { x: 0, y: 2 }, segment: 3 });
    expect(pointAlong(square, 38)).toMatchObject({ point: { x: 4, y: 2 } });
    const open = openPath<'quilt'>(square.vertices);
    expect(pointAlong(open, -2)).toMatchObject({ point: { x: 0, y: 0 }, segment: 0, part: 0 });
    expect(pointAlong(open, 99)).toMatchObject({ point: { x: 0, y: 4 }, segment: 2, part: 1, tangent: { x: -1, y: 0 } });
  });

  it('at a corner the place starts the next segment', () => {
    expect(pointAlong(square, 4)).toMatchObject({ point: { x: 4, y: 0 }, tangent: { x: 0, y: 1 }, segment: 1, part: 0 });
    expect(pointAlong(square, 16)).toMatchObject({ point: { x: 0, y: 0 }, segment: 0, part: 0 });
  });

  it('along an arc by angle', () => {
    const path = circle(point<'quilt'>(0, 0), 2);
    expect(pointAlong(path, Math.PI)).toMatchObject({ point: near(0, 2), tangent: near(-1, 0) });
  });

  it('stretches of no length are passed over', () => {
    const path = openPath<'quilt'>([[0, 0], [0, 0], [2, 0], [2, 0], [2, 2], [2, 2]].map(([x, y]) => ({ x: x!, y: y!, bulge: 0 })));
    expect(lengthsBefore(path)).toEqual([0, 0, 2, 2, 4, 4]);
    expect(pointAlong(path, 0)).toMatchObject({ segment: 1, part: 0, tangent: { x: 1, y: 0 } });
    expect(pointAlong(path, 2)).toMatchObject({ segment: 3, part: 0, tangent: { x: 0, y: 1 } });
    expect(pointAlong(path, 4)).toMatchObject({ segment: 3, part: 1, tangent: { x: 0, y: 1 } });
  });

  it('a path of no length has one place', () => {
    expect(pointAlong(openPath<'quilt'>([{ x: 3, y: 4, bulge: 0 }]), 5)).toEqual({ point: { x: 3, y: 4 }, tangent: { x: 0, y: 0 }, segment: 0, part: 0 });
    expect(pointAlong(closedPath<'quilt'>([]), 5).point).toEqual({ x: 0, y: 0 });
    expect(withinPath(closedPath<'quilt'>([]), 5)).toBe(0);
  });

  it('distances along and back, and at vertices', () => {
    expect(distanceAlong(square, 2, 0.25)).toBe(9);
    expect(distanceAlong(square, 3, 1)).toBe(16);
    expect(withinPath(square, -1)).toBe(15);
    expect(withinPath(square, 16)).toBe(0);
    expect(atVertex(square, 8 + 5e-10)).toBe(8);
    expect(atVertex(square, 16 - 5e-10)).toBe(0);
    expect(atVertex(square, 8.1)).toBe(8.1);
  });
});
