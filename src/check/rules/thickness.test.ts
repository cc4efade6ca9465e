import { describe, expect, it } from 'vitest';
import type { Shank } from '../../model/plan.ts';
import { FOOT, ONE_BLOCK, SLAB, inputOf, planOf, sheetOf, slabAt } from '../../../test/support/slab-plan.ts';
import { thickness } from './thickness.ts';

function of(inches: number, shank: Shank, chosen = true) {
  const sheet = sheetOf({ p: slabAt(-3, 0, 1, 5), q: slabAt(-3, 2, 1, 5) }, { chosen });
  return thickness(inputOf(planOf(ONE_BLOCK, { s: sheet }, { kit: { feet: { round: { ...FOOT, shank } }, templates: { slab: { ...SLAB, thickness: inches } } } })));
}

describe('template and foot', () => {
  it('go together as is common: about 1/4 in for a high shank, 1/8 in for a low one', () => {
    expect(of(1 / 4, 'high')).toEqual([]);
    expect(of(1 / 8, 'low')).toEqual([]);
    expect(of(1 / 8, 'medium')).toEqual([]);
    expect(of(1 / 4, 'medium')).toEqual([]);
  });

  it('do not when the template is too thin for a high shank, said once', () => {
    expect(of(1 / 8, 'high')).toEqual([
      {
        code: 'template-too-thin',
        severity: 'warning',
        message: "Slab is 1/8 in thick, and Half-inch round can ride up on it. With a high shank about 1/4 in (6 mm) is usual. Your machine's manual decides.",
        where: { sheet: 's', placement: 'p', field: 'kit.templates.slab.thickness' },
        measured: 1 / 8,
        limit: 5 / 25.4,
      },
    ]);
  });

  it('do not when the template is too thick for a low shank', () => {
    expect(of(1 / 4, 'low')).toMatchObject([{ code: 'template-too-thick', measured: 1 / 4, limit: 3.7 / 25.4 }]);
  });

  // ISO 7823-1: cast sheet sold as 3 mm may be 2.3 to 3.7 mm thick, as 6 mm 5.0 to 7.0.
  it('go together to the very ends of what sheet sold as 3 and 6 mm may be', () => {
    for (const mm of [2.3, 3.7]) expect(of(mm / 25.4, 'low')).toEqual([]);
    for (const mm of [5, 7]) expect(of(mm / 25.4, 'high')).toEqual([]);
    for (const mm of [2.2, 3.8]) expect(of(mm / 25.4, 'low')).toHaveLength(1);
    for (const mm of [4.9, 7.1]) expect(of(mm / 25.4, 'high')).toHaveLength(1);
  });

  it('are not looked at on sheets that are not chosen', () => {
    expect(of(1 / 8, 'high', false)).toEqual([]);
  });
});
