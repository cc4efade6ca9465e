import { describe, expect, it } from 'vitest';
import { centroid } from './centroid.ts';
import { circle, closedPath, polygon } from './path.ts';
import { point } from './point.ts';

describe('where a shape balances', () => {
  it('is a third of the height up a triangle', () => {
    const at = centroid(polygon<'template'>([point(0, 0), point(6, 0), point(0, 3)]))!;
    expect(at.x).toBeCloseTo(2, 14);
    expect(at.y).toBeCloseTo(1, 14);
  });

  it('is 4 r / 3 pi above the chord of a half circle (handbook value), whichever way it runs', () => {
    const half = centroid(closedPath<'template'>([{ x: -2, y: 0, bulge: 1 }, { x: 2, y: 0, bulge: 0 }]))!;
    // A clockwise half turn from left to right runs over the top, where y is negative.
    expect(half.x).toBeCloseTo(0, 14);
    expect(half.y).toBeCloseTo((-4 * 2) / (3 * Math.PI), 14);
    const back = centroid(closedPath<'template'>([{ x: -2, y: 0, bulge: 0 }, { x: 2, y: 0, bulge: -1 }]))!;
    expect(back.y).toBeCloseTo(half.y, 14);
  });

  it('is 4 r / 3 pi from both sides of a quarter circle', () => {
    const quarter = closedPath<'template'>([{ x: 0, y: 0, bulge: 0 }, { x: 3, y: 0, bulge: Math.tan(Math.PI / 8) }, { x: 0, y: 3, bulge: 0 }]);
    const at = centroid(quarter)!;
    expect(at.x).toBeCloseTo(4 / Math.PI, 13);
    expect(at.y).toBeCloseTo(4 / Math.PI, 13);
  });

  it('moves away from a hole', () => {
    // Composite areas: a disc of radius 4 at 0 less one of radius 2 at 2 balances at -(4 * 2) / (16 - 4).
    const at = centroid(circle<'template'>(point(0, 0), 4), [circle(point(2, 0), 2)])!;
    expect(at.x).toBeCloseTo(-2 / 3, 14);
    expect(at.y).toBeCloseTo(0, 14);
  });

  it('is nowhere when nothing is left', () => {
    expect(centroid(polygon<'template'>([point(0, 0), point(1, 0)]))).toBeUndefined();
  });
});
