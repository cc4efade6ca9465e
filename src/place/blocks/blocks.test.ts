import { describe, expect, it } from 'vitest';
import { carryPath } from '../../geometry/change.ts';
import { pointAlong } from '../../geometry/measure.ts';
import { circle, polygon } from '../../geometry/path.ts';
import { poseOf } from '../../geometry/pose.ts';
import { nearestOnPath } from '../../geometry/nearest.ts';
import { random } from '../../num/random.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import type { Top } from '../../model/plan.ts';
import { needleLines } from '../../needle/needle-lines.ts';
import type { Area } from '../../top/area.ts';
import { layTop } from '../../top/lay-top.ts';
import type { PlaceSetting } from '../place.ts';
import { cornerMotif } from './corner-motif.ts';
import { frame } from './frame.ts';
import { motifChoices, motifFit } from './motif-size.ts';
import { openingOf } from './opening.ts';

const STRAIGHT: Top = {
  blocks: { setting: 'straight', rows: 1, columns: 1, size: [12, 12], sashing: 0, cornerstones: false },
  borders: [{ width: 2, corners: 'squares' }],
  drawnAreas: {},
  keepOuts: {},
  clearance: { rawEdge: 0.5, seam: 0.125 },
};
const ON_POINT: Top = { ...STRAIGHT, blocks: { setting: 'on-point', rows: 2, columns: 2, size: [8, 8], sashing: 0, cornerstones: false } };
const areaOf = (top: Top, kind: Area['kind']) => layTop(top).areas.find((area) => area.kind === kind)!;
const BLOCK = areaOf(STRAIGHT, 'block');

function settingOf(family: string, sizes: { readonly [size: string]: number }, area = BLOCK): PlaceSetting {
  const shape = shapeOf({ name: family, family, sizes, thickness: 0.25, grips: 'none' });
  if (!shape.ok) throw new Error(shape.problem.message);
  return { shape: shape.value, needle: needleLines(shape.value, 0.5), lines: area.referenceLines, stitched: new Map() };
}

const value = <Value,>(outcome: { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly problem: string }): Value => (outcome.ok ? outcome.value : expect.fail(outcome.problem));

describe('a motif in a corner', () => {
  it('a round one: its middle a radius and the clearance from both edges', () => {
    const [best] = value(cornerMotif({ registrations: [{ put: 'etching:centre-across', on: 'line:diagonal-down' }], mirror: 'line:diagonal-down' }, BLOCK, STRAIGHT.clearance, settingOf('circle', { diameter: 4 })));
    expect(best!.pose.x).toBeCloseTo(-6 + 2.25 + 0.125, 8);
    expect(best!.pose.y).toBeCloseTo(-6 + 2.25 + 0.125, 8);
    expect(best!.fromCorner).toBeCloseTo(2.375 * Math.SQRT2 - 2.25, 8);
    expect(best!.repeat).toEqual([{ mirror: 'line:diagonal-down' }]);
  });

  it('a leaf: no place found by sliding it along the diagonal in small steps keeps clear and lies nearer', () => {
    const setting = settingOf('leaf', { length: 6, width: 2.5 });
    const [best] = value(cornerMotif({ registrations: [{ put: 'etching:centre-across', on: 'line:diagonal-down' }], mirror: 'line:diagonal-down' }, BLOCK, STRAIGHT.clearance, setting));
    const line = setting.needle.lines[0]!.path;
    for (let slide = -8; slide < 0; slide += 0.03) {
      const path = carryPath(poseOf<'template', 'area'>(slide, slide, Math.PI / 4), line);
      const places = Array.from({ length: 200 }, (_, i) => pointAlong(path, (i * setting.needle.lines[0]!.length) / 200).point);
      if (places.some(({ x, y }) => x < -6 + 0.125 || y < -6 + 0.125)) continue;
      expect(nearestOnPath(path, { x: -6, y: -6 }).distance).toBeGreaterThan(best!.fromCorner - 1e-3);
    }
    expect(best!.room).toBeLessThan(1e-6);
  });

  it('says when it does not fit', () => {
    expect(cornerMotif({ registrations: [{ put: 'etching:centre-across', on: 'line:diagonal-down' }], mirror: 'line:diagonal-down' }, BLOCK, STRAIGHT.clearance, settingOf('circle', { diameter: 14 }))).toMatchObject({ ok: false });
  });
});

