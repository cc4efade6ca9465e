import { describe, expect, it } from 'vitest';
import { newPlan } from '../../model/new-plan.ts';
import type { Plan, Sheet } from '../../model/plan.ts';
import { drawSheet } from '../../drawing/draw-sheet.ts';
import { redo, undo } from '../change-plan.ts';
import { layTemplate } from '../lay/bring-in.ts';
import { onTable, workOn } from '../lay/on-table.ts';
import { type Session, createSession, planOf } from '../store.ts';
import { sayAreas } from './area-words.ts';
import { addPass } from './passes.ts';
import { MOST_BESIDE, laySideBySide, seeThrough, toggleBeside } from './seen.ts';
import { chooseToSew, copySheet, leaveOut, moveSheet, noteOnSheet, putSheetAway, renameSheet, setAreas, takeSheet } from './sheets.ts';
import { stackOf } from './stack.ts';

const empty = (name: string, chosen = false): Sheet => ({ name, for: { kind: 'block' }, chosen, placements: {}, repeat: [], fills: {} });

function quilt(sheets: Plan['sheets'] = {}): Session {
  const plan = newPlan('Try');
  const blocks = { setting: 'straight', rows: 4, columns: 5, size: [12, 12], sashing: 2, cornerstones: true } as const;
  return createSession({ ...plan, top: { ...plan.top, blocks, borders: [{ width: 5, corners: 'squares' }] }, sheets }, { kind: 'new' });
}

const steps = (session: Session) => session.getState().history.past.length;
const names = (session: Session) => stackOf(session.getState())!.sheets.map(({ sheet }) => sheet.name);

describe('the stack', () => {
  it('holds the sheets for the kind of area on the table, lettered from the bottom', () => {
    const session = quilt({ one: empty('One'), side: { ...empty('Side'), for: { kind: 'border-side', border: 1 } }, two: empty('Two') });
    workOn(session, { area: 'block:r2c2' });
    const stack = stackOf(session.getState())!;
    expect(stack.sheets.map(({ letter, sheet }) => `${letter} ${sheet.name}`)).toEqual(['A One', 'B Two']);
    expect(stack.areas).toHaveLength(20);
    workOn(session, { sheet: undefined, area: 'border:1:top' });
    expect(names(session)).toEqual(['Side']);
  });
});

