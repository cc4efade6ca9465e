// Tops made at random: whatever the layout, its pieces tile it.

import { describe, expect, it } from 'vitest';
import { whereIs } from '../../src/geometry/inside.ts';
import { pathLength, signedArea } from '../../src/geometry/measure.ts';
import { distance, point } from '../../src/geometry/point.ts';
import { carry, inverse } from '../../src/geometry/pose.ts';
import type { Blocks, Border, Top } from '../../src/model/plan.ts';
import { type Random, random } from '../../src/num/random.ts';
import { layTop, piecedAreas } from '../../src/top/lay-top.ts';

const RUNS = 60;

describe.each([11, 2024, 77001])('tops from seed %i', (seed) => {
  const rng = random(seed);
  const tops = Array.from({ length: RUNS }, () => anyTop(rng));

  it('have pieces whose areas add up to width by height', () => {
    for (const plan of tops) {
      const top = layTop(plan);
      expect(top.problems).toEqual([]);
      const sum = piecedAreas(top).reduce((total, area) => total + signedArea(area.boundary), 0);
      expect(sum).toBeCloseTo(top.width * top.height, 6);
      for (const area of piecedAreas(top)) expect(signedArea(area.boundary)).toBeGreaterThan(0);
    }
  });

  it('have exactly one piece at every place', () => {
    for (const plan of tops.slice(0, 20)) {
      const top = layTop(plan);
      const pieces = piecedAreas(top);
      for (let i = 0; i < 40; i++) {
        const p = point<'quilt'>(rng.between(0, top.width), rng.between(0, top.height));
        const holding = pieces.filter((area) => whereIs(area.boundary, carry(inverse(area.frame), p)) !== 'outside');
        expect(holding.length, `${JSON.stringify(plan)} at ${p.x}, ${p.y}: ${holding.map((a) => a.id).join(', ')}`).toBe(1);
      }
    }
  });

  it('have every inner seam between two pieces, and the raw edge all round', () => {
    for (const plan of tops) {
      const top = layTop(plan);
      const seams = piecedAreas(top).flatMap((area) => area.seams);
      const total = (of: typeof seams) => of.reduce((sum, seam) => sum + pathLength(seam.path), 0);
      const mitres = seams.filter((seam) => seam.id === 'mitre');
      const shared = seams.filter((seam) => seam.kind === 'seam' && seam.id !== 'mitre');
      const listed = top.seams.reduce((sum, seam) => sum + pathLength(seam), 0);
      expect(total(shared)).toBeCloseTo(2 * (listed - total(mitres)), 6);
      expect(total(seams.filter((seam) => seam.kind === 'raw'))).toBeCloseTo(2 * (top.width + top.height), 6);
    }
  });

  it('have rigid frames, and ids that are their own and do not change with sizes', () => {
    for (const plan of tops) {
      const top = layTop(plan);
      const ids = top.areas.map((area) => area.id);
      expect(new Set(ids).size).toBe(ids.length);
      for (const area of top.areas) {
        const [o, x, y] = [point<'area'>(0, 0), point<'area'>(1, 0), point<'area'>(0, 1)].map((p) => carry(area.frame, p));
        expect(distance(o!, x!)).toBeCloseTo(1, 12);
        expect(distance(o!, y!)).toBeCloseTo(1, 12);
        // y lies clockwise of x: nothing is turned face down.
        expect((x!.x - o!.x) * (y!.y - o!.y) - (x!.y - o!.y) * (y!.x - o!.x)).toBeCloseTo(1, 12);
      }
      const larger = layTop({ ...plan, ...(plan.blocks && { blocks: { ...plan.blocks, size: [plan.blocks.size[0] + 1, plan.blocks.size[1] + 1] as const } }) });
      expect(larger.areas.map((area) => area.id)).toEqual(ids);
    }
  });

  it('share shapes among areas with the same key, and among no others', () => {
    for (const plan of tops) {
      const byShape = new Map<string, object>();
      for (const area of layTop(plan).areas) {
        const known = byShape.get(area.shape);
        if (known) expect(area.boundary).toBe(known);
        byShape.set(area.shape, area.boundary);
      }
      expect(new Set(byShape.values()).size).toBe(byShape.size);
    }
  });
});

function anyTop(rng: Random): Top {
  const borders = Array.from({ length: rng.whole(0, 3) }, () => anyBorder(rng));
  const middle = rng.next() < 0.15 ? { panel: { size: [rng.whole(20, 80), rng.whole(20, 80)] as const } } : { blocks: anyBlocks(rng) };
  return { ...middle, borders, drawnAreas: {}, keepOuts: {}, clearance: { rawEdge: 0.5, seam: 0.125 } };
}

function anyBlocks(rng: Random): Blocks {
  const setting = rng.pick(['straight', 'on-point'] as const);
  const width = rng.whole(24, 128) / 8;
  const height = setting === 'straight' ? rng.whole(24, 128) / 8 : width;
  return {
    setting,
    rows: rng.whole(1, 5),
    columns: rng.whole(1, 5),
    size: [width, height],
    sashing: rng.pick([0, rng.whole(2, 16) / 8]),
    cornerstones: rng.next() < 0.5,
    sashedRound: rng.next() < 0.5,
  };
}

function anyBorder(rng: Random): Border {
  return { width: rng.whole(4, 64) / 8, corners: rng.pick(['butted', 'mitred', 'squares'] as const), through: rng.pick(['top-and-bottom', 'left-and-right'] as const) };
}
