import { describe, expect, it } from 'vitest';
import type { Top } from '../../model/plan.ts';
import { BORDERED, ONE_BLOCK, inputOf, planOf, sheetOf, slabAt, slabs } from '../../../test/support/slab-plan.ts';
import { nearSeam } from './near-seam.ts';

const lineAt = (depth: number, top: Top = BORDERED) => slabs(top, { p: slabAt(-3, depth - 6 + 0.25, 1, 5) });

describe('the clearance along a seam', () => {
  it('is broken by a line 1/16 in from it', () => {
    expect(nearSeam(lineAt(0.0625))).toMatchObject([
      {
        code: 'near-seam',
        severity: 'warning',
        message: 'The needle line of Slab comes to 1/16 in from the seam of block, row 1, column 1. You asked for 1/8 in.',
        measured: 0.0625,
        limit: 0.125,
        where: { area: 'block:r1c1', lines: ['block:r1c1/s/p/a/0'] },
      },
    ]);
    // On the quilt the seam lies two inches down, below the border.
    expect(nearSeam(lineAt(0.0625))[0]!.where.at![1]).toBeCloseTo(2.0625, 12);
  });

  it('is kept by a line exactly at it, and by one inside', () => {
    expect(nearSeam(lineAt(0.125))).toEqual([]);
    expect(nearSeam(lineAt(0.5))).toEqual([]);
  });

  it('says when a line runs over the seam, and by how much', () => {
    // Along the left edge: the line stands upright and ends 1 in beyond the seam above.
    const over = slabs(BORDERED, { p: slabAt(0, -2, 1, 5, { angle: -90 }) });
    expect(nearSeam(over)).toMatchObject([{ message: 'The needle line of Slab runs 1 in over the seam of block, row 1, column 1.' }]);
    expect(nearSeam(over)[0]!.measured).toBeCloseTo(-1, 12);
  });

  it('does not hold for the raw edge, which has its own', () => {
    expect(nearSeam(lineAt(0.0625, ONE_BLOCK))).toEqual([]);
  });

  it('is worked out once and told of all like blocks', () => {
    const top: Top = { ...BORDERED, blocks: { ...BORDERED.blocks!, rows: 3, columns: 2 } };
    const [found, ...more] = nearSeam(lineAt(0.0625, top));
    expect(more).toEqual([]);
    expect(found!.where.lines).toHaveLength(6);
    expect(found!.message).toContain('It is so in 6 places.');
  });

  it('lets lines of the whole top and of drawn areas cross the seams within them', () => {
    const top: Top = { ...BORDERED, drawnAreas: { d: { name: 'Square', outline: 'M 0 0 L 16 0 L 16 16 L 0 16 Z' } } };
    for (const kind of ['top', 'drawn'] as const) {
      const input = inputOf(planOf(top, { s: sheetOf({ p: slabAt(-3, -6 + 0.25, 1, 5) }, { for: { kind } }) }));
      expect(input.lines).toHaveLength(1);
      expect(nearSeam(input)).toEqual([]);
    }
  });

  it('lets a line of a border corner cross the mitre, and one of a border side run on where there is no seam', () => {
    const mitred: Top = { ...ONE_BLOCK, borders: [{ width: 4, corners: 'mitred' }] };
    const corner = inputOf(planOf(mitred, { s: sheetOf({ p: slabAt(-3, 0, 2, 4) }, { for: { kind: 'border-corner' } }) }));
    expect(corner.lines).toHaveLength(4);
    expect(nearSeam(corner)).toEqual([]);
    // A side of 12 in; the line runs from 3 in to 7 in along it, an inch into the corner.
    const side = (corners: 'mitred' | 'squares') =>
      inputOf(planOf({ ...mitred, borders: [{ width: 4, corners }] }, { s: sheetOf({ p: slabAt(2, 0, 1, 5) }, { for: { kind: 'border-side', only: ['border:1:top'] } }) }));
    expect(nearSeam(side('mitred'))).toEqual([]);
    expect(nearSeam(side('squares'))[0]!.measured).toBeCloseTo(-1, 12);
  });

  it('measures square to the slanting sides of a setting triangle', () => {
    // Blocks of 8 in: half blocks along the sides, the line y = -1/4 level with the middle of the altitude less 1/4. At height h
    // below the long edge the short edges are 4 sqrt 2 - h from the middle; a point x from the middle is
    // (4 sqrt 2 - h - x) / sqrt 2 from the edge.
    const top: Top = { ...BORDERED, blocks: { setting: 'on-point', rows: 2, columns: 1, size: [8, 8], sashing: 0, cornerstones: false } };
    const input = inputOf(planOf(top, { s: sheetOf({ p: slabAt(-4, 0.25, 1, 6) }, { for: { kind: 'setting-triangle' } }) }));
    const altitude = 4 * Math.SQRT2;
    // The line runs from x = -3 to x = 2, at the middle of the altitude.
    expect(nearSeam(input)[0]!.measured).toBeCloseTo((altitude - altitude / 2 - 3) / Math.SQRT2, 9);
  });
});
