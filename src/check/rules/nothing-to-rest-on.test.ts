import { describe, expect, it } from 'vitest';
import { ONE_BLOCK, slabAt, slabs } from '../../../test/support/slab-plan.ts';
import { nothingToRestOn } from './nothing-to-rest-on.ts';

// The slab is one inch high and balances in its middle; this one's middle lies so far beyond the top's upper edge.
const beyond = (distance: number, repeat = {}) => slabs(ONE_BLOCK, { p: slabAt(-3, -6 - distance - 0.5, 1, 5) }, repeat);

describe('a template at the edge of the top', () => {
  it('has nothing to rest on when it balances beyond the edge', () => {
    const found = nothingToRestOn(beyond(0.25));
    expect(found).toMatchObject([
      {
        code: 'nothing-to-rest-on',
        severity: 'warning',
        message: 'Slab balances 1/4 in beyond the edge of the top and has nothing to rest on. Lay something as thick as the quilt beside it, or sew from its other side.',
        limit: 0,
        where: { area: 'block:r1c1', placement: 'p', lines: ['block:r1c1/s/p/a/0'] },
      },
    ]);
    expect(found[0]!.measured).toBeCloseTo(0.25, 12);
    expect(found[0]!.where.at![0]).toBeCloseTo(6, 12);
  });

  it('rests when it balances on the edge or within', () => {
    expect(nothingToRestOn(beyond(0))).toEqual([]);
    expect(nothingToRestOn(beyond(-0.25))).toEqual([]);
  });

  it('is told once for all its images', () => {
    const [found, ...more] = nothingToRestOn(beyond(0.25, { repeat: [{ turn: 4 }] }));
    expect(more).toEqual([]);
    expect(found!.message).toContain('It is so in 4 places.');
    expect(found!.where.lines).toHaveLength(4);
  });
});
