import { describe, expect, it } from 'vitest';
import { BORDERED, ONE_BLOCK, inputOf, planOf, sheetOf, slabAt, slabs } from '../../test/support/slab-plan.ts';
import { check } from './check.ts';
import { CODES } from './codes.ts';
import { findingKey } from './finding-key.ts';

describe('all checks', () => {
  it('find nothing on a plan in order', () => {
    expect(check(slabs(BORDERED, { p: slabAt(-3, 0, 1, 5) }))).toEqual([]);
  });

  it('put the gravest first, each with the severity and code it is known by', () => {
    const found = check(slabs(ONE_BLOCK, { p: slabAt(-3, -5.625, 1, 5), q: slabAt(-3, 0, 1, 3), r: slabAt(-0.9, 0, 1, 3) }, { for: { kind: 'block', except: ['nowhere'] } }));
    expect(found.map(({ code }) => code)).toEqual(['unknown-area', 'near-raw-edge', 'ends-apart']);
    for (const { code, severity } of found) expect(CODES[code as keyof typeof CODES].severity).toBe(severity);
  });

  it('remember what the quilter leaves so, also when its measure changes', () => {
    const sheets = (depth: number) => ({ s: sheetOf({ p: slabAt(-3, depth - 5.75, 1, 5) }) });
    const key = findingKey(check(inputOf(planOf(ONE_BLOCK, sheets(0.25))))[0]!);
    const plan = planOf(ONE_BLOCK, sheets(0.125), { accepted: { [key]: { reason: 'It is a pot holder.' } } });
    expect(check(inputOf(plan))).toMatchObject([{ code: 'near-raw-edge', measured: 0.125, accepted: 'It is a pot holder.' }]);
  });

  it('speak in centimetres when the plan is shown so', () => {
    const plan = planOf(ONE_BLOCK, { s: sheetOf({ p: slabAt(-3, -5.5, 1, 5) }) }, { shownIn: 'cm' });
    expect(check(inputOf(plan))[0]!.message).toBe('The needle line of Slab comes to 0.6 cm from the raw edge. The allowance is 1.3 cm.');
  });
});
