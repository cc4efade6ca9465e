import { describe, expect, it } from 'vitest';
import { newPlan } from '../../model/new-plan.ts';
import type { RepeatStep } from '../../model/plan.ts';
import { undo } from '../change-plan.ts';
import { layTemplate } from '../lay/bring-in.ts';
import { laidHere, onTable, workOn } from '../lay/on-table.ts';
import { layingOf } from '../lay/setting.ts';
import { type Session, createSession, planOf } from '../store.ts';
import { addPass, endChoices, putEnd, readPasses, renamePass, sewTheRest, takePassAway, turnPassRound } from './passes.ts';
import { addPin, canAskAngle, changePin, onsFor, putsOf, readPins, takePinOut } from './pins.ts';
import { changeFoot, changeTemplate, duplicatePicked, putPlacementAway, renamePlacement } from './placements.ts';
import { FRIEZE_ORDER, mirrorLines, sayCount, sayStep, setRepeat, setStep, usualRepeats } from './repeats.ts';
import { spokenText } from './spoken.ts';

const INCHES = { unit: 'in', smallest: 16 } as const;

/** A 12-inch block with a circle of 3 in laid on its middle. */
function laid(template = 'circle-3', area = 'block:r1c1'): { readonly session: Session; readonly sheet: string; readonly id: string } {
  const plan = newPlan('Try');
  const blocks = { setting: 'straight', rows: 2, columns: 2, size: [12, 12], sashing: 0, cornerstones: false } as const;
  const session = createSession({ ...plan, top: { ...plan.top, blocks, borders: [{ width: 6, corners: 'squares' }] } }, { kind: 'new' });
  workOn(session, { area });
  layTemplate(session, template);
  const { selection } = session.getState();
  if (selection.kind !== 'placement') throw new Error('nothing was laid');
  return { session, sheet: selection.sheet, id: selection.placement };
}

const layingIn = ({ session, id }: ReturnType<typeof laid>) => layingOf(session.getState(), id)!;
const placementIn = ({ session, sheet, id }: ReturnType<typeof laid>) => planOf(session.getState()).sheets[sheet]!.placements[id]!;

describe('pins', () => {
  it('names what of the template can be put where', () => {
    const on = laid();
    const { setting } = layingIn(on);
    const puts = putsOf(setting);
    expect(puts.map(({ name }) => name)).toContain('needle line');
    expect(puts.some(({ id }) => id.startsWith('etching:'))).toBe(true);
    for (const { id } of puts) {
      const ons = onsFor(id, setting);
      expect(ons.map(({ name }) => name)).toContain('vertical centre line');
      expect(ons.every(({ name }) => name !== '')).toBe(true);
    }
  });

  it('adds one by hand, and the template goes there; the sentence is the one a teacher says', () => {
    const on = laid();
    const cross = putsOf(layingIn(on).setting).find(({ id }) => id === 'etching:cross')!;
    addPin(on.session, on.id, { put: cross.id, on: 'line:vertical-centre', distance: 1.5 });
    addPin(on.session, on.id, { put: cross.id, on: 'line:horizontal-centre' });
    const [first, second] = readPins(layingIn(on), INCHES);
    expect(spokenText(second!.spoken!)).toBe('Put the cross at the centre on the horizontal centre line.');
    expect(second!.spoken!.filter(({ word }) => word).map(({ text, word }) => `${word}: ${text}`)).toEqual(['put: cross at the centre', 'distance: on', 'on: horizontal centre line']);
    expect(spokenText(first!.spoken!)).toMatch(/^Put the cross at the centre 1 1\/2 in (left|right) of the vertical centre line\.$/);
    const here = laidHere(on.session.getState(), on.id)!;
    expect(Math.abs(here.pose.x)).toBeCloseTo(1.5, 6);
    expect(here.pose.y).toBeCloseTo(0, 6);
    expect(placementIn(on).pose.x).toBeCloseTo(here.pose.x, 4);
  });

  it('changes how far and on what, and takes out again: one step each', () => {
    const on = laid();
    const cross = putsOf(layingIn(on).setting).find(({ id }) => id === 'etching:cross')!;
    addPin(on.session, on.id, { put: cross.id, on: 'line:vertical-centre' });
    changePin(on.session, on.id, 0, { distance: 2 });
    changePin(on.session, on.id, 0, { on: 'line:horizontal-centre' });
    expect(placementIn(on).registrations).toEqual([{ put: cross.id, on: 'line:horizontal-centre', distance: 2 }]);
    changePin(on.session, on.id, 0, { distance: undefined });
    expect(placementIn(on).registrations).toEqual([{ put: cross.id, on: 'line:horizontal-centre' }]);
    const { pose } = laidHere(on.session.getState(), on.id)!;
    takePinOut(on.session, on.id, 0);
    expect(placementIn(on).registrations).toEqual([]);
    expect(laidHere(on.session.getState(), on.id)!.pose.y).toBeCloseTo(pose.y, 4);
    undo(on.session);
    expect(placementIn(on).registrations).toHaveLength(1);
  });

  it('asks an angle only of what points somewhere, and turns the template to it', () => {
    const on = laid('leaf-8');
    const { setting } = layingIn(on);
    const line = setting.shape.etchings.find(({ kind }) => kind === 'line')!;
    expect(canAskAngle({ put: `etching:${line.id}`, on: 'line:vertical-centre' }, setting)).toBe(true);
    expect(canAskAngle({ put: 'tip:1', on: 'line:vertical-centre' }, setting)).toBe(false);
    expect(canAskAngle({ put: `etching:${line.id}`, on: 'centre' }, setting)).toBe(false);
    addPin(on.session, on.id, { put: `etching:${line.id}`, on: 'line:horizontal-centre', angle: 30 });
    const [pin] = readPins(layingIn(on), INCHES);
    expect(spokenText(pin!.spoken!)).toContain('30 degrees from');
    expect(laidHere(on.session.getState(), on.id)!.standing.kind).toBe('free');
  });

  it('says why one cannot be read, and keeps it', () => {
    const on = laid();
    addPin(on.session, on.id, { put: 'etching:none', on: 'centre' });
    const [pin] = readPins(layingIn(on), INCHES);
    expect(pin!.spoken).toBeUndefined();
    expect(pin!.problem).toBe('The template has no etching "none".');
  });
});

