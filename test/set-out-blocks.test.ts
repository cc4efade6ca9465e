// Set-outs of blocks, laid into a plan and expanded into the lines the needle sews: the lines must meet where the set-out says they do.

import { describe, expect, it } from 'vitest';
import { nearSeam } from '../src/check/rules/near-seam.ts';
import { setOut } from '../src/engine/evaluate.ts';
import { boundsOf } from '../src/geometry/bounds.ts';
import { nearestOnPath } from '../src/geometry/nearest.ts';
import { endOf, startOf } from '../src/geometry/path.ts';
import { distance } from '../src/geometry/point.ts';
import { shapeOf } from '../src/model/kit/shape-of.ts';
import type { Plan, Template, Top } from '../src/model/plan.ts';
import { needleLines } from '../src/needle/needle-lines.ts';
import { blockPlacement } from '../src/place/blocks/block-placement.ts';
import { cornerMotif } from '../src/place/blocks/corner-motif.ts';
import { frame } from '../src/place/blocks/frame.ts';
import { motifFit } from '../src/place/blocks/motif-size.ts';
import { medallion, type MedallionRule } from '../src/place/blocks/medallion.ts';
import { medallionPlacement, type SetOutPlacement } from '../src/place/blocks/medallion-sheet.ts';
import type { PlaceSetting } from '../src/place/place.ts';
import { quiltPath } from '../src/stitch/quilt-path.ts';
import { layTop } from '../src/top/lay-top.ts';
import { BORDERED, FOOT, ONE_BLOCK, planOf, sheetOf } from './support/slab-plan.ts';

const TOP: Top = { ...ONE_BLOCK, blocks: { ...ONE_BLOCK.blocks!, size: [24, 24] } };
const AREA = layTop(TOP).areas.find(({ kind }) => kind === 'block')!;
const LEAF: Template = { name: 'Leaf 8', family: 'leaf', sizes: { length: 8, width: 3.5 }, thickness: 0.25, grips: 'none' };

function settingOf(template: Template): PlaceSetting {
  const shape = shapeOf(template);
  if (!shape.ok) throw new Error(shape.problem.message);
  return { shape: shape.value, needle: needleLines(shape.value, FOOT.diameter), lines: AREA.referenceLines, stitched: new Map() };
}

function planWith(template: Template, { placement, repeat }: SetOutPlacement, top = TOP): Plan {
  return planOf(top, { s: sheetOf({ p: placement }, { repeat: [...repeat] }) }, { kit: { feet: { round: FOOT }, templates: { t: template } } });
}

describe.each<MedallionRule>([
  { count: 4, repeat: 'turn', put: 'etching:cross', tip: 'tip:1', reach: 11 },
  { count: 6, repeat: 'turn', put: 'etching:cross', tip: 'tip:1', reach: 11 },
  { count: 8, repeat: 'turn', put: 'etching:cross', tip: 'tip:1', reach: 11 },
  { count: 12, repeat: 'turn', put: 'etching:cross', tip: 'tip:1', reach: 11 },
  { count: 4, repeat: 'mirror-and-turn', put: 'etching:cross', tip: 'tip:1', reach: 11 },
])('a medallion of $count, $repeat, in a plan', (rule) => {
  const setting = settingOf(LEAF);
  const rings = medallion(rule, setting);
  const closing = rings.ok ? rings.value.filter(({ stretch }) => stretch !== undefined && stretch !== 'all-round') : [];

  it('closes: every line starts where another one stops', () => {
    expect(closing.length).toBeGreaterThan(0);
    for (const ring of closing) {
      const { lines, placements } = setOut(planWith(LEAF, medallionPlacement(ring, rule, setting, 't', 'round')));
      expect(placements[0]!.standing.kind).not.toBe('impossible');
      expect(lines).toHaveLength(rule.repeat === 'turn' ? rule.count : 2 * rule.count);
      const ends = lines.map((line) => quiltPath(line)).map((path) => [startOf(path)!, endOf(path)!] as const);
      for (const [i, [start, stop]] of ends.entries()) {
        const others = ends.filter((_, k) => k !== i);
        // Turned, a stop is the next one's start; mirrored, starts meet starts and stops meet stops.
        const [toStart, toStop] = rule.repeat === 'turn' ? [others.map(([, b]) => b), others.map(([a]) => a)] : [others.map(([a]) => a), others.map(([, b]) => b)];
        expect(Math.min(...toStart.map((p) => distance(p, start)))).toBeLessThan(1e-6);
        expect(Math.min(...toStop.map((p) => distance(p, stop)))).toBeLessThan(1e-6);
      }
    }
  });
});

describe('a corner, a frame and a motif in a plan', () => {
  const bordered: Top = { ...BORDERED };
  const block = layTop(bordered).areas.find(({ kind }) => kind === 'block')!;
  const circleOf = (diameter: number): Template => ({ name: 'Circle', family: 'circle', sizes: { diameter }, thickness: 0.25, grips: 'none' });
  const within = (template: Template): PlaceSetting => ({ ...settingOf(template), lines: block.referenceLines });

  it('a corner motif comes to its clearance and no nearer, mirrored on the diagonal; re-measured, it moves with the corner', () => {
    const template = circleOf(4);
    const found = cornerMotif({ registrations: [{ put: 'etching:centre-across', on: 'line:diagonal-down' }], mirror: 'line:diagonal-down' }, block, bordered.clearance, within(template));
    const best = found.ok ? found.value[0]! : expect.fail(found.problem);
    const setOutOf = (top: Top) => planWith(template, { placement: blockPlacement(best, 't', 'round'), repeat: best.repeat }, top);
    expect(nearSeam(setOut(setOutOf(bordered)))).toEqual([]);
    expect(setOut(setOutOf(bordered)).lines).toHaveLength(2);
    const larger = { ...bordered, blocks: { ...bordered.blocks!, size: [13, 13] as const } };
    const { placements } = setOut(setOutOf(larger));
    expect(placements[0]!.standing.kind).not.toBe('impossible');
    expect(placements[0]!.pose.x).toBeCloseTo(best.pose.x - 0.5, 7);
  });

  it('a frame keeps its clearances, and its four lines leave the opening it tells of', () => {
    const template = circleOf(6);
    const found = frame(block, bordered.clearance, within(template));
    const best = found.ok ? found.value[0]! : expect.fail(found.problem);
    const laid = setOut(planWith(template, { placement: blockPlacement(best, 't', 'round'), repeat: best.repeat }, bordered));
    expect(laid.lines).toHaveLength(4);
    expect(nearSeam(laid)).toEqual([]);
    // The block's centre lies at (8, 8) on the quilt.
    const nearest = Math.min(...laid.lines.map((line) => nearestOnPath(quiltPath(line), { x: 8, y: 8 }).distance));
    expect(nearest).toBeCloseTo(best.opening.radius, 8);
  });

  it('a motif is sewn with the room it tells of', () => {
    const template = circleOf(5);
    const fit = motifFit(within(template), block, bordered.clearance)!;
    const laid = setOut(planWith(template, { placement: blockPlacement(fit, 't', 'round'), repeat: [] }, bordered));
    const { minX, minY, maxX, maxY } = boundsOf(quiltPath(laid.lines[0]!));
    expect(Math.min(minX - 2, minY - 2, 14 - maxX, 14 - maxY) - bordered.clearance.seam).toBeCloseTo(fit.room, 9);
  });
});
