import { describe, expect, it } from 'vitest';
import { type Path, circle, closedPath, openPath, polygon } from '../path.ts';
import { point } from '../point.ts';
import { readPathData } from './read.ts';
import { writePathData } from './write.ts';

const back = (path: Path<'template'>): Path<'template'> => {
  const outcome = readPathData<'template'>(writePathData(path));
  if (!outcome.ok || outcome.value.length !== 1) throw new Error(writePathData(path));
  return outcome.value[0]!;
};

describe('writePathData', () => {
  it('writes lines, and leaves the last of a closed path to Z', () => {
    expect(writePathData(polygon<'template'>([point(0, 0), point(4, 0), point(4, 2.5)]))).toBe('M 0 0 L 4 0 L 4 2.5 Z');
    expect(writePathData(openPath<'template'>([{ x: -0.125, y: 1, bulge: 0 }, { x: 3, y: 1 / 3, bulge: 0 }]))).toBe('M -0.125 1 L 3 0.333333333333');
  });

  it('keeps arcs, with a sweep flag of 1 for clockwise', () => {
    expect(writePathData(circle<'template'>(point(1, 0), 2))).toBe('M 3 0 A 2 2 0 0 1 -1 0 A 2 2 0 0 1 3 0 Z');
    const quarter = Math.tan(Math.PI / 8);
    expect(writePathData(openPath<'template'>([{ x: 1, y: 0, bulge: -quarter }, { x: 0, y: 1, bulge: 0 }]))).toBe('M 1 0 A 1 1 0 0 0 0 1');
    expect(writePathData(closedPath<'template'>([{ x: 1, y: 0, bulge: quarter }, { x: 0, y: 1, bulge: 0 }]))).toBe('M 1 0 A 1 1 0 0 1 0 1 Z');
  });

  it('writes no noise: rounding is 0, and no digits beyond the twelfth', () => {
    expect(writePathData(openPath<'template'>([{ x: 6.1e-17, y: -0, bulge: 0 }, { x: 0.1 + 0.2, y: 2.9999999999999996, bulge: 0 }]))).toBe('M 0 0 L 0.3 3');
  });

  it('writes nothing for a path without vertices', () => {
    expect(writePathData(openPath<'template'>([]))).toBe('');
  });

  it('brings back arcs however near a half turn', () => {
    for (const short of [0, 1e-15, 1e-12, 1e-9, 1e-7, 1e-6, 1e-5, 1e-4, 1e-3, 0.01, 0.1]) {
      const bulge = 1 - short;
      const path = back(openPath<'template'>([{ x: 0.123456789, y: 0.2, bulge }, { x: 3.1, y: 1.7, bulge: 0 }]));
      // The rise of the arc over its chord, half the chord times the bulge, is back within rounding slack.
      const half = Math.hypot(3.1 - 0.123456789, 1.5) / 2;
      const total = path.vertices.slice(0, -1).reduce((sum, v) => sum + 4 * Math.atan(v.bulge), 0);
      expect(Math.abs(half * Math.tan(total / 4) - half * bulge), `1 - ${short}`).toBeLessThan(2e-9);
    }
  });

  it('brings back arcs however flat', () => {
    for (const bulge of [1e-1, 1e-3, 1e-5, 1e-7]) {
      const path = back(openPath<'template'>([{ x: 0, y: 0, bulge }, { x: 3, y: 1, bulge: 0 }]));
      expect(Math.abs(path.vertices[0]!.bulge / bulge - 1)).toBeLessThan(1e-9);
    }
  });
});
