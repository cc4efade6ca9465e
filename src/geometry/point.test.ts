import { describe, expect, it } from 'vitest';
import { angleOf, between, cross, distance, dot, heading, moved, partWay, plus, point, quarterTurned, scaled, size, unit, vec } from './point.ts';

describe('points and vectors', () => {
  const a = point<'quilt'>(1, 2);
  const b = point<'quilt'>(4, 6);

  it('a 3-4-5 triangle: between, distance, size', () => {
    expect(between(a, b)).toEqual({ x: 3, y: 4 });
    expect(distance(a, b)).toBe(5);
    expect(size(between(a, b))).toBe(5);
  });

  it('moves and divides', () => {
    expect(moved(a, vec(3, 4))).toEqual(b);
    expect(moved(a, vec(3, 4), -1)).toEqual({ x: -2, y: -2 });
    expect(partWay(a, b, 0.5)).toEqual({ x: 2.5, y: 4 });
    expect(plus(vec<'quilt'>(1, 2), vec(3, 4))).toEqual({ x: 4, y: 6 });
    expect(scaled(vec<'quilt'>(1, 2), 3)).toEqual({ x: 3, y: 6 });
  });

  it('a quarter turn clockwise on the screen takes right to down, and down to left', () => {
    expect(quarterTurned(vec<'quilt'>(1, 0))).toEqual({ x: -0, y: 1 });
    expect(quarterTurned(vec<'quilt'>(0, 1))).toEqual({ x: -1, y: 0 });
    expect(cross(vec<'quilt'>(1, 0), vec(0, 1))).toBe(1);
    expect(dot(vec<'quilt'>(3, 4), quarterTurned(vec(3, 4)))).toBe(0);
  });

  it('angles run clockwise from x: down is a quarter turn', () => {
    expect(angleOf(vec<'quilt'>(0, 1))).toBeCloseTo(Math.PI / 2, 15);
    expect(heading<'quilt'>(Math.PI / 2).y).toBeCloseTo(1, 15);
    expect(angleOf(heading<'quilt'>(-2.5))).toBeCloseTo(-2.5, 15);
  });

  it('the unit vector of nothing is nothing, never NaN', () => {
    expect(unit(vec<'quilt'>(3, 4))).toEqual({ x: 0.6, y: 0.8 });
    expect(unit(vec<'quilt'>(0, 0))).toEqual({ x: 0, y: 0 });
  });
});
