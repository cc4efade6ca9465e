import { describe, expect, it } from 'vitest';
import { pathLength, pointAlong } from '../../geometry/measure.ts';
import { distance } from '../../geometry/point.ts';
import { BUILT_IN_KIT } from '../../model/kit/built-in.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import { needleLines } from '../../needle/needle-lines.ts';
import { needleCurve } from './needle-curve.ts';

const lines = Object.entries(BUILT_IN_KIT.templates).flatMap(([id, template]) => {
  const shape = shapeOf(template);
  return shape.ok ? needleLines(shape.value, 0.5).lines.map((line, i) => [`${id}, line ${i}`, line.path] as const) : [];
});

describe('a needle line as stretches', () => {
  it.each(lines)('%s: every place lies in the circle round its stretch, and no two places are farther apart than the widest chord', (_, path) => {
    const { stretches, widest, length } = needleCurve(path);
    expect(stretches.reduce((sum, stretch) => sum + stretch.length, 0)).toBeCloseTo(pathLength(path), 6);
    for (const { starts, length: run, middle, spread } of stretches) {
      for (let i = 0; i <= 20; i++) expect(distance(pointAlong(path, (starts + (i / 20) * run) % length).point, middle)).toBeLessThanOrEqual(spread + 1e-6);
    }
    const points = Array.from({ length: 120 }, (__, i) => pointAlong(path, (i / 120) * length).point);
    const farthest = Math.max(...points.flatMap((p) => points.map((q) => distance(p, q))));
    expect(widest).toBeGreaterThanOrEqual(farthest - 1e-9);
    expect(widest).toBeLessThan(farthest * 1.02);
  });

  it('a circle is one stretch', () => {
    const shape = shapeOf(BUILT_IN_KIT.templates['circle-6']!);
    if (!shape.ok) throw new Error(shape.problem.message);
    const [stretch, ...more] = needleCurve(needleLines(shape.value, 0.5).lines[0]!.path).stretches;
    expect(more).toEqual([]);
    expect(stretch).toMatchObject({ kind: 'arc', rho: 3.25, spread: 3.25 });
  });
});
