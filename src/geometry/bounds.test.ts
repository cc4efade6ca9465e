import { describe, expect, it } from 'vitest';
import { fromDegrees } from '../num/angle.ts';
import { NO_BOUNDS, boundsHold, boundsMeet, boundsOf, boundsOfSegment, carryBounds, grownBounds, middleOfBounds, sizeOfBounds, unionBounds } from './bounds.ts';
import { circle, closedPath, openPath, polygon } from './path.ts';
import { point } from './point.ts';
import { poseOf } from './pose.ts';
import { arcAround, arcByBulge } from './segment.ts';

const near = (minX: number, minY: number, maxX: number, maxY: number) => ({
  minX: expect.closeTo(minX, 12) as number,
  minY: expect.closeTo(minY, 12) as number,
  maxX: expect.closeTo(maxX, 12) as number,
  maxY: expect.closeTo(maxY, 12) as number,
});

describe('bounds', () => {
  it('of a circle reach a radius from its centre', () => {
    expect(boundsOf(circle(point<'quilt'>(1, 2), 3))).toEqual(near(-2, -1, 4, 5));
  });

  it('of an arc count only the tops it passes', () => {
    expect(boundsOfSegment(arcAround(point<'quilt'>(0, 0), 2, fromDegrees(45), fromDegrees(90)))).toEqual(near(-Math.SQRT2, Math.SQRT2, Math.SQRT2, 2));
    expect(boundsOfSegment(arcAround(point<'quilt'>(0, 0), 2, fromDegrees(10), fromDegrees(70)))).toEqual(
      near(2 * Math.cos(fromDegrees(80)), 2 * Math.sin(fromDegrees(10)), 2 * Math.cos(fromDegrees(10)), 2 * Math.sin(fromDegrees(80))),
    );
    expect(boundsOfSegment(arcAround(point<'quilt'>(0, 0), 2, 0, fromDegrees(-300)))).toEqual(near(-2, -2, 2, 2));
  });

  it('of a flat arc rise by chord times bulge over two', () => {
    expect(boundsOfSegment(arcByBulge(point<'quilt'>(0, 0), point(10, 0), 1e-6)).minY).toBeCloseTo(-5e-6, 18);
  });

  it('of a polygon and of paths without extent', () => {
    expect(boundsOf(polygon<'quilt'>([point(0, 0), point(4, 1), point(2, 5)]))).toEqual({ minX: 0, minY: 0, maxX: 4, maxY: 5 });
    expect(boundsOf(openPath<'quilt'>([]))).toEqual(NO_BOUNDS);
    expect(boundsOf(openPath<'quilt'>([{ x: 3, y: 4, bulge: 0 }]))).toEqual({ minX: 3, minY: 4, maxX: 3, maxY: 4 });
    expect(middleOfBounds(NO_BOUNDS)).toBeUndefined();
    expect(sizeOfBounds(NO_BOUNDS)).toEqual({ width: 0, height: 0 });
  });

  it('carried hold the carried rectangle: a square turned an eighth is sqrt 2 as wide', () => {
    const square = { minX: -1, minY: -1, maxX: 1, maxY: 1 };
    expect(carryBounds(poseOf<'area', 'quilt'>(10, 20, Math.PI / 4, true), square)).toEqual(near(10 - Math.SQRT2, 20 - Math.SQRT2, 10 + Math.SQRT2, 20 + Math.SQRT2));
    expect(carryBounds(poseOf<'area', 'quilt'>(10, 20), NO_BOUNDS)).toEqual(NO_BOUNDS);
  });

  it('union, growth, meeting and holding', () => {
    const a = boundsOf(closedPath<'quilt'>([{ x: 0, y: 0, bulge: 0 }, { x: 2, y: 2, bulge: 0 }]));
    const b = { minX: 2.5, minY: 1, maxX: 4, maxY: 3 };
    expect(unionBounds([a, b, NO_BOUNDS])).toEqual({ minX: 0, minY: 0, maxX: 4, maxY: 3 });
    expect(unionBounds([])).toEqual(NO_BOUNDS);
    expect([boundsMeet(a, b), boundsMeet(a, b, 0.5), boundsMeet(a, NO_BOUNDS)]).toEqual([false, true, false]);
    expect(grownBounds(a, 0.5)).toEqual({ minX: -0.5, minY: -0.5, maxX: 2.5, maxY: 2.5 });
    expect([boundsHold(a, point(2, 1)), boundsHold(a, point(2.1, 1)), boundsHold(a, point(2.1, 1), 0.2)]).toEqual([true, false, true]);
    expect(sizeOfBounds(b)).toEqual({ width: 1.5, height: 2 });
    expect(middleOfBounds(b)).toEqual({ x: 3.25, y: 2 });
  });
});
