import { describe, expect, it } from 'vitest';
import { startingAt } from './change.ts';
import { circle, closedPath, openPath, polygon } from './path.ts';
import { point } from './point.ts';
import { tidied, withoutEmptyStretches } from './tidy.ts';

describe('tidied', () => {
  it('stretches on one line become one', () => {
    const path = polygon<'quilt'>([point(0, 0), point(1, 0), point(3, 0), point(4, 0), point(4, 4), point(0, 4)]);
    expect(tidied(path)).toEqual(polygon([point(0, 0), point(4, 0), point(4, 4), point(0, 4)]));
  });

  it('the start stays, even in the middle of a side', () => {
    const path = polygon<'quilt'>([point(2, 0), point(4, 0), point(4, 4), point(0, 4), point(0, 0)]);
    expect(tidied(path)).toBe(path);
  });

  it('stretches of one circle become one, up to a half turn', () => {
    const q = Math.tan(Math.PI / 8);
    const quarters = closedPath<'quilt'>([{ x: 1, y: 0, bulge: q }, { x: 0, y: 1, bulge: q }, { x: -1, y: 0, bulge: q }, { x: 0, y: -1, bulge: q }]);
    expect(tidied(quarters).vertices).toHaveLength(2);
    expect(tidied(circle(point<'quilt'>(0, 0), 1))).toEqual(circle(point<'quilt'>(0, 0), 1));
    expect(tidied(startingAt(circle(point<'quilt'>(0, 0), 1), 1)).vertices).toHaveLength(3);
  });

  it('neither corners nor doubling back nor an S are smoothed away', () => {
    for (const path of [
      openPath<'quilt'>([{ x: 0, y: 0, bulge: 0 }, { x: 1, y: 0, bulge: 0 }, { x: 2, y: 1e-6, bulge: 0 }]),
      openPath<'quilt'>([{ x: 0, y: 0, bulge: 0 }, { x: 3, y: 0, bulge: 0 }, { x: 1, y: 0, bulge: 0 }]),
      openPath<'quilt'>([{ x: 0, y: 0, bulge: 0.5 }, { x: 1, y: 0, bulge: -0.5 }, { x: 2, y: 0, bulge: 0 }]),
      closedPath<'quilt'>([{ x: 0, y: 0, bulge: 0.5 }, { x: 1, y: 0, bulge: 0.5 }]),
    ]) {
      expect(tidied(path)).toBe(path);
    }
  });

  it('stretches of no length go, their bulges with them', () => {
    const path = closedPath<'quilt'>([{ x: 0, y: 0, bulge: 0 }, { x: 0, y: 5e-10, bulge: 0 }, { x: 4, y: 0, bulge: 0.5 }, { x: 4, y: 0, bulge: 0.25 }, { x: 4, y: 4, bulge: 0 }, { x: 0, y: 0, bulge: 0 }]);
    expect(withoutEmptyStretches(path)).toEqual(closedPath([{ x: 0, y: 0, bulge: 0 }, { x: 4, y: 0, bulge: 0.25 }, { x: 4, y: 4, bulge: 0 }]));
    expect(withoutEmptyStretches(openPath<'quilt'>([{ x: 1, y: 1, bulge: 1 }, { x: 1, y: 1, bulge: 0 }])).vertices).toEqual([{ x: 1, y: 1, bulge: 0 }]);
    expect(withoutEmptyStretches(openPath<'quilt'>([])).vertices).toEqual([]);
  });
});
