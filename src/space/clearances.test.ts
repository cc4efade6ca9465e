import { describe, expect, it } from 'vitest';
import { circle, polygon, straight } from '../geometry/path.ts';
import type { Point } from '../geometry/point.ts';
import { stay } from '../geometry/pose.ts';
import type { StitchedLine } from '../stitch/stitched-line.ts';
import type { Seam } from '../top/area.ts';
import { nearestLine, nearestSeam } from './clearances.ts';

const a = (x: number, y: number): Point<'area'> => ({ x, y });
const corners = [a(-6, -6), a(6, -6), a(6, 6), a(-6, 6)];
const seams: readonly Seam[] = ['top', 'right', 'bottom', 'left'].map((name, i) => ({ id: `edge-${name}`, kind: i === 0 ? 'raw' : 'seam', path: straight(corners[i]!, corners[(i + 1) % 4]!) }));

describe('the nearest seam', () => {
  it('of a circle is its distance from the side less its radius', () => {
    expect(nearestSeam([circle(a(2, 1), 3)], { seams })).toMatchObject({ seam: { id: 'edge-right' }, distance: 1 });
    expect(nearestSeam([circle(a(0, -2), 3), circle(a(0, 4), 0.5)], { seams })).toMatchObject({ seam: { id: 'edge-top', kind: 'raw' }, distance: 1 });
  });

  it('is less than nothing beyond it', () => {
    expect(nearestSeam([circle(a(-5, 0), 3)], { seams })!.distance).toBeCloseTo(-2, 12);
  });

  it('leaves a mitre out, and is none where there is no seam', () => {
    expect(nearestSeam([circle(a(0, 0), 1)], { seams: [{ id: 'mitre', kind: 'seam', path: straight(a(-6, -6), a(6, 6)) }] })).toBeUndefined();
  });
});

describe('the nearest line', () => {
  const line = (id: string, source: StitchedLine['source']): StitchedLine => ({ id, area: 'a', sheet: 's', placement: id, pass: 'p', image: 0, source, to: stay() as never, needleOffset: { x: 0, y: 0 }, length: 1 });
  const q = polygon<'quilt'>([{ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 1, y: 1 }, { x: 0, y: 1 }]);

  it('is the one with the shortest way to it', () => {
    const found = nearestLine([q], [line('far', circle(a(5, 0.5), 1)), line('near', circle(a(3, 0.5), 1))], 10)!;
    expect(found.line.placement).toBe('near');
    expect(found.distance).toBeCloseTo(1, 12);
    expect(found.from.x).toBeCloseTo(1, 12);
    expect(found.to.x).toBeCloseTo(2, 12);
  });

  it('is none beyond the reach, and 0 where they meet', () => {
    expect(nearestLine([q], [line('far', circle(a(5, 0.5), 1))], 2.9)).toBeUndefined();
    expect(nearestLine([q], [line('through', straight(a(-1, 0.5), a(2, 0.5)))], 1)!.distance).toBe(0);
  });
});
