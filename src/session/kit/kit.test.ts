import { describe, expect, it } from 'vitest';
import { newPlan } from '../../model/new-plan.ts';
import { readPlan, writePlan } from '../../model/codec.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import type { Placement, Plan } from '../../model/plan.ts';
import { abandonGesture, undo } from '../change-plan.ts';
import { type Session, createSession, planOf } from '../store.ts';
import { bringBackEtchings, deleteEtching, etch, etchInnerLine, nameEtching, typeEtching } from './etchings.ts';
import { addFoot, deleteFoot, putOnMachine, setMeasured, USUAL_FOOT } from './feet.ts';
import { addTemplate, deleteTemplate, duplicateTemplate, hideTemplate } from './templates.ts';
import { keepTyped, type } from '../typing.ts';
import { countUses, usesOfEtching, usesOfFoot, usesOfTemplate } from './uses.ts';

const placement = (template: string, foot: string, put?: string): Placement => ({
  template,
  foot,
  flipped: false,
  pose: { x: 0, y: 0, angle: 0 },
  registrations: put === undefined ? [] : [{ put, on: 'centre' }],
  passes: {},
});

function withSheets(): Plan {
  const sheet = (name: string, placements: Plan['sheets'][string]['placements']): Plan['sheets'][string] => ({ name, for: { kind: 'block' }, chosen: true, placements, repeat: [], fills: {} });
  return {
    ...newPlan('Trial'),
    sheets: {
      one: sheet('One', { a: placement('leaf-8', 'half-round', 'etching:cross'), b: placement('leaf-8', 'wide-round'), c: placement('circle-6', 'half-round', 'etching:cross') }),
      two: sheet('Two', { a: placement('leaf-8', 'half-round', 'etching:cross') }),
      three: sheet('Three', {}),
    },
  };
}

const fresh = () => createSession(withSheets(), { kind: 'new' });
const kitOf = (session: Session) => planOf(session.getState()).kit;
const steps = (session: Session) => session.getState().history.past.map(({ label }) => label);

/** Whatever the commands leave is a plan that can be written and read again. */
function expectSound(session: Session): void {
  const plan = planOf(session.getState());
  expect(readPlan(writePlan(plan))).toEqual({ ok: true, value: plan });
}

function etchingIds(session: Session, id: string): readonly string[] {
  const shape = shapeOf(kitOf(session).templates[id]!);
  return shape.ok ? shape.value.etchings.map((etching) => etching.id) : [];
}

describe('templates', () => {
  it('are added under an id of their own, and copied under a name of their own', () => {
    const session = fresh();
    expect(addTemplate(session, { name: 'Leaf 8', family: 'leaf', sizes: {}, thickness: 0.25, grips: 'none' })).toBe('leaf-8-2');
    expect(duplicateTemplate(session, 'leaf-8')).toBe('leaf-8-copy');
    expect(duplicateTemplate(session, 'leaf-8-copy')).toBe('leaf-8-copy-2');
    expect(kitOf(session).templates['leaf-8-copy-2']?.name).toBe('Leaf 8, copy 2');
    expect(session.getState().kitPick).toEqual({ kind: 'template', template: 'leaf-8-copy-2' });
    expectSound(session);
  });

  it('hidden and shown again are as they were', () => {
    const session = fresh();
    const before = kitOf(session);
    hideTemplate(session, 'leaf-8', true);
    expect(kitOf(session).templates['leaf-8']?.hidden).toBe(true);
    hideTemplate(session, 'leaf-8', false);
    expect(kitOf(session)).toEqual(before);
  });

  it('deleted take their placements off the sheets, and undo brings all of it back', () => {
    const session = fresh();
    const before = planOf(session.getState());
    const uses = usesOfTemplate(before, 'leaf-8');
    expect(uses.map(({ name, placements }) => [name, placements])).toEqual([['One', ['a', 'b']], ['Two', ['a']]]);
    expect(countUses(uses)).toBe(3);
    deleteTemplate(session, 'leaf-8');
    const { kit, sheets } = planOf(session.getState());
    expect(kit.templates['leaf-8']).toBeUndefined();
    expect(Object.keys(sheets['one']!.placements)).toEqual(['c']);
    expect(Object.keys(sheets['two']!.placements)).toEqual([]);
    expectSound(session);
    undo(session);
    expect(planOf(session.getState())).toEqual(before);
  });

  it('deleted with another in their place keep their placements', () => {
    const session = fresh();
    deleteTemplate(session, 'leaf-8', 'no-such');
    deleteTemplate(session, 'leaf-8', 'leaf-8');
    expect(steps(session)).toEqual([]);
    deleteTemplate(session, 'leaf-8', 'oval-8');
    expect(planOf(session.getState()).sheets['one']!.placements['a']).toEqual(placement('oval-8', 'half-round', 'etching:cross'));
    expect(countUses(usesOfTemplate(planOf(session.getState()), 'oval-8'))).toBe(3);
  });

  it('typed about make one step, or none when it is given up', () => {
    const session = fresh();
    const before = planOf(session.getState());
    const width = (to: number) => type(session, 'Sizes', (plan) => Object.assign(plan.kit.templates['leaf-8']!, { sizes: { width: to } }));
    width(3);
    width(4);
    width(4.5);
    keepTyped(session);
    expect(steps(session)).toEqual(['Sizes']);
    expect(kitOf(session).templates['leaf-8']).toMatchObject({ sizes: { width: 4.5 } });
    width(2);
    abandonGesture(session);
    expect(kitOf(session).templates['leaf-8']).toMatchObject({ sizes: { width: 4.5 } });
    undo(session);
    expect(planOf(session.getState())).toEqual(before);
  });
});

