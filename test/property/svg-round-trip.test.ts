// Random paths of lines and arcs, written and read back; random path data against the arcs of another library. Seeds are in the names.

import svgpath from 'svgpath';
import { describe, expect, it } from 'vitest';
import { cubic } from '../../src/geometry/fit/bezier.ts';
import { pathLength, signedArea } from '../../src/geometry/measure.ts';
import type { Path, Vertex } from '../../src/geometry/path.ts';
import { readPathData } from '../../src/geometry/svg/read.ts';
import { writePathData } from '../../src/geometry/svg/write.ts';
import { type Random, random } from '../../src/num/random.ts';
import { distanceToPath } from './fit-measure.ts';

function randomPath(r: Random): Path<'template'> {
  const count = r.whole(2, 12);
  const scale = 10 ** r.between(-1, 2);
  const vertices = Array.from({ length: count }, (): Vertex => {
    const bulge = r.pick([0, r.between(-1, 1), 1, -1, Math.tan(Math.PI / 8), 10 ** r.between(-6, 0), 1 - 10 ** r.between(-16, -1)]);
    return { x: r.between(-scale, scale), y: r.between(-scale, scale), bulge };
  });
  const closed = r.next() < 0.5;
  return { closed, vertices: closed ? vertices : vertices.map((v, i) => (i === count - 1 ? { ...v, bulge: 0 } : v)) };
}

describe('a path written and read back', () => {
  it('has the same vertices, length and area (seed 7)', () => {
    const r = random(7);
    for (let i = 0; i < 800; i++) {
      const path = randomPath(r);
      const d = writePathData(path);
      const outcome = readPathData<'template'>(d);
      if (!outcome.ok) throw new Error(`${d}: ${outcome.problem.message}`);
      const back = outcome.value[0]!;
      expect(outcome.value, d).toHaveLength(1);
      expect(back.closed, d).toBe(path.closed);
      expect(back.vertices.length, d).toBeGreaterThanOrEqual(path.vertices.length);
      // The writer lets the middle of an arc slip by a billionth of an inch; the length follows.
      expect(Math.abs(pathLength(back) - pathLength(path)), d).toBeLessThan(1e-8 * path.vertices.length);
      if (path.closed) expect(Math.abs(signedArea(back) - signedArea(path)), d).toBeLessThan(1e-8 * (1 + pathLength(path)) * path.vertices.length);
      expect(writePathData(back).length, d).toBeLessThanOrEqual(d.length * 1.2);
    }
  });

  it('is not written longer the second time (seed 8)', () => {
    const r = random(8);
    for (let i = 0; i < 300; i++) {
      const once = readPathData<'template'>(writePathData(randomPath(r)));
      if (!once.ok) throw new Error(once.problem.message);
      const twice = readPathData<'template'>(writePathData(once.value[0]!));
      if (!twice.ok) throw new Error(twice.problem.message);
      expect(twice.value[0]!.vertices).toHaveLength(once.value[0]!.vertices.length);
    }
  });
});

describe('elliptical arcs against the cubics another library makes of them', () => {
  it('run the same way through the same places (seed 9)', () => {
    const r = random(9);
    for (let i = 0; i < 120; i++) {
      const n = () => r.between(-5, 5).toFixed(3);
      const radius = () => r.between(0.2, 8).toFixed(2);
      const rx = radius();
      const d = `M ${n()} ${n()} A ${rx} ${r.next() < 0.3 ? rx : radius()} ${r.between(-180, 180).toFixed(1)} ${r.whole(0, 1)} ${r.whole(0, 1)} ${n()} ${n()}`;
      const outcome = readPathData<'template'>(d);
      if (!outcome.ok) throw new Error(outcome.problem.message);
      const path = outcome.value[0]!;
      let length = 0;
      for (const p of pointsOfCubics(d)) {
        // Its cubics stay within 2.8e-4 of a quarter turn's radius, and radii may have been grown.
        expect(distanceToPath(p, path), d).toBeLessThan(0.0005 + 2.8e-4 * 16);
        length += p.step;
      }
      expect(Math.abs(length / pathLength(path) - 1), d).toBeLessThan(2e-3);
    }
  });
});

/** Points along the cubics `svgpath` turns data into, each with the chord from the one before. */
function pointsOfCubics(d: string): { x: number; y: number; step: number }[] {
  const cubics = (svgpath(d).abs().unarc() as unknown as { segments: [string, ...number[]][] }).segments;
  const points: { x: number; y: number; step: number }[] = [];
  let at = { x: 0, y: 0 };
  for (const [command, ...n] of cubics) {
    const p = (i: number) => ({ x: n[i]!, y: n[i + 1]! });
    if (command === 'M') at = p(0);
    if (command !== 'C') continue;
    const curve = cubic<'template'>(at, p(0), p(2), p(4));
    let before = at;
    for (let i = 1; i <= 40; i++) {
      const here = curve(i / 40).point;
      points.push({ ...here, step: Math.hypot(here.x - before.x, here.y - before.y) });
      before = here;
    }
    at = p(4);
  }
  return points;
}
