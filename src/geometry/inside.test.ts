import { describe, expect, it } from 'vitest';
import { random } from '../num/random.ts';
import { reversedPath } from './change.ts';
import { whereIs, windingAround } from './inside.ts';
import { type Path, circle, closedPath, openPath, polygon } from './path.ts';
import { point } from './point.ts';

const square = polygon<'quilt'>([point(0, 0), point(4, 0), point(4, 4), point(0, 4)]);

describe('inside, outside, on', () => {
  it('of a square, also level with its corners and sides', () => {
    expect(whereIs(square, point(2, 2))).toBe('inside');
    expect(whereIs(square, point(5, 4))).toBe('outside');
    expect(whereIs(square, point(-1, 0))).toBe('outside');
    expect(whereIs(square, point(-1, 4))).toBe('outside');
    expect(whereIs(square, point(4, 3))).toBe('on');
    expect(whereIs(square, point(0, 0))).toBe('on');
    expect(whereIs(square, point(4 + 5e-10, 3))).toBe('on');
    expect(whereIs(square, point(4 + 2e-9, 3))).toBe('outside');
    expect(whereIs(square, point(4 - 2e-9, 3))).toBe('inside');
  });

  it('level with the corner of a diamond', () => {
    const diamond = polygon<'quilt'>([point(0, -2), point(2, 0), point(0, 2), point(-2, 0)]);
    expect(whereIs(diamond, point(0, 0))).toBe('inside');
    expect(whereIs(diamond, point(-1.5, 0))).toBe('inside');
    expect(whereIs(diamond, point(-3, 0))).toBe('outside');
    expect(whereIs(diamond, point(-3, 2))).toBe('outside');
  });

  it('of a circle is by distance from its centre', () => {
    const path = circle(point<'quilt'>(1, -2), 3);
    const { between } = random(3);
    for (let i = 0; i < 2000; i++) {
      const p = point<'quilt'>(between(-3, 5), between(-6, 2));
      expect(whereIs(path, p)).toBe(Math.hypot(p.x - 1, p.y + 2) < 3 ? 'inside' : 'outside');
    }
    for (const [x, y] of [[1, -2], [-1, -2], [3, -2], [1, 0.9], [1, -4.9]]) expect(whereIs(path, point(x!, y!))).toBe('inside');
  });

  it('of a crescent is in one circle and not in the other', () => {
    // Circle of radius 5 about the origin less circle of radius 5 about (6, 0); they meet at (3, +-4).
    const outer = Math.PI * 2 - 2 * Math.atan2(4, 3);
    const step = Math.tan(outer / 8);
    const crescent = closedPath<'quilt'>([
      { x: 3, y: 4, bulge: step },
      { x: -5, y: 0, bulge: step },
      { x: 3, y: -4, bulge: -Math.tan((2 * Math.atan2(4, 3)) / 4) },
    ]);
    const { between } = random(4);
    for (let i = 0; i < 3000; i++) {
      const p = point<'quilt'>(between(-6, 6), between(-6, 6));
      const isIn = Math.hypot(p.x, p.y) < 5 && Math.hypot(p.x - 6, p.y) > 5;
      expect(whereIs(crescent, p)).toBe(isIn ? 'inside' : 'outside');
      expect(whereIs(reversedPath(crescent), p)).toBe(isIn ? 'inside' : 'outside');
    }
  });

  it('by a flat arc: between the arc and its chord', () => {
    const bow: Path<'quilt'> = closedPath([{ x: 0, y: 0, bulge: 2e-6 }, { x: 10, y: 0, bulge: 0 }]);
    expect(whereIs(bow, point(5, -5e-6))).toBe('inside');
    expect(whereIs(bow, point(5, -1.1e-5))).toBe('outside');
    expect(whereIs(bow, point(5, 1e-6))).toBe('outside');
  });

  it('on many sides, by way of the index', () => {
    const sides = 200;
    const wheel = polygon<'quilt'>(Array.from({ length: sides }, (_, i) => {
      const r = i % 2 ? 3 : 5;
      return point<'quilt'>(r * Math.cos((2 * Math.PI * i) / sides), r * Math.sin((2 * Math.PI * i) / sides));
    }));
    expect(whereIs(wheel, point(2.9, 0))).toBe('inside');
    expect(whereIs(wheel, point(4.9, 0))).toBe('inside');
    expect(whereIs(wheel, point(4.9 * Math.cos(Math.PI / 100), 4.9 * Math.sin(Math.PI / 100)))).toBe('outside');
  });

  it('winding counts the rounds, clockwise positive', () => {
    expect(windingAround(square, point(2, 2))).toBe(1);
    expect(windingAround(reversedPath(square), point(2, 2))).toBe(-1);
    const twice = closedPath<'quilt'>([...circle(point<'quilt'>(0, 0), 1).vertices, ...circle(point<'quilt'>(0, 0), 1).vertices]);
    expect(windingAround(twice, point(0.1, 0.2))).toBe(2);
  });

  it('an open path counts as closed by a straight line', () => {
    expect(whereIs(openPath<'quilt'>(square.vertices), point(1, 2))).toBe('inside');
  });
});