describe('etchings', () => {
  it('of the quilter’s own get ids of their own and are picked out', () => {
    const session = fresh();
    expect(etch(session, 'leaf-8', { kind: 'point', at: [1, 0] })).toBe('my-point');
    expect(etch(session, 'leaf-8', { kind: 'point', at: [2, 0] })).toBe('my-point-2');
    expect(session.getState().kitPick).toEqual({ kind: 'etchings', template: 'leaf-8', etching: 'my-point-2' });
    expect(kitOf(session).templates['leaf-8']?.etchings?.['my-point-2']).toEqual({ kind: 'point', at: [2, 0], name: 'my point 2' });
    expectSound(session);
  });

  it('of the family become her own under the same id when named or changed, so that registrations hold', () => {
    const session = fresh();
    nameEtching(session, 'leaf-8', 'cross', 'the middle');
    expect(kitOf(session).templates['leaf-8']?.etchings).toEqual({ cross: { kind: 'cross', at: [0, 0], angle: 0, name: 'the middle' } });
    typeEtching(session, 'leaf-8', 'cross', { kind: 'cross', at: [1, 0], angle: 0, name: 'the middle' });
    keepTyped(session);
    expect(usesOfEtching(planOf(session.getState()), 'leaf-8', 'cross').map(({ placements }) => placements)).toEqual([['a'], ['a']]);
    expect(etchingIds(session, 'leaf-8').filter((id) => id === 'cross')).toHaveLength(1);
    expectSound(session);
  });

  it('of every kind a family draws come back the same when only their name changes', () => {
    const session = fresh();
    for (const id of ['leaf-8', 'arc-8', 'row-of-windows', 'ditch-10', 'wave-of-three']) {
      const template = kitOf(session).templates[id]!;
      const before = shapeOf(template);
      if (!before.ok) return expect.fail(before.problem.message);
      for (const etching of before.value.etchings) {
        nameEtching(session, id, etching.id, `${etching.name}, mine`);
        const after = shapeOf(kitOf(session).templates[id]!);
        const same = after.ok ? after.value.etchings.find((one) => one.id === etching.id) : undefined;
        expect(same?.kind).toBe(etching.kind);
        expect(same?.name).toBe(`${etching.name}, mine`);
        if ((same?.kind === 'line' || same?.kind === 'curve') && (etching.kind === 'line' || etching.kind === 'curve')) {
          expect(same.path.vertices).toHaveLength(etching.path.vertices.length);
          same.path.vertices.forEach((vertex, i) => {
            const was = etching.path.vertices[i]!;
            expect(Math.hypot(vertex.x - was.x, vertex.y - was.y)).toBeLessThan(1e-9);
            expect(Math.abs(vertex.bulge - was.bulge)).toBeLessThan(1e-9);
          });
        }
      }
    }
    expectSound(session);
  });

  it('deleted are gone, her own for good and the family’s until they are brought back', () => {
    const session = fresh();
    const before = etchingIds(session, 'leaf-8');
    etch(session, 'leaf-8', { kind: 'point', at: [1, 0] });
    deleteEtching(session, 'leaf-8', 'my-point');
    expect(kitOf(session).templates['leaf-8']).toEqual(withSheets().kit.templates['leaf-8']);
    nameEtching(session, 'leaf-8', 'cross', 'the middle');
    deleteEtching(session, 'leaf-8', 'cross');
    expect(etchingIds(session, 'leaf-8')).toEqual(before.filter((id) => id !== 'cross'));
    expect(kitOf(session).templates['leaf-8']).toMatchObject({ notEtched: ['cross'] });
    expectSound(session);
    bringBackEtchings(session, 'leaf-8');
    expect(etchingIds(session, 'leaf-8')).toEqual(before);
  });

  it('inside the edge at a distance: a circle of 6 in gives one of 5 (concentric offset)', () => {
    const session = fresh();
    expect(etchInnerLine(session, 'circle-6', 0.5, 'half-inch line')).toEqual({ ok: true, value: ['my-curve'] });
    const shape = shapeOf(kitOf(session).templates['circle-6']!);
    const line = shape.ok ? shape.value.etchings.find(({ id }) => id === 'my-curve') : undefined;
    if (line?.kind !== 'curve') return expect.fail('no line');
    for (const { x, y } of line.path.vertices) expect(Math.hypot(x, y)).toBeCloseTo(2.5, 9);
    expect(line.name).toBe('half-inch line');
    expect(etchInnerLine(session, 'circle-6', 3.5, 'too far')).toEqual({ ok: false, problem: 'no-room' });
    expect(etchInnerLine(session, 'no-such', 1, 'none')).toEqual({ ok: false, problem: 'no-template' });
    expectSound(session);
  });

  it('inside the edge stop at a window', () => {
    const session = fresh();
    // The ring of 6 in has a window of 4 in: a line 1/2 in inside is on the rim, one 1 1/4 in inside would lie in the window.
    expect(etchInnerLine(session, 'ring-6', 0.5, 'on the rim').ok).toBe(true);
    expect(etchInnerLine(session, 'ring-6', 1.25, 'in the air')).toEqual({ ok: false, problem: 'no-room' });
  });
});