describe('passes', () => {
  it('adds one between two reference lines, and says so', () => {
    const on = laid();
    const pass = addPass(on.session, on.id)!;
    const [read] = readPasses(on.session.getState(), layingIn(on), INCHES);
    expect(read!.laid!.kind).toBe('found');
    expect(spokenText(read!.spoken)).toMatch(/^Sew from A, at .*the .* line.*, to B, at .*, clockwise\.$/);
    expect(on.session.getState().selection).toMatchObject({ kind: 'placement', placement: on.id, pass });
  });

  it('a quarter of a circle of 3 in with a half-inch foot is a quarter of the round of 3 1/2 in', () => {
    const on = laid();
    const pass = addPass(on.session, on.id)!;
    const choices = endChoices(readPasses(on.session.getState(), layingIn(on), INCHES)[0]!, layingIn(on), INCHES);
    const at = (name: RegExp) => choices.find((choice) => name.test(choice.name))!.end;
    putEnd(on.session, on.id, pass, 'start', at(/^the vertical centre line/));
    putEnd(on.session, on.id, pass, 'stop', at(/^the second crossing of the horizontal centre line/));
    const { laid: found } = readPasses(on.session.getState(), layingIn(on), INCHES)[0]!;
    const round = Math.PI * 3.5;
    expect(found).toMatchObject({ kind: 'found' });
    // Which of the two quarters of the way depends on where the crossings lie; both add up to the round.
    const length = found!.kind === 'found' ? found!.length : 0;
    sewTheRest(on.session, on.id, pass);
    const rest = readPasses(on.session.getState(), layingIn(on), INCHES)[0]!.laid!;
    expect(length + (rest.kind === 'found' ? rest.length : 0)).toBeCloseTo(round, 6);
    expect(Math.min(length, round - length)).toBeCloseTo(round / 4, 6);
    putEnd(on.session, on.id, pass, 'stop', 'all-round');
    const whole = readPasses(on.session.getState(), layingIn(on), INCHES)[0]!;
    expect(whole.laid).toMatchObject({ kind: 'found' });
    expect(whole.laid!.kind === 'found' && whole.laid!.length).toBeCloseTo(round, 6);
    expect(spokenText(whole.spoken)).toMatch(/^Sew all round from A, at /);
  });

  it('sewn the other way it is the same stretch', () => {
    const on = laid();
    const pass = addPass(on.session, on.id)!;
    const before = laidHere(on.session.getState(), on.id)!.passes[0]!;
    turnPassRound(on.session, on.id, pass);
    const after = laidHere(on.session.getState(), on.id)!.passes[0]!;
    if (before.kind !== 'found' || after.kind !== 'found') throw new Error('not found');
    expect(after.length).toBeCloseTo(before.length, 9);
    expect([after.start, after.stop]).toEqual([before.stop, before.start]);
    renamePass(on.session, on.id, pass, 'Petal');
    expect(placementIn(on).passes[pass]!.name).toBe('Petal');
    takePassAway(on.session, on.id, pass);
    expect(placementIn(on).passes).toEqual({});
    undo(on.session);
    expect(placementIn(on).passes[pass]!.name).toBe('Petal');
  });
});

