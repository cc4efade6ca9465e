// The rules about the plan itself: ids, sheets, templates, registrations, repeats and the top.

import { describe, expect, it } from 'vitest';
import type { Plan, Top } from '../../model/plan.ts';
import { FOOT, ONE_BLOCK, SLAB, inputOf, planOf, sheetOf, slabAt, slabs } from '../../../test/support/slab-plan.ts';
import { badTemplate } from './bad-template.ts';
import { placementHeld } from './placement-held.ts';
import { repeatLeftOut } from './repeat-left-out.ts';
import { sheets } from './sheets.ts';
import { topProblems } from './top-problems.ts';
import { unknownIds } from './unknown-ids.ts';

const P = slabAt(-3, 0, 1, 5);

describe('ids', () => {
  it('that lead nowhere are told with their fields', () => {
    const input = slabs(ONE_BLOCK, { p: { ...P, template: 'gone', foot: 'lost' } }, { for: { kind: 'block', only: ['block:r1c1', 'block:r9c9'], except: ['panel'] } });
    expect(unknownIds(input).map(({ code, severity, where }) => [code, severity, where.field])).toEqual([
      ['unknown-template', 'error', 'sheets.s.placements.p.template'],
      ['unknown-foot', 'error', 'sheets.s.placements.p.foot'],
      ['unknown-area', 'error', 'sheets.s.for.only[1]'],
      ['unknown-area', 'error', 'sheets.s.for.except[0]'],
    ]);
    expect(unknownIds(input)[0]!.message).toBe('Lines uses the template "gone", which is not in the kit.');
  });

  it('are only noted on a sheet that is not chosen, and quiet when all is there', () => {
    expect(unknownIds(slabs(ONE_BLOCK, { p: { ...P, template: 'gone' } }, { chosen: false })).map((found) => found.severity)).toEqual(['note']);
    expect(unknownIds(slabs(ONE_BLOCK, { p: P }, { for: { kind: 'block', only: ['block:r1c1'] } }))).toEqual([]);
  });
});

describe('sheets', () => {
  it('are told when empty, but not when put away', () => {
    expect(sheets(slabs(ONE_BLOCK, {}))).toMatchObject([{ code: 'empty-sheet', severity: 'warning', where: { sheet: 's' } }]);
    expect(sheets(slabs(ONE_BLOCK, { p: { ...P, passes: {} } }))).toMatchObject([{ code: 'empty-sheet' }]);
    expect(sheets(slabs(ONE_BLOCK, {}, { chosen: false }))).toEqual([]);
    expect(sheets(slabs(ONE_BLOCK, { p: P }))).toEqual([]);
  });

  it('are told when the top has nothing they are for', () => {
    expect(sheets(slabs(ONE_BLOCK, { p: P }, { for: { kind: 'border-side', border: 2 } }))).toMatchObject([
      { code: 'sheet-without-areas', message: 'Lines is for border sides of border 2, and this top has none.' },
    ]);
  });

  it('are told when two are chosen for one area', () => {
    const many: Top = { ...ONE_BLOCK, blocks: { ...ONE_BLOCK.blocks!, rows: 2 } };
    const plan = (chosen: boolean): Plan => planOf(many, { a: sheetOf({ p: P }, { name: 'First' }), b: sheetOf({ p: P }, { name: 'Second', chosen }) });
    expect(sheets(inputOf(plan(true)))).toMatchObject([
      { code: 'two-sheets-one-area', message: 'First and Second are both chosen for block, row 1, column 1 and 1 more. Both are sewn.', where: { sheet: 'b', other: { sheet: 'a' } } },
    ]);
    expect(sheets(inputOf(plan(false)))).toEqual([]);
    const apart = planOf(many, { a: sheetOf({ p: P }, { for: { kind: 'block', only: ['block:r1c1'] } }), b: sheetOf({ p: P }, { for: { kind: 'block', except: ['block:r1c1'] } }) });
    expect(sheets(inputOf(apart))).toEqual([]);
  });
});

describe('templates', () => {
  it('that cannot be drawn are told, and only noted when nothing uses them', () => {
    const bow = { ...SLAB, name: 'Bow', outline: 'M 0 0 L 4 4 L 4 0 L 0 4 Z' };
    const plan = planOf(ONE_BLOCK, { s: sheetOf({ p: P }) }, { kit: { feet: { round: FOOT }, templates: { slab: SLAB, bow } } });
    expect(badTemplate(inputOf(plan))).toMatchObject([{ code: 'bad-template', severity: 'note', where: { field: 'kit.templates.bow.outline' } }]);
    const used = planOf(ONE_BLOCK, { s: sheetOf({ p: { ...P, template: 'bow' } }) }, { kit: plan.kit });
    expect(badTemplate(inputOf(used))).toMatchObject([{ severity: 'error' }]);
    expect(badTemplate(slabs(ONE_BLOCK, { p: P }))).toEqual([]);
  });
});

describe('registrations', () => {
  it('that cannot all be met are told with the gap', () => {
    // Two corners of the slab, 6 in apart, on two edges of the block 12 in apart.
    const held = { ...P, registrations: [{ put: 'point:0,0', on: 'crossing:edge-top,edge-left' }, { put: 'point:6,0', on: 'crossing:edge-top,edge-right' }] };
    const found = placementHeld(slabs(ONE_BLOCK, { p: held }));
    expect(found).toMatchObject([{ code: 'placement-impossible', severity: 'error', limit: 0, where: { placement: 'p' } }]);
    expect(found[0]!.measured).toBeGreaterThan(0);
    expect(found[0]!.message).toContain('Take out a pin.');
  });

  it('that name nothing are told with their field', () => {
    const unreadable = { ...P, registrations: [{ put: 'etching:heart', on: 'line:vertical-centre' }] };
    expect(placementHeld(slabs(ONE_BLOCK, { p: unreadable }))).toMatchObject([{ code: 'registration-unreadable', where: { field: 'sheets.s.placements.p.registrations[0]' } }]);
  });

  it('that can be met are quiet', () => {
    const held = { ...P, registrations: [{ put: 'point:0,0', on: 'line:vertical-centre' }] };
    expect(placementHeld(slabs(ONE_BLOCK, { p: held }))).toEqual([]);
    expect(placementHeld(slabs(ONE_BLOCK, { p: P }))).toEqual([]);
  });
});

describe('repeats', () => {
  it('with a step that cannot be done are told', () => {
    expect(repeatLeftOut(slabs(ONE_BLOCK, { p: P }, { repeat: [{ turn: 2 }, { mirror: 'line:nowhere' }] }))).toMatchObject([
      { code: 'repeat-left-out', severity: 'warning', where: { sheet: 's', field: 'sheets.s.repeat[1]' } },
    ]);
    expect(repeatLeftOut(slabs(ONE_BLOCK, { p: P }, { repeat: [{ mirror: 'line:diagonal-down' }] }))).toEqual([]);
  });
});

describe('the top', () => {
  it('hands on what cannot be, and what looks like a slip of the tape', () => {
    const border = { width: 2, corners: 'squares' as const, measured: { top: 13.5 } };
    expect(topProblems(slabs({ ...ONE_BLOCK, borders: [border, { width: -1, corners: 'squares' }] }, { p: P }))).toMatchObject([
      { code: 'top-cannot-be', severity: 'error', where: { field: 'top.borders[1].width' } },
      { code: 'measure-doubtful', severity: 'warning', measured: 13.5, limit: 12, where: { field: 'top.borders[0].measured.top' } },
    ]);
    expect(topProblems(slabs(ONE_BLOCK, { p: P }))).toEqual([]);
  });
});
