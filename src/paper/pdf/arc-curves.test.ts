import { describe, expect, it } from 'vitest';
import { distance } from '../../geometry/point.ts';
import { arcAround } from '../../geometry/segment.ts';
import { random } from '../../num/random.ts';
import { ARC_ON_PAPER, type Curve, curvesOfArc, strayOfCubic } from './arc-curves.ts';

type P = { readonly x: number; readonly y: number };

/** A point of a cubic by its Bernstein form. */
function onCurve(from: P, [x1, y1, x2, y2, x, y]: Curve, t: number): P {
  const [a, b, c, d] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
  return { x: a * from.x + b * x1 + c * x2 + d * x, y: a * from.y + b * y1 + c * y2 + d * y };
}

function greatestStray(arc: ReturnType<typeof arcAround<'page'>>, curves: readonly Curve[]): number {
  let from: P = arc.from;
  let stray = 0;
  for (const curve of curves) {
    for (let i = 0; i <= 200; i++) stray = Math.max(stray, Math.abs(distance<'page'>(arc.centre, onCurve(from, curve, i / 200)) - arc.radius));
    from = { x: curve[4], y: curve[5] };
  }
  return stray;
}

describe('curvesOfArc', () => {
  it('strays from a quarter circle of radius 1 by 2.7e-4 with one cubic (Goldapp 1991; the well-known figure)', () => {
    const quarter = arcAround<'page'>({ x: 0, y: 0 }, 1, 0, Math.PI / 2);
    expect(greatestStray(quarter, curvesOfArc(quarter, 1))).toBeCloseTo(2.73e-4, 6);
    expect(strayOfCubic(1, Math.PI / 2)).toBeGreaterThanOrEqual(2.72e-4);
  });

  it('stays within a hundred-thousandth of an inch of true arcs of any size, either way round, seed 11', () => {
    const { between } = random(11);
    for (let i = 0; i < 300; i++) {
      const radius = 10 ** between(-2, 4);
      const arc = arcAround<'page'>({ x: between(-50, 50), y: between(-50, 50) }, radius, between(0, 7), between(-Math.PI, Math.PI));
      const curves = curvesOfArc(arc);
      expect(greatestStray(arc, curves)).toBeLessThanOrEqual(ARC_ON_PAPER + 1e-10);
      expect(curves.at(-1)!.slice(4)).toEqual([arc.to.x, arc.to.y]);
      expect(curves.length).toBeLessThan(60);
    }
  });

  it('uses no more curves than the bound asks for', () => {
    const arc = arcAround<'page'>({ x: 0, y: 0 }, 8, 0.3, 1.2);
    const { length } = curvesOfArc(arc);
    expect(strayOfCubic(8, 1.2 / length)).toBeLessThanOrEqual(ARC_ON_PAPER);
    expect(strayOfCubic(8, 1.2 / (length - 1))).toBeGreaterThan(ARC_ON_PAPER);
  });
});