describe('repeats', () => {
  const imagesOf = (steps: readonly RepeatStep[], area = 'block:r1c1') => {
    const on = laid('circle-3', area);
    setRepeat(on.session, { sheet: on.sheet }, steps);
    return laidHere(on.session.getState(), on.id)!.images.length;
  };

  it('the usual ones give the images their names promise', () => {
    const { session } = laid();
    const block = onTable(session.getState())!.area;
    const images = Object.fromEntries(usualRepeats(block).map(({ id, steps }) => [id, imagesOf(steps)]));
    expect(images).toEqual({ none: 1, mirror: 2, turn: 4, 'mirror-and-turn': 8, corners: 4 });
  });

  it('along a border there are as many as the arrangement has in a division, times the count (frieze groups: order of the point group over the translations)', () => {
    const inDivision = { run: 1, step: 1, scallop: 1, spin: 1, wave: 2, twin: 2, lantern: 4 } as const;
    for (const along of FRIEZE_ORDER) expect(imagesOf([{ along, count: 6 }], 'border:1:top'), along).toBe(6 * inDivision[along]);
    const border = onTable(laid('circle-3', 'border:1:left').session.getState())!.area;
    expect(usualRepeats(border).map(({ id }) => id)).toEqual(['none', 'along', 'mirror']);
  });

  it('are told in sentences with words that can be changed', () => {
    const { session } = laid();
    const block = onTable(session.getState())!.area;
    expect(spokenText(sayStep({ mirror: 'line:diagonal-down' }, block, []))).toBe('Mirror across the diagonal down to the right.');
    expect(spokenText(sayStep({ turn: 4 }, block, []))).toBe('Turn 4 times.');
    expect(spokenText(sayStep({ mirrorAndTurn: 8 }, block, []))).toBe('Mirror across the vertical centre line and turn 8 times.');
    expect(spokenText(sayStep({ along: 'scallop', count: { top: 8, bottom: 8, left: 12, right: 12 } }, block, []))).toBe('Scallop along the border, mirrored at every division line, 8 times on top and bottom, 12 on the sides.');
    expect(sayCount({ top: 3 })).toBe('3 times on top');
    expect(sayCount({})).toBe('no count yet');
    expect(mirrorLines(block, [], 0).map(({ kind }) => kind).lastIndexOf('diagonal')).toBeLessThan(mirrorLines(block, [], 0).findIndex(({ kind }) => kind === 'edge'));
  });

  it('one placement can repeat by itself, and as its sheet does again', () => {
    const on = laid();
    setRepeat(on.session, { sheet: on.sheet }, [{ turn: 4 }]);
    setRepeat(on.session, { sheet: on.sheet, placement: on.id }, []);
    expect(laidHere(on.session.getState(), on.id)!.images).toHaveLength(1);
    setRepeat(on.session, { sheet: on.sheet, placement: on.id }, undefined);
    expect(laidHere(on.session.getState(), on.id)!.images).toHaveLength(4);
    setStep(on.session, { sheet: on.sheet }, 0, { turn: 3 });
    expect(laidHere(on.session.getState(), on.id)!.images).toHaveLength(3);
    setStep(on.session, { sheet: on.sheet }, 0, undefined);
    expect(planOf(on.session.getState()).sheets[on.sheet]!.repeat).toEqual([]);
  });
});

describe('placements', () => {
  it('are named, laid anew, duplicated and put away: one step each', () => {
    const on = laid();
    const before = on.session.getState().history.past.length;
    renamePlacement(on.session, on.sheet, on.id, 'Middle');
    changeTemplate(on.session, on.sheet, on.id, 'circle-6');
    changeFoot(on.session, on.sheet, on.id, 'wide-round');
    expect(placementIn(on)).toMatchObject({ name: 'Middle', template: 'circle-6', foot: 'wide-round' });
    duplicatePicked(on.session);
    const { placements } = planOf(on.session.getState()).sheets[on.sheet]!;
    expect(Object.keys(placements)).toHaveLength(2);
    expect(on.session.getState().selection).not.toMatchObject({ placement: on.id });
    putPlacementAway(on.session, on.sheet, on.id);
    expect(on.session.getState().history.past.length - before).toBe(5);
    for (let i = 0; i < 5; i++) undo(on.session);
    expect(placementIn(on)).toMatchObject({ template: 'circle-3' });
  });
});