describe('a frame from the corners', () => {
  it('of circles leaves a circle of half the diagonal less their radius', () => {
    const [found] = value(frame(BLOCK, STRAIGHT.clearance, settingOf('circle', { diameter: 6 })));
    expect(found!.opening.radius).toBeCloseTo(6 * Math.SQRT2 - 3.25, 8);
    // The upright square touches the arcs on the diagonals, where they come nearest to the centre.
    expect(found!.opening.square).toBeCloseTo(2 * (6 - 3.25 / Math.SQRT2), 8);
  });

  it('and the largest rectangle about the centre that random tries do not better, seed 7', () => {
    const { between } = random(7);
    for (const r of [1, 2.5, 4, 5.5]) {
      const corners = [[-1, -1], [1, -1], [1, 1], [-1, 1]].map(([x, y]) => circle<'area'>({ x: 6 * x!, y: 4 * y! }, r));
      const { rectangle } = openingOf(polygon([{ x: -6, y: -4 }, { x: 6, y: -4 }, { x: 6, y: 4 }, { x: -6, y: 4 }]), corners);
      const clear = (w: number, h: number) => Math.hypot(Math.max(0, 6 - w), Math.max(0, 4 - h)) >= r && w <= 6 && h <= 4;
      expect(clear(rectangle.width / 2 - 1e-7, rectangle.height / 2 - 1e-7)).toBe(true);
      let largest = 0;
      for (let i = 0; i < 4000; i++) {
        const [w, h] = [between(0, 6), between(0, 4)];
        if (clear(w, h)) largest = Math.max(largest, 4 * w * h);
      }
      expect(largest).toBeGreaterThan(0.9 * rectangle.width * rectangle.height);
      expect(largest).toBeLessThanOrEqual(rectangle.width * rectangle.height + 1e-6);
    }
  });
});

describe('a motif in the middle', () => {
  it('of a block lies in its centre with the room that is left', () => {
    const fit = motifFit(settingOf('circle', { diameter: 4 }), BLOCK, STRAIGHT.clearance)!;
    expect(fit.room).toBeCloseTo(6 - 2.25 - 0.125, 9);
    expect(Math.hypot(fit.pose.x, fit.pose.y)).toBeLessThan(1e-9);
  });

  it('of a longer area lies in the middle of it as well', () => {
    const wide = areaOf({ ...STRAIGHT, blocks: { ...STRAIGHT.blocks!, size: [18, 10] } }, 'block');
    const fit = motifFit(settingOf('circle', { diameter: 4 }, wide), wide, STRAIGHT.clearance)!;
    expect(fit.room).toBeCloseTo(5 - 2.25 - 0.125, 9);
    expect(Math.hypot(fit.pose.x, fit.pose.y)).toBeLessThan(1e-9);
  });

  it('of a setting triangle lies in the middle of its inscribed circle: radius a (2 - sqrt 2) / 2 for legs a', () => {
    const triangle = areaOf(ON_POINT, 'setting-triangle');
    const inscribed = (8 * (2 - Math.SQRT2)) / 2;
    const fit = motifFit(settingOf('circle', { diameter: 1.5 }, triangle), triangle, STRAIGHT.clearance)!;
    expect(fit.room).toBeCloseTo(inscribed - 1 - 0.125, 9);
    expect(fit.pose.x).toBeCloseTo(0, 9);
    // From the long edge above, half the altitude above the middle of it.
    expect(fit.pose.y).toBeCloseTo(-(8 * Math.SQRT1_2) / 2 + inscribed, 9);
  });

  it('of a block on point lies by the block\'s own axes', () => {
    const block = areaOf(ON_POINT, 'block');
    const fit = motifFit(settingOf('square', { width: 4, height: 4, corner: 0 }, block), block, STRAIGHT.clearance)!;
    expect(fit.room).toBeCloseTo(4 - 2.25 - 0.125, 9);
  });

  it('takes the largest size that leaves the room that is wished, and says how much the others miss', () => {
    const candidates = [3, 6, 8, 10, 11, 12].map((diameter) => ({ id: `circle ${diameter}`, setting: settingOf('circle', { diameter }) }));
    const choices = motifChoices(candidates, BLOCK, STRAIGHT.clearance, 0.5);
    // Room is 5 7/8 less half the diameter less a quarter: 5/8 for 10 in, 1/8 for 11 in.
    expect(choices.map(({ id }) => id)).toEqual(['circle 10', 'circle 8', 'circle 6', 'circle 3', 'circle 11', 'circle 12']);
    expect(choices[0]!.spare).toBeCloseTo(0.125, 9);
    expect(choices[4]!.spare).toBeCloseTo(-0.375, 9);
  });
});
