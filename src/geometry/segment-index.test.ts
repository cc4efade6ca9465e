import { describe, expect, it } from 'vitest';
import { random } from '../num/random.ts';
import { boundsMeet } from './bounds.ts';
import { openPath } from './path.ts';
import { segmentBounds, segmentIndex, segmentsIn } from './segment-index.ts';

describe('segments in a rectangle', () => {
  const zigzag = (count: number) => openPath<'quilt'>(Array.from({ length: count + 1 }, (_, i) => ({ x: i, y: i % 2, bulge: 0.5 })));

  it('a short path has no index, a long one has one, made once', () => {
    expect(segmentIndex(zigzag(3))).toBeUndefined();
    const long = zigzag(300);
    expect(segmentIndex(long)).toBe(segmentIndex(long));
    expect(segmentIndex(openPath<'quilt'>([]))).toBeUndefined();
  });

  it('are the ones whose extents reach into it, in order, indexed or not, seed 21', () => {
    const r = random(21);
    for (const path of [zigzag(5), zigzag(300)]) {
      for (let i = 0; i < 50; i++) {
        const [x, y] = [r.between(-2, 302), r.between(-2, 3)];
        const within = { minX: x, minY: y, maxX: x + r.between(0, 5), maxY: y + r.between(0, 1) };
        const all = segmentBounds(path).flatMap((b, index) => (boundsMeet(b, within) ? [index] : []));
        expect(segmentsIn(path, within)).toEqual(all);
      }
    }
  });
});