describe('feet', () => {
  it('are measured, and the plan is solved again', () => {
    const session = fresh();
    setMeasured(session, 'half-round', 9 / 16, [-1 / 32, 0]);
    expect(kitOf(session).feet['half-round']).toEqual({ name: 'Half-inch round, high shank', diameter: 9 / 16, needleOffset: [-1 / 32, 0], shank: 'high' });
    expectSound(session);
  });

  it('on the machine stay there until deleted', () => {
    const session = fresh();
    const id = addFoot(session, { ...USUAL_FOOT, name: 'Mine' });
    putOnMachine(session, id);
    expect(kitOf(session).onTheMachine).toBe('mine');
    expectSound(session);
    deleteFoot(session, id);
    expect(kitOf(session).onTheMachine).toBeUndefined();
    undo(session);
    expect(kitOf(session).onTheMachine).toBe('mine');
  });

  it('in use are deleted only with another in their place, and never the last', () => {
    const session = fresh();
    expect(countUses(usesOfFoot(planOf(session.getState()), 'half-round'))).toBe(3);
    deleteFoot(session, 'half-round');
    expect(kitOf(session).feet['half-round']).toBeDefined();
    deleteFoot(session, 'half-round', 'wide-round');
    expect(kitOf(session).feet['half-round']).toBeUndefined();
    expect(countUses(usesOfFoot(planOf(session.getState()), 'wide-round'))).toBe(4);
    expectSound(session);
    for (const id of Object.keys(kitOf(session).feet)) deleteFoot(session, id, 'wide-round');
    expect(Object.keys(kitOf(session).feet)).toEqual(['wide-round']);
    deleteFoot(session, 'wide-round');
    expect(Object.keys(kitOf(session).feet)).toEqual(['wide-round']);
  });
});
