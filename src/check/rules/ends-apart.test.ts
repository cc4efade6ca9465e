import { describe, expect, it } from 'vitest';
import type { Top } from '../../model/plan.ts';
import { ONE_BLOCK, slabAt, slabs } from '../../../test/support/slab-plan.ts';
import { endsApart } from './ends-apart.ts';

/** Two level lines in one row, two inches each, the first ending at the centre and the second starting so far after it. */
const apart = (gap: number) => slabs(ONE_BLOCK, { p: slabAt(-3, 0.25, 1, 3), q: slabAt(gap - 1, 0.25, 1, 3) });

describe('ends that should meet', () => {
  it('are told when 3/16 in apart', () => {
    const [found, ...more] = endsApart(apart(3 / 16));
    expect(more).toEqual([]);
    expect(found).toMatchObject({
      code: 'ends-apart',
      severity: 'warning',
      message: 'Two ends in block, row 1, column 1 do not meet. They are 3/16 in apart.',
      limit: 1 / 64,
      where: { placement: 'p', other: { sheet: 's', placement: 'q', pass: 'a' }, lines: ['block:r1c1/s/p/a/0', 'block:r1c1/s/q/a/0'] },
    });
    expect(found!.measured).toBeCloseTo(3 / 16, 12);
    expect(found!.where.at![0]).toBeCloseTo(6 + 3 / 32, 12);
  });

  it('meet within 1/64 in, and were never meant to from 1/4 in', () => {
    expect(endsApart(apart(0))).toEqual([]);
    expect(endsApart(apart(1 / 64))).toEqual([]);
    expect(endsApart(apart(1 / 64 + 0.001))).toHaveLength(1);
    expect(endsApart(apart(1 / 4 - 0.001))).toHaveLength(1);
    expect(endsApart(apart(1 / 4))).toEqual([]);
    expect(endsApart(apart(1))).toEqual([]);
  });

  it('have what they want when they meet another end or land on another line', () => {
    // A third line starts upright where the first stops: only the second still lacks something, and that is told once.
    const met = slabs(ONE_BLOCK, { p: slabAt(-3, 0.25, 1, 3), q: slabAt(0.2 - 1, 0.25, 1, 3), r: slabAt(0.25, 3, 3, 5, { angle: -90 }) });
    expect(endsApart(met)).toHaveLength(1);
    expect(endsApart(met)[0]!.where.lines).toContain('block:r1c1/s/q/a/0');
    // An upright line runs through the end of the first; a second one through the other's.
    const landed = slabs(ONE_BLOCK, { p: slabAt(-3, 0.25, 1, 3), q: slabAt(0.2 - 1, 0.25, 1, 3), across: slabAt(0.25, 3, 1, 5, { angle: -90 }) });
    expect(endsApart(landed)).toHaveLength(1);
    const both = slabs(ONE_BLOCK, {
      p: slabAt(-3, 0.25, 1, 3), q: slabAt(0.2 - 1, 0.25, 1, 3), across: slabAt(0.25, 3, 1, 5, { angle: -90 }), too: slabAt(0.45, 3, 1.5, 5.5, { angle: -90 }),
    });
    expect(endsApart(both)).toEqual([]);
  });

  it('tells a pair once, and like pairs of all blocks together', () => {
    const many: Top = { ...ONE_BLOCK, blocks: { ...ONE_BLOCK.blocks!, rows: 5, columns: 4 } };
    const [found, ...more] = endsApart(slabs(many, { p: slabAt(-3, 0.25, 1, 3), q: slabAt(0.1 - 1, 0.25, 1, 3) }));
    expect(more).toEqual([]);
    expect(found!.message).toContain('It is so in 20 places.');
    expect(found!.where.lines).toHaveLength(40);
  });

  it('finds a pass that nearly closes, but not the two ends of a short one', () => {
    // All round the slab the needle line is 14 in and four quarter rounds long; the pass stops 1/8 in short of its start.
    const closing = slabs(ONE_BLOCK, { p: slabAt(-3, 0, 1, 0.875) });
    expect(closing.lines[0]!.length).toBeCloseTo(14 + Math.PI / 2 - 0.125, 12);
    expect(endsApart(closing)).toHaveLength(1);
    expect(endsApart(closing)[0]!.measured).toBeCloseTo(0.125, 12);
    expect(endsApart(slabs(ONE_BLOCK, { p: slabAt(-3, 0, 1, 1.125) }))).toEqual([]);
    const allRound = slabAt(-3, 0, 1, 1, { passes: { a: { start: { along: 1 }, stop: 'all-round', way: 'clockwise' } } });
    expect(endsApart(slabs(ONE_BLOCK, { p: allRound }))).toEqual([]);
  });
});
