import { describe, expect, it } from 'vitest';
import type { Grips, Template } from '../../model/plan.ts';
import { ONE_BLOCK, SLAB, inputOf, planOf, sheetOf, slabAt } from '../../../test/support/slab-plan.ts';
import { flipWithGrips } from './flip-with-grips.ts';

/** A slanted bar, which is no mirror image of itself. */
const SLANTED: Template = { name: 'Slanted', outline: 'M 0 0 L 6 0 L 7 1 L 1 1 Z', thickness: 0.25, grips: 'one-face' };

function sewn(template: Template, repeat: Parameters<typeof sheetOf>[1], flipped = false) {
  const plan = planOf(ONE_BLOCK, { s: sheetOf({ p: slabAt(-3, 0, 1, 5, { flipped }) }, repeat) });
  return inputOf({ ...plan, kit: { ...plan.kit, templates: { slab: template } } });
}
const grips = (which: Grips): Template => ({ ...SLANTED, grips: which });
const MIRRORED = { repeat: [{ mirror: 'line:vertical-centre' }] };

describe('a template with grips on one face', () => {
  it('is told of when mirror images need it face down', () => {
    const found = flipWithGrips(sewn(SLANTED, MIRRORED));
    expect(found).toMatchObject([
      {
        code: 'flip-with-grips',
        severity: 'warning',
        message: 'One pass needs Slanted face down, and its grips are on one face only. Hold it well, or put grips on both.',
        where: { sheet: 's', placement: 'p', lines: ['block:r1c1/s/p/a/1'] },
      },
    ]);
    expect(flipWithGrips(sewn(SLANTED, { repeat: [{ mirrorAndTurn: 4 }] }))[0]!.message).toContain('4 passes need Slanted face down');
  });

  it('is told of when it is laid face down, and then not of its mirror image', () => {
    expect(flipWithGrips(sewn(SLANTED, {}, true))[0]!.where.lines).toEqual(['block:r1c1/s/p/a/0']);
    expect(flipWithGrips(sewn(SLANTED, MIRRORED, true))[0]!.where.lines).toEqual(['block:r1c1/s/p/a/0']);
  });

  it('is not told of while it lies face up: laid once, turned, or mirrored an even number of times', () => {
    expect(flipWithGrips(sewn(SLANTED, {}))).toEqual([]);
    expect(flipWithGrips(sewn(SLANTED, { repeat: [{ turn: 4 }] }))).toEqual([]);
  });

  it('is not told of with grips on both faces or none', () => {
    expect(flipWithGrips(sewn(grips('both-faces'), MIRRORED))).toEqual([]);
    expect(flipWithGrips(sewn(grips('none'), MIRRORED))).toEqual([]);
  });

  it('is not told of when it is its own mirror image, and is turned instead', () => {
    expect(flipWithGrips(sewn({ ...SLAB, grips: 'one-face' }, MIRRORED))).toEqual([]);
  });
});
