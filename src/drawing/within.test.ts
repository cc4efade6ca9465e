import { describe, expect, it } from 'vitest';
import { pathLength } from '../geometry/measure.ts';
import { circle, polygon, straight } from '../geometry/path.ts';
import { within } from './within.ts';

const square = polygon<'quilt'>([{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 4, y: 4 }, { x: 0, y: 4 }]);
const length = (path: ReturnType<typeof circle<'quilt'>>) => within(square, path).reduce((sum, piece) => sum + pathLength(piece), 0);

describe('within', () => {
  it('gives back what lies inside, as it is', () => {
    const inside = circle<'quilt'>({ x: 2, y: 2 }, 1);
    expect(within(square, inside)).toEqual([inside]);
    expect(within(square, inside)[0]).toBe(inside);
  });

  it('leaves out what lies outside', () => {
    expect(within(square, straight({ x: 5, y: 0 }, { x: 9, y: 9 }))).toEqual([]);
    expect(within(square, straight({ x: -1, y: 3 }, { x: 1, y: 6 }))).toEqual([]);
  });

  it('cuts at the boundary: a quarter of a circle about a corner is pi r / 2 long', () => {
    expect(length(circle({ x: 0, y: 0 }, 3))).toBeCloseTo((Math.PI * 3) / 2, 12);
  });

  it('keeps a line that runs along the boundary', () => {
    expect(length(straight({ x: -1, y: 0 }, { x: 9, y: 0 }))).toBeCloseTo(4, 12);
  });
});
