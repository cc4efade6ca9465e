import { describe, expect, it } from 'vitest';
import { pathLength, pointAlong } from '../../geometry/measure.ts';
import { distanceToPath } from '../../geometry/nearest.ts';
import type { Path } from '../../geometry/path.ts';
import { readPathData } from '../../geometry/svg/read.ts';
import { random as seeded } from '../../num/random.ts';
import { screenData } from './screen-data.ts';

// Read back by the reader of path data, whose arcs are those of SVG 2, 9.5 and B.2.4.
function readBack(path: Path<'quilt'>): Path<'quilt'> {
  const read = readPathData<'quilt'>(screenData(path));
  if (!read.ok || read.value.length !== 1) throw new Error(screenData(path));
  return read.value[0]!;
}

describe('path data for the screen', () => {
  it('read back lies within a thousandth of an inch of the path (seed 41)', () => {
    const { next } = seeded(41);
    for (let n = 0; n < 200; n++) {
      const vertices = Array.from({ length: 2 + Math.floor(next() * 6) }, () => ({ x: next() * 90, y: next() * 90, bulge: next() < 0.3 ? 0 : 2 * next() - 1 }));
      const path: Path<'quilt'> = { vertices, closed: next() < 0.5 && vertices.length > 2 };
      const read = readBack(path);
      expect(read.closed).toBe(path.closed);
      expect(Math.abs(pathLength(read) - pathLength(path))).toBeLessThan(1e-2);
      for (let i = 0; i <= 20; i++) expect(distanceToPath(read, pointAlong(path, (pathLength(path) * i) / 20).point)).toBeLessThan(1e-3);
    }
  });

  it('keeps a half circle a half circle', () => {
    const half: Path<'quilt'> = { vertices: [{ x: 0, y: 0, bulge: 1 }, { x: 2, y: 0, bulge: 0 }], closed: false };
    expect(pathLength(readBack(half))).toBeCloseTo(Math.PI, 4);
  });

  it('of a path without vertices is nothing', () => {
    expect(screenData({ vertices: [], closed: false })).toBe('');
  });
});
