import { describe, expect, it } from 'vitest';
import { random } from '../num/random.ts';
import { distanceToPath, leastDistanceToPath, nearestIndex, nearestOnPath } from './nearest.ts';
import { type Path, circle, openPath, polygon, segmentsOf, straight } from './path.ts';
import { point } from './point.ts';
import { nearestOnSegment } from './segment.ts';

const square = polygon<'quilt'>([point(0, 0), point(4, 0), point(4, 4), point(0, 4)]);

describe('the nearest place on a path', () => {
  it('of a square: on a side, or at a corner', () => {
    expect(nearestOnPath(square, point(3, 2))).toEqual({ point: { x: 4, y: 2 }, distance: 1, along: 6, segment: 1, part: 0.5 });
    expect(nearestOnPath(square, point(7, 8))).toEqual({ point: { x: 4, y: 4 }, distance: 5, along: 8, segment: 2, part: 0 });
    expect(nearestOnPath(square, point(-3, -4))).toEqual({ point: { x: 0, y: 0 }, distance: 5, along: 0, segment: 0, part: 0 });
  });

  it('of several places as near, the first', () => {
    expect(nearestOnPath(square, point(2, 2))).toMatchObject({ along: 2, distance: 2 });
  });

  it('of a circle, in line with its centre', () => {
    expect(nearestOnPath(circle(point<'quilt'>(1, 1), 2), point(1, -9))).toMatchObject({ distance: 8, along: expect.closeTo(3 * Math.PI, 12) as number });
  });

  it('at the end of an open path', () => {
    expect(nearestOnPath(straight(point<'quilt'>(0, 0), point(3, 0)), point(5, 0))).toEqual({ point: { x: 3, y: 0 }, distance: 2, along: 3, segment: 0, part: 1 });
  });

  it('of a single vertex and of nothing', () => {
    expect(nearestOnPath(openPath<'quilt'>([{ x: 1, y: 1, bulge: 0 }]), point(4, 5)).distance).toBe(5);
    expect(nearestOnPath(openPath<'quilt'>([]), point(4, 5)).distance).toBe(Infinity);
  });

  it('the distance to the extents is never more than the distance', () => {
    expect(leastDistanceToPath(circle(point<'quilt'>(0, 0), 1), point(4, 5))).toBe(5);
    expect(distanceToPath(circle(point<'quilt'>(0, 0), 1), point(3, 4))).toBe(4);
  });
});

describe('an index of many segments', () => {
  const many = (seed: number, count: number): Path<'quilt'> => {
    const { between } = random(seed);
    let x = 0;
    let y = 0;
    return openPath(Array.from({ length: count }, () => ({ x: (x += between(-1, 1.1)), y: (y += between(-1, 1.1)), bulge: between(-0.9, 0.9) })));
  };

  it('gives what looking at every segment gives, seed 11', () => {
    const path = many(11, 400);
    const others = [circle(point<'quilt'>(3, 3), 2), openPath<'quilt'>([]), path];
    const nearest = nearestIndex(others);
    const { between } = random(12);
    for (let i = 0; i < 500; i++) {
      const p = point<'quilt'>(between(-20, 40), between(-20, 40));
      const least = Math.min(...segmentsOf(path).map((s) => nearestOnSegment(s, p).distance));
      expect(nearestOnPath(path, p).distance).toBe(least);
      const all = Math.min(least, nearestOnPath(others[0]!, p).distance);
      expect(nearest(p)).toMatchObject({ distance: all, path: all === least ? 2 : 0 });
    }
  });

  it('finds nothing beyond the distance given', () => {
    const nearest = nearestIndex([square]);
    expect(nearest(point(6, 2), 1.5)).toBeUndefined();
    expect(nearest(point(6, 2), 2)).toMatchObject({ distance: 2, path: 0 });
    expect(nearestIndex([])(point(0, 0))).toBeUndefined();
  });
});
