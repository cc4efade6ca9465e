import { describe, expect, it } from 'vitest';
import { distance } from '../../geometry/point.ts';
import { carry } from '../../geometry/pose.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import type { Plan, Template } from '../../model/plan.ts';
import { needleLines } from '../../needle/needle-lines.ts';
import { layTop } from '../../top/lay-top.ts';
import type { PlaceSetting } from '../place.ts';
import { featureOf } from '../feature.ts';
import { familyById } from '../../model/kit/families.ts';
import { countsTried, medallion } from './medallion.ts';
import { sizeThatCloses } from './size-that-closes.ts';

const BLOCK: Plan['top'] = {
  blocks: { setting: 'straight', rows: 1, columns: 1, size: [24, 24], sashing: 0, cornerstones: false },
  borders: [],
  drawnAreas: {},
  keepOuts: {},
  clearance: { rawEdge: 0.5, seam: 0.125 },
};

function settingOf(template: Omit<Extract<Template, { family: string }>, 'name' | 'thickness' | 'grips'>): PlaceSetting {
  const shape = shapeOf({ name: 't', thickness: 0.25, grips: 'none', ...template });
  if (!shape.ok) throw new Error(shape.problem.message);
  return { shape: shape.value, needle: needleLines(shape.value, 0.5), lines: layTop(BLOCK).areas[0]!.referenceLines, stitched: new Map() };
}

const round = settingOf({ family: 'circle', sizes: { diameter: 4 } });
const leaf = settingOf({ family: 'leaf', sizes: { length: 8, width: 3.5 } });

// Closed form: n equal circles of radius R round a centre touch their neighbours when their middles lie R / sin(pi / n) out. A 4-inch circle and
// a half-inch foot give R = 2 1/4.
describe('a ring of circles', () => {
  it.each([3, 4, 6, 8, 12])('of %i touches its neighbours at R / sin(pi / n)', (count) => {
    const rings = medallion({ count, repeat: 'turn', put: 'etching:centre-down', reach: 11 }, round);
    const best = rings.ok ? rings.value[0] : undefined;
    expect(best?.closes).toBe('touching');
    expect(best?.from).toBeCloseTo(2.25 / Math.sin(Math.PI / count), 7);
    expect(best?.stretch).toBe('all-round');
  });

  it('laid nearer, overlaps by 2 (R - d sin(pi / n)); laid farther, gapes by as much', () => {
    for (const from of [4, 5, 6, 7, 8]) {
      const rings = medallion({ count: 8, repeat: 'turn', put: 'etching:centre-down', from, reach: 11 }, round);
      const ring = rings.ok ? rings.value[0]! : expect.fail();
      expect(ring.apart).toBeCloseTo(2 * (from * Math.sin(Math.PI / 8) - 2.25), 8);
      expect(ring.closes).toBe(ring.apart > 0 ? 'apart' : 'meeting');
    }
  });

  it('says which counts would close at a given distance: all from pi / asin(R / d) on', () => {
    const closing = countsTried({ count: 4, repeat: 'turn', put: 'etching:centre-down', from: 5, reach: 11 }, round).filter(({ closes }) => closes);
    expect(closing[0]?.count).toBe(Math.ceil(Math.PI / Math.asin(2.25 / 5)));
    expect(closing.at(-1)?.count).toBe(24);
  });
});

describe('cross on this line, tip on the next', () => {
  it.each([4, 6, 8, 12])('of %i: lies as told, and where one stops the next starts', (count) => {
    const rings = medallion({ count, repeat: 'turn', put: 'etching:cross', tip: 'tip:1', reach: 11 }, leaf);
    expect(rings.ok && rings.value.length).toBeGreaterThan(0);
    if (!rings.ok) return;
    const tip = featureOf('tip:1', leaf.shape, leaf.needle);
    if (!tip.ok || tip.value.kind !== 'point') return expect.fail();
    for (const { pose, from, closes } of rings.value) {
      const [cross, end] = [carry(pose, { x: 0, y: 0 }), carry(pose, tip.value.at)];
      expect(cross).toMatchObject({ x: expect.closeTo(0, 9) as number, y: expect.closeTo(-from, 9) as number });
      // The tip lies a part of the round clockwise of straight up.
      const step = (2 * Math.PI) / count;
      expect(end.x * Math.cos(step) + end.y * Math.sin(step)).toBeCloseTo(0, 9);
      expect(end.x * Math.sin(step) - end.y * Math.cos(step)).toBeGreaterThanOrEqual(-1e-9);
      expect(['touching', 'on-lines', 'meeting']).toContain(closes);
    }
    for (const ring of rings.value.filter(({ closes }) => closes === 'on-lines')) {
      // The joint lies on the next line.
      expect(distance({ x: 0, y: 0 }, ring.joint!)).toBeCloseTo(Math.abs(ring.joint!.x * Math.sin((2 * Math.PI) / count) - ring.joint!.y * Math.cos((2 * Math.PI) / count)), 7);
    }
  });

  it('says in a sentence what cannot be', () => {
    expect(medallion({ count: 8, repeat: 'turn', put: 'etching:cross', reach: 11 }, leaf)).toMatchObject({ ok: false });
    expect(medallion({ count: 8, repeat: 'turn', put: 'etching:heart', tip: 'tip:1', reach: 11 }, leaf)).toMatchObject({ ok: false });
  });
});

describe('mirrored and turned', () => {
  it('starts and stops on the lines, and finds where the needle line is square on the first', () => {
    const rings = medallion({ count: 4, repeat: 'mirror-and-turn', put: 'etching:cross', tip: 'tip:1', reach: 11 }, leaf);
    if (!rings.ok) return expect.fail(rings.problem);
    const mirrored = rings.value.filter(({ closes }) => closes === 'mirrored');
    expect(mirrored.length).toBeGreaterThan(0);
    // The joint lies on the diagonal up to the right.
    for (const { joint } of mirrored) expect(joint!.x + joint!.y).toBeCloseTo(0, 7);
  });
});

describe('the size that closes', () => {
  it('of a ring of eight circles 6 in out: needle radius 6 sin(pi / 8), so that the plate is half an inch less across', () => {
    const circle = familyById('circle')!;
    const found = sizeThatCloses(circle, { diameter: 6 }, 0.5, { count: 8, repeat: 'turn', put: 'etching:centre-down', from: 6, reach: 11 }, round);
    const wanted = 2 * 6 * Math.sin(Math.PI / 8) - 0.5;
    expect(found?.sizes.diameter).toBeCloseTo(wanted, 6);
    expect(found?.made.diameter).toBe(Math.round(wanted * 8) / 8);
    expect(found?.apart).toBeCloseTo(wanted - Math.round(wanted * 8) / 8, 7);
  });
});
