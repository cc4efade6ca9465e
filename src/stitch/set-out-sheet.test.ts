import { describe, expect, it } from 'vitest';
import { carryPath } from '../geometry/change.ts';
import { endOf, startOf } from '../geometry/path.ts';
import { type Point, distance } from '../geometry/point.ts';
import { BUILT_IN_KIT } from '../model/kit/built-in.ts';
import { shapeOf } from '../model/kit/shape-of.ts';
import { newPlan } from '../model/new-plan.ts';
import type { Frieze, Plan, Sheet } from '../model/plan.ts';
import { needleLines } from '../needle/needle-lines.ts';
import { setOutBorder } from '../place/setout/set-out-border.ts';
import { setOutSide } from '../place/setout/set-out-side.ts';
import { layTop } from '../top/lay-top.ts';
import type { Area } from '../top/area.ts';
import { expand } from './expand.ts';
import { laySheet } from './lay.ts';
import { quiltPath } from './quilt-path.ts';
import { type SetOutLaying, borderSheets, sideSheet } from './set-out-sheet.ts';

const WIDTH = 6;

function planWith(across: number, down: number, measured?: { readonly top?: number; readonly left?: number }): Plan {
  const plan = newPlan('a border');
  const { drawnAreas, keepOuts, clearance } = plan.top;
  return { ...plan, kit: BUILT_IN_KIT, top: { drawnAreas, keepOuts, clearance, panel: { size: [across, down] }, borders: [{ width: WIDTH, corners: 'squares', ...(measured && { measured }) }] } };
}

function layingOf(template: string): SetOutLaying {
  const shape = shapeOf(BUILT_IN_KIT.templates[template]!);
  if (!shape.ok) throw new Error(shape.problem.message);
  const foot = BUILT_IN_KIT.feet['half-round']!;
  return { template, foot: 'half-round', ruler: { shape: shape.value, needle: needleLines(shape.value, foot.diameter) }, needleOffset: foot.needleOffset, name: 'Border' };
}

/** The stitched lines of a sheet on one area, each end in the order of sewing. */
function linesOf(sheet: Sheet, areas: readonly Area[], area: Area) {
  const laid = laySheet('s', sheet, BUILT_IN_KIT, areas);
  const lines = laid.flatMap((each) => expand(each, new Map(areas.map((a) => [a.id, a])))).filter((line) => line.area === area.id);
  return { laid, ends: lines.map((line) => ({ start: startOf(quiltPath(line))!, stop: endOf(quiltPath(line))! })) };
}

const side = { length: 60, width: WIDTH, outerClearance: 0.5, innerClearance: 0.25 };

describe('a set-out as a sheet', () => {
  const patterns: readonly (readonly [Frieze, string, number])[] = [
    ['run', 'oval-8', 10], ['run', 'wave-of-three', 16], ['step', 'circle-6', 12], ['scallop', 'leaf-8', 9], ['scallop', 'wave-of-three', 12], ['spin', 'low-hill', 7],
    ['twin', 'circle-6', 10], ['wave', 'oval-8', 10], ['lantern', 'leaf-8', 10], ['lantern', 'teardrop-5', 15], ['twin', 'row-of-windows', 40],
  ];
  it.each(patterns)('%s with %s, %d times: the ends of neighbouring images meet within rounding', (pattern, template, count) => {
    const laying = layingOf(template);
    const found = setOutSide(side, laying.ruler, { pattern, counts: { from: count, to: count } });
    if (found.kind !== 'set-out') throw new Error(JSON.stringify(found.why));
    const { areas } = layTop(planWith(60, 60).top);
    const area = areas.find(({ id }) => id === 'border:1:top')!;
    expect(area.width).toBe(60);
    for (const result of found.results.slice(0, 4)) {
      const sheet = sideSheet(result, area, laying);
      const { laid, ends } = linesOf(sheet, areas, area);
      expect(laid[0]!.standing.kind).not.toBe('impossible');
      expect(laid[0]!.passes.map(({ kind }) => kind)).toEqual(['found']);
      const [pass] = laid[0]!.passes;
      expect(pass?.kind === 'found' ? pass.length : 0).toBeCloseTo(result.unit.length, 5);
      const images = pattern === 'lantern' ? 4 : pattern === 'twin' || pattern === 'wave' ? 2 : 1;
      expect(ends).toHaveLength(count * images);
      // Every end but those at both ends of the side has another end with it.
      const all: readonly Point<'quilt'>[] = ends.flatMap(({ start, stop }) => [start, stop]);
      const alone = all.filter((p, i) => !all.some((q, j) => i !== j && distance(p, q) <= 1e-6));
      const left = carryPath(area.frame, { closed: false, vertices: [{ x: -30, y: 0, bulge: 0 }, { x: 30, y: 0, bulge: 0 }] });
      const edges = left.vertices.map(({ x }) => x);
      expect(alone.length).toBeLessThanOrEqual(2 * images);
      for (const p of alone) expect(Math.min(...edges.map((x) => Math.abs(x - p.x)))).toBeLessThan(1e-6);
    }
  });

  it('one sheet for all four sides when one pose serves them, and every side comes out with its own count', () => {
    const laying = layingOf('circle-6');
    const plan = planWith(60, 72);
    const top = layTop(plan.top);
    const found = setOutBorder({ lengths: { top: 60, bottom: 60, left: 72, right: 72 }, width: WIDTH, outerClearance: 0.5, innerClearance: 0.25 }, laying.ruler, { pattern: 'lantern', spacing: 6 });
    if (found.kind !== 'set-out') throw new Error('nothing found');
    const sheets = borderSheets(found.results[0]!, 1, top.areas, laying);
    expect(sheets).toHaveLength(1);
    expect(sheets[0]!.repeat).toEqual([{ along: 'lantern', count: { top: 10, bottom: 10, left: 12, right: 12 } }]);
    const laid = laySheet('s', sheets[0]!, BUILT_IN_KIT, top.areas);
    const lines = laid.flatMap((each) => expand(each, new Map(top.areas.map((a) => [a.id, a]))));
    expect(lines).toHaveLength(4 * (10 + 10 + 12 + 12));
  });

  it('is held by registrations, so that a side measured a little longer finds its pose again and its ends still meet', () => {
    const laying = layingOf('oval-8');
    const found = setOutSide(side, laying.ruler, { pattern: 'scallop', counts: { from: 10, to: 10 } });
    if (found.kind !== 'set-out') throw new Error('nothing found');
    const first = layTop(planWith(60, 60).top).areas.find(({ id }) => id === 'border:1:top')!;
    const sheet = sideSheet(found.results[0]!, first, laying);
    expect(Object.values(sheet.placements)[0]!.registrations).not.toEqual([]);
    const { areas } = layTop(planWith(60, 60, { top: 60.25 }).top);
    const longer = areas.find(({ id }) => id === 'border:1:top')!;
    const { laid, ends } = linesOf(sheet, areas, longer);
    expect(laid[0]!.pose).not.toEqual(found.results[0]!.unit.pose);
    for (const [i, one] of ends.slice(0, -1).entries()) {
      const next = ends[i + 1]!;
      const apart = [one.start, one.stop].flatMap((p) => [next.start, next.stop].map((q) => distance(p, q)));
      expect(Math.min(...apart)).toBeLessThan(1e-6);
    }
  });
});
