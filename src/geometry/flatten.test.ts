import { describe, expect, it } from 'vitest';
import { flatten } from './flatten.ts';
import { circle, closedPath, openPath, polygon } from './path.ts';
import { point } from './point.ts';

describe('flatten', () => {
  it('an arc split by 9 degrees strays 0.0030826 r, by 5 degrees 0.00095177 r (a CAD application note: r (1 - cos(q / 2)))', () => {
    // Just above the error of 40 steps, 40 steps are enough; just below, they are not.
    expect(flatten(circle(point<'quilt'>(0, 0), 1), 0.0030827)).toHaveLength(40);
    expect(flatten(circle(point<'quilt'>(0, 0), 1), 0.0030825).length).toBeGreaterThan(40);
    expect(flatten(circle(point<'quilt'>(0, 0), 10), 0.0095178)).toHaveLength(72);
  });

  it('keeps every vertex, repeats none, and leaves straight lines alone', () => {
    const corners = [point<'quilt'>(0, 0), point<'quilt'>(4, 0), point<'quilt'>(4, 4)];
    expect(flatten(polygon(corners), 0.01)).toEqual(corners);
    expect(flatten(openPath<'quilt'>(corners.map((c) => ({ ...c, bulge: 0 }))), 0.01)).toEqual(corners);
    const lens = closedPath<'quilt'>([{ x: 0, y: 0, bulge: 0.5 }, { x: 2, y: 0, bulge: 0.5 }]);
    expect(flatten(lens, 0.001)).toContainEqual({ x: 2, y: 0 });
    expect(flatten(lens, 0.001).filter((c) => c.x === 0 && c.y === 0)).toHaveLength(1);
  });

  it('a coarse error leaves the chords; no error at all is still an answer', () => {
    expect(flatten(circle(point<'quilt'>(0, 0), 1), 5)).toHaveLength(2);
    const fine = flatten(closedPath<'quilt'>([{ x: 0, y: 0, bulge: 0.01 }, { x: 0.01, y: 0, bulge: 0 }]), 0);
    expect(fine.length).toBeGreaterThan(10);
    expect(fine.length).toBeLessThan(1000);
    expect(flatten(openPath<'quilt'>([]), 0.1)).toEqual([]);
  });
});
