// What is set out is laid by the same pipeline as everything else: judged by the ends of the stitched lines on the quilt.

import { describe, expect, it } from 'vitest';
import { distance } from '../geometry/point.ts';
import { endOf, startOf } from '../geometry/path.ts';
import type { Plan } from '../model/plan.ts';
import { SAME_POINT } from '../num/tolerances.ts';
import { borderMeasureOf, setOutBorderOf } from './border-set-out.ts';
import { quiltPath } from '../stitch/quilt-path.ts';
import { evaluate } from './evaluate.ts';
import { borderPlan } from './border-set-out.fixture.ts';

const withSheets = (plan: Plan, sheets: readonly Plan['sheets'][string][]): Plan => ({ ...plan, sheets: Object.fromEntries(sheets.map((sheet, i) => [`s${i}`, sheet])) });

describe('setOutBorderOf', () => {
  const plan = borderPlan();

  it('takes lengths, width and clearances from the measured top', () => {
    expect(borderMeasureOf(plan, 1)).toEqual({ lengths: { top: 60, right: 72, bottom: 60, left: 72 }, width: 6, outerClearance: 0.5, innerClearance: 0.125 });
    expect(borderMeasureOf(plan, 2)).toBeUndefined();
  });

  // Sides of 60 and 72 share a spacing of 6: (motif + spacing) x n = length, 10 and 12 times (trade instructions for border repeats).
  it('finds 10 and 12 repeats of 6 in for a border of 60 by 72, with a template that spans 6 in', () => {
    const found = setOutBorderOf(plan, { border: 1, template: 'arc', pattern: 'scallop', wish: { spacing: 6, height: 1 } });
    if (!found.ok) throw new Error(found.problem.kind);
    expect(found.value[0]!.result.counts).toEqual({ top: 10, right: 12, bottom: 10, left: 12 });
    expect(found.value[0]!.result.pair.difference).toBeLessThan(SAME_POINT);
    // The crest of a chord s on a circle of needle radius R is R - sqrt(R^2 - s^2 / 4): the 5-inch edge sews 5 1/4.
    expect(found.value[0]!.result.across.height).toBeCloseTo(5.25 - Math.sqrt(5.25 ** 2 - 9), 9);
  });

  it('lays every answer so that each end meets another end, or the end of its side, within rounding slack', () => {
    const found = setOutBorderOf(plan, { border: 1, most: 24 });
    if (!found.ok) throw new Error(found.problem.kind);
    expect(found.value.length).toBeGreaterThan(5);
    for (const { sheets, result, template } of found.value) {
      const { lines, placements } = evaluate(withSheets(plan, sheets));
      const name = `${template} as ${result.across.pattern}, ${result.counts.top} and ${result.counts.left}`;
      expect(placements.flatMap(({ passes }) => passes).filter(({ kind }) => kind === 'missing'), name).toEqual([]);
      for (const side of ['border:1:top', 'border:1:left']) {
        const mine = lines.filter((line) => line.area === side);
        const ends = mine.flatMap((line) => [startOf(quiltPath(line))!, endOf(quiltPath(line))!]);
        const alone = ends.filter((end, i) => !ends.some((other, j) => i !== j && distance(end, other) < 1e-6));
        // Only the two ends of the side itself meet nothing; mirrored across the centre line, or off it, there are two at each.
        expect(alone.length, name).toBeLessThanOrEqual(4);
      }
    }
  });

  it('says what cannot be', () => {
    expect(setOutBorderOf(plan, { border: 3 })).toEqual({ ok: false, problem: { kind: 'no-such-border' } });
    expect(setOutBorderOf({ ...plan, kit: { ...plan.kit, feet: {} } }, { border: 1 })).toEqual({ ok: false, problem: { kind: 'no-foot' } });
    expect(setOutBorderOf(plan, { border: 1, template: 'none' })).toEqual({ ok: false, problem: { kind: 'no-template' } });
    const small = setOutBorderOf(plan, { border: 1, template: 'small', pattern: 'scallop', wish: { counts: { from: 2, to: 4 } } });
    expect(small.ok ? undefined : small.problem.kind).toBe('nothing-works');
  });
});
