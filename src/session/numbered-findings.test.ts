import { describe, expect, it } from 'vitest';
import type { Finding } from '../check/finding.ts';
import { evaluate } from '../engine/evaluate.ts';
import { newPlan } from '../model/new-plan.ts';
import type { Plan } from '../model/plan.ts';
import { countBySeverity, linesOf, numberedFindings, placeOf, spotsOf } from './numbered-findings.ts';

const finding = (code: string, where: Finding['where'] = {}): Finding => ({ code, severity: 'warning', message: code, where });

/** Two blocks, each with a circle in the middle. */
function twoCircles(): Plan {
  const plan = newPlan('Two');
  return {
    ...plan,
    top: { ...plan.top, blocks: { ...plan.top.blocks!, columns: 2 } },
    sheets: {
      round: {
        name: 'Round',
        for: { kind: 'block' },
        chosen: true,
        placements: {
          p: { template: 'circle-3', foot: 'half-round-low', flipped: false, pose: { x: 0, y: 0, angle: 0 }, registrations: [], passes: { r: { start: { along: 0 }, stop: 'all-round', way: 'clockwise' } } },
        },
        repeat: [],
        fills: {},
      },
    },
  };
}

describe('numbered findings', () => {
  it('bear the numbers of their order, and keys that tell findings alike apart', () => {
    const numbered = numberedFindings([finding('near-seam', { sheet: 'a' }), finding('near-seam', { sheet: 'b' }), finding('near-seam', { sheet: 'a' })]);
    expect(numbered.map(({ number }) => number)).toEqual([1, 2, 3]);
    expect(new Set(numbered.map(({ key }) => key)).size).toBe(3);
    expect(countBySeverity(numbered.map((one) => one.finding))).toEqual({ error: 0, warning: 3, note: 0 });
  });

  it('have their own place, else that of their line, else that of their area, else none', () => {
    const evaluation = evaluate(twoCircles());
    const [, second] = evaluation.lines;
    expect(placeOf(evaluation, finding('x', { at: [1, 2], area: 'block:r1c1' }))).toEqual({ x: 1, y: 2 });
    // The circle lies in the middle of the second block: 12 + 6 across, 6 down, less nothing, since there is no border.
    const place = placeOf(evaluation, finding('x', { lines: [second!.id] }))!;
    expect(place.x).toBeCloseTo(18, 9);
    expect(place.y).toBeCloseTo(6, 9);
    expect(placeOf(evaluation, finding('x', { area: 'block:r1c1' }))).toEqual({ x: 6, y: 6 });
    expect(placeOf(evaluation, finding('x', { area: 'nowhere' }))).toBeUndefined();
    expect(placeOf(evaluation, finding('x', { field: 'top' }))).toBeUndefined();
  });

  it('are led through spot by spot, each line once', () => {
    const evaluation = evaluate(twoCircles());
    const lines = evaluation.lines.map(({ id }) => id);
    const spots = spotsOf(evaluation, finding('x', { lines, area: 'block:r1c2', at: [20, 6] }));
    expect(spots.map((spot) => (spot.kind === 'line' ? spot.line.area : 'place'))).toEqual(['place', 'block:r1c1']);
    expect(linesOf(evaluation, finding('x', { lines }))).toHaveLength(2);
    expect(spotsOf(evaluation, finding('x', { field: 'top' }))).toEqual([]);
  });
});
