import { describe, expect, it } from 'vitest';
import { random } from '../num/random.ts';
import { gapBetween, gapBetweenSegments } from './gap.ts';
import { pathLength, pointAlong } from './measure.ts';
import { nearestOnPath } from './nearest.ts';
import { type Path, circle, openPath, straight } from './path.ts';
import { distance, point } from './point.ts';
import { arcAround, lineFrom } from './segment.ts';

describe('how near two paths come', () => {
  it('is the distance of centres less both radii for two circles', () => {
    const gap = gapBetween(circle<'quilt'>(point(0, 0), 2), circle(point(6, 8), 3), 10)!;
    expect(gap.distance).toBeCloseTo(5, 13);
    expect(distance(gap.onA, point(1.2, 1.6))).toBeLessThan(1e-12);
    expect(distance(gap.onB, point(4.2, 5.6))).toBeLessThan(1e-12);
  });

  it('is the difference of radii for one circle within another, less the distance of centres', () => {
    expect(gapBetween(circle<'quilt'>(point(0, 0), 5), circle(point(1, 0), 2), 10)!.distance).toBeCloseTo(2, 13);
    expect(gapBetween(circle<'quilt'>(point(0, 0), 5), circle(point(0, 0), 2), 10)!.distance).toBeCloseTo(3, 13);
  });

  it('is the distance to the tangent for a line beside an arc, and to the end when the tangent is off the arc', () => {
    const line = lineFrom<'quilt'>(point(-10, 4), point(10, 4));
    expect(gapBetweenSegments(arcAround<'quilt'>(point(0, 0), 3, 0, Math.PI), line).distance).toBeCloseTo(1, 13);
    expect(gapBetweenSegments(line, arcAround<'quilt'>(point(0, 0), 3, Math.PI, Math.PI)).distance).toBeCloseTo(4, 13);
  });

  it('is nothing where they cross, and not told beyond the reach asked for', () => {
    expect(gapBetween(straight<'quilt'>(point(0, 0), point(2, 2)), straight(point(0, 2), point(2, 0)), 0.1)!.distance).toBe(0);
    expect(gapBetween(straight<'quilt'>(point(0, 0), point(2, 0)), straight(point(0, 1), point(2, 1)), 0.5)).toBeUndefined();
    expect(gapBetween(straight<'quilt'>(point(0, 0), point(2, 0)), straight(point(0, 0.5), point(2, 0.5)), 0.5)!.distance).toBe(0.5);
  });

  it('agrees with a dense search along one path, seed 404', () => {
    const rng = random(404);
    const any = (): Path<'quilt'> => openPath(Array.from({ length: 4 }, () => ({ x: rng.between(0, 10), y: rng.between(0, 10), bulge: rng.pick([0, rng.between(-1, 1)]) })));
    for (let i = 0; i < 60; i++) {
      const [a, b] = [any(), any()];
      const gap = gapBetween(a, b, 100)!;
      const length = pathLength(a);
      const step = length / 500;
      let least = Infinity;
      for (let k = 0; k <= 500; k++) least = Math.min(least, nearestOnPath(b, pointAlong(a, k * step).point).distance);
      // The search can only find more, by no more than half a step.
      expect(gap.distance).toBeLessThanOrEqual(least + 1e-9);
      expect(gap.distance).toBeGreaterThanOrEqual(least - step);
      expect(distance(gap.onA, gap.onB)).toBeCloseTo(gap.distance, 9);
    }
  });
});