describe('commands on sheets', () => {
  it('takes a new one for all blocks; the first is sewn, the next is not; each is one step', () => {
    const session = quilt();
    const first = takeSheet(session)!;
    const second = takeSheet(session)!;
    const { sheets } = planOf(session.getState());
    expect(sheets[first]).toMatchObject({ name: 'Sheet A', chosen: true, for: { kind: 'block' } });
    expect(sheets[second]).toMatchObject({ name: 'Sheet B', chosen: false });
    expect(onTable(session.getState())!.sheet!.id).toBe(second);
    expect(steps(session)).toBe(2);
    undo(session);
    expect(Object.keys(planOf(session.getState()).sheets)).toEqual([first]);
  });

  it('copies a sheet just above it, with all that lies on it, not sewn', () => {
    const session = quilt({ low: empty('Low', true), high: empty('High') });
    workOn(session, { sheet: 'low' });
    layTemplate(session, 'leaf-4');
    const copy = copySheet(session, 'low')!;
    expect(names(session)).toEqual(['Low', 'Low, copy', 'High']);
    const { sheets } = planOf(session.getState());
    expect(sheets[copy]!.placements).toEqual(sheets['low']!.placements);
    expect(sheets[copy]!.chosen).toBe(false);
  });

  it('names, notes, moves and puts away; undo brings everything back', () => {
    const session = quilt({ a: empty('A'), b: empty('B'), c: empty('C') });
    const before = planOf(session.getState());
    renameSheet(session, 'a', '  Open fans ');
    renameSheet(session, 'a', '   ');
    noteOnSheet(session, 'a', 'try the wider foot');
    moveSheet(session, 'a', 2);
    expect(names(session)).toEqual(['B', 'C', 'Open fans']);
    moveSheet(session, 'a', 1);
    moveSheet(session, 'a', -1);
    expect(names(session)).toEqual(['B', 'Open fans', 'C']);
    putSheetAway(session, 'b');
    expect(names(session)).toEqual(['Open fans', 'C']);
    expect(steps(session)).toBe(5);
    for (let i = 0; i < 5; i++) undo(session);
    expect(planOf(session.getState())).toEqual(before);
    for (let i = 0; i < 5; i++) redo(session);
    expect(names(session)).toEqual(['Open fans', 'C']);
  });

  it('choosing one leaves out others for the same areas, and keeps those for other areas', () => {
    const session = quilt({ a: empty('A', true), b: empty('B'), side: { ...empty('Side', true), for: { kind: 'border-side' } } });
    chooseToSew(session, 'b');
    expect(Object.entries(planOf(session.getState()).sheets).filter(([, { chosen }]) => chosen).map(([id]) => id)).toEqual(['b', 'side']);
    leaveOut(session, 'b');
    expect(planOf(session.getState()).sheets['b']!.chosen).toBe(false);
  });

  it('choosing one for a single block goes on sewing the other sheet on the rest', () => {
    const session = quilt({ all: empty('All', true), one: { ...empty('One'), for: { kind: 'block', only: ['block:r1c1'] } } });
    chooseToSew(session, 'one');
    const { all, one } = planOf(session.getState()).sheets;
    expect(one!.chosen).toBe(true);
    expect(all).toMatchObject({ chosen: true, for: { kind: 'block', except: ['block:r1c1'] } });
    expect(session.getState().evaluation.findings.some(({ code }) => code === 'two-sheets-one-area')).toBe(false);
  });

  it('says what a sheet is for', () => {
    const session = quilt({ a: empty('A') });
    const said = () => sayAreas(planOf(session.getState()).sheets['a']!.for, session.getState().evaluation.top.areas);
    expect(said()).toBe('all 20 blocks');
    setAreas(session, 'a', { except: ['block:r1c1', 'block:r1c2'] });
    expect(said()).toBe('18 of 20 blocks');
    setAreas(session, 'a', { only: ['block:r2c3'] });
    expect(said()).toBe('block, row 2, column 3 only');
    setAreas(session, 'a', {});
    expect(planOf(session.getState()).sheets['a']!.for).toEqual({ kind: 'block' });
    expect(sayAreas({ kind: 'border-side', border: 1 }, session.getState().evaluation.top.areas)).toBe('all 4 sides of border 1');
    expect(sayAreas({ kind: 'panel' }, session.getState().evaluation.top.areas)).toBe('no panel of this top');
  });

  it('leaves everything as it is for a sheet that is not there', () => {
    const session = quilt({ a: empty('A') });
    for (const command of [copySheet, putSheetAway, chooseToSew, leaveOut]) command(session, 'none');
    renameSheet(session, 'none', 'x');
    moveSheet(session, 'none', 1);
    expect(steps(session)).toBe(0);
  });
});

describe('looking at several', () => {
  it('shows sheets through with a strength of their own, and is no step of undo', () => {
    const session = quilt({ a: empty('A'), b: empty('B') });
    seeThrough(session, 'a', 0.4);
    seeThrough(session, 'b', 3);
    expect(session.getState().seen.through).toEqual({ a: 0.4, b: 1 });
    seeThrough(session, 'a', 0);
    expect(session.getState().seen.through).toEqual({ b: 1 });
    expect(steps(session)).toBe(0);
  });

  it('lays two to four side by side', () => {
    const session = quilt();
    laySideBySide(session, ['a']);
    expect(session.getState().seen.beside).toEqual([]);
    laySideBySide(session, ['a', 'b', 'b', 'c', 'd', 'e']);
    expect(session.getState().seen.beside).toHaveLength(MOST_BESIDE);
    for (const id of ['b', 'c']) toggleBeside(session, id);
    expect(session.getState().seen.beside).toEqual(['a', 'd']);
    toggleBeside(session, 'd');
    expect(session.getState().seen.beside).toEqual([]);
  });

  it('draws a sheet that is not sewn: as many lines as passes and images', () => {
    const session = quilt({ a: empty('A', true), b: { ...empty('B'), repeat: [{ turn: 4 }] } });
    workOn(session, { sheet: 'b', area: 'block:r2c2' });
    layTemplate(session, 'leaf-4');
    const { selection } = session.getState();
    if (selection.kind !== 'placement') throw new Error('nothing was laid');
    addPass(session, selection.placement);
    const { evaluation } = session.getState();
    expect(evaluation.lines).toHaveLength(0);
    const needle = (area: string) => drawSheet(evaluation, 'b', area).items.filter(({ layer }) => layer === 'needle');
    expect(needle('block:r2c2')).toHaveLength(4);
    expect(needle('border:1:top')).toHaveLength(0);
  });
});
