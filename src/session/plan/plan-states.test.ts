import { applyPatches } from 'immer';
import { describe, expect, it } from 'vitest';
import { newPlan } from '../../model/new-plan.ts';
import type { Plan } from '../../model/plan.ts';
import { random } from '../../num/random.ts';
import { changePlan, undo } from '../change-plan.ts';
import { createSession, planOf } from '../store.ts';
import { patchesBetween, sharing } from './differences.ts';
import { followPlan, returnTo } from './lay.ts';
import { mergePlans } from './merge.ts';
import { saysTheSame } from './same.ts';

const base = newPlan('Base');
const firstFoot = Object.keys(base.kit.feet)[0]!;
const copyOf = (plan: Plan) => JSON.parse(JSON.stringify(plan)) as Loose;
type Loose = { [key: string]: Loose } & Plan;

/** A plan after a few random changes: fields replaced, things of maps added, changed and taken away, lists changed. */
function changed(plan: Plan, { next, pick }: ReturnType<typeof random>, tag: string): Plan {
  const copy = copyOf(plan) as unknown as { name: string; notes?: string; shownIn: string; machine: { stitchLength?: number }; kit: { feet: Record<string, { diameter: number }>; templates: Record<string, unknown> }; top: { borders: unknown[]; keepOuts: Record<string, unknown> } };
  const templates = Object.keys(copy.kit.templates);
  const changes = 1 + Math.floor(next() * 4);
  for (let i = 0; i < changes; i++) {
    pick([
      () => void (copy.name = `${tag} ${i}`),
      () => void (copy.notes = tag),
      () => void (copy.shownIn = copy.shownIn === 'in' ? 'cm' : 'in'),
      () => void (copy.machine.stitchLength = next()),
      () => void (copy.kit.feet[pick(Object.keys(copy.kit.feet))]!.diameter = next()),
      () => void delete copy.kit.templates[pick(templates)],
      () => void (copy.top.borders = [...copy.top.borders, { width: next(), corners: 'butted' }]),
      () => void (copy.top.keepOuts[`${tag}-${i}`] = { name: tag, outline: 'M 0 0 L 1 0 L 1 1 Z' }),
    ])();
  }
  return copy as unknown as Plan;
}

describe('patches between plans', () => {
  it('make one of the other both ways, seed 5', () => {
    const rolls = random(5);
    for (let i = 0; i < 100; i++) {
      const a = changed(base, rolls, 'a');
      const b = changed(a, rolls, 'b');
      expect(applyPatches(a, patchesBetween(a, b))).toEqual(b);
      expect(applyPatches(b, patchesBetween(b, a))).toEqual(a);
      expect(patchesBetween(a, a)).toEqual([]);
    }
  });

  it('touch no more than what differs', () => {
    const other = copyOf(base);
    (other.kit.feet[firstFoot] as { diameter: number }).diameter = 0.4;
    expect(patchesBetween(base, other)).toEqual([{ op: 'replace', path: ['kit', 'feet', firstFoot, 'diameter'], value: 0.4 }]);
  });

  it('sharing keeps every part that says the same', () => {
    const other = copyOf(base);
    (other as { name: string }).name = 'Other';
    const shared = sharing(base, other);
    expect(shared).toEqual(other);
    expect(shared.kit).toBe(base.kit);
    expect(shared.top).toBe(base.top);
    expect(sharing(base, copyOf(base))).toBe(base);
  });
});

describe('merging two windows', () => {
  it('puts together what did not touch', () => {
    const mine = { ...base, name: 'Mine' };
    const theirs = { ...base, notes: 'Theirs', kit: { ...base.kit, feet: {} } };
    const merged = mergePlans(base, mine, theirs);
    expect(merged).toEqual({ ok: true, value: { ...theirs, name: 'Mine' } });
  });

  it('says which things both changed', () => {
    const merged = mergePlans(base, { ...base, name: 'Mine', shownIn: 'cm' }, { ...base, name: 'Theirs', shownIn: 'cm' });
    expect(merged).toEqual({ ok: false, problem: ['name'] });
  });

  it('takes a list as one thing', () => {
    const border = { width: 2, corners: 'butted' } as const;
    const mine = { ...base, top: { ...base.top, borders: [border] } };
    const theirs = { ...base, top: { ...base.top, borders: [{ ...border, width: 3 }] } };
    expect(mergePlans(base, mine, theirs)).toEqual({ ok: false, problem: ['top/borders'] });
  });

  it('does not bring back into a taken-away thing what the other window changed in it', () => {
    const { [firstFoot]: gone, ...others } = base.kit.feet;
    const mine = { ...base, kit: { ...base.kit, feet: others } };
    const theirs = { ...base, kit: { ...base.kit, feet: { ...base.kit.feet, [firstFoot]: { ...gone!, diameter: 0.4 } } } };
    expect(mergePlans(base, mine, theirs)).toEqual({ ok: false, problem: [`kit/feet/${firstFoot}`] });
  });

  it('has no favourite and loses nothing either did, seed 31', () => {
    const rolls = random(31);
    let together = 0;
    for (let i = 0; i < 300; i++) {
      const mine = changed(base, rolls, 'm');
      const theirs = changed(base, rolls, 't');
      const one = mergePlans(base, mine, theirs);
      const other = mergePlans(base, theirs, mine);
      expect(one.ok).toBe(other.ok);
      if (!one.ok || !other.ok) continue;
      together += 1;
      expect(saysTheSame(one.value, other.value)).toBe(true);
      // Each change either made is there: doing it again changes nothing.
      for (const side of [mine, theirs]) expect(saysTheSame(applyPatches(one.value, patchesBetween(base, side)), one.value)).toBe(true);
    }
    expect(together).toBeGreaterThan(50);
    expect(together).toBeLessThan(300);
  });
});

describe('laying another state on the table', () => {
  it('returns to an earlier state as one step of undo', () => {
    const session = createSession(base, { kind: 'new' });
    for (const name of ['A', 'B', 'C']) changePlan(session, 'Name', (plan) => void (plan.name = name));
    returnTo(session, 'Go back', { ...base, name: 'Base', notes: 'as it was' });
    expect(planOf(session.getState())).toEqual({ ...base, notes: 'as it was' });
    undo(session);
    expect(planOf(session.getState()).name).toBe('C');
    expect(session.getState().history.past).toHaveLength(3);
  });

  it('follows another window, its history too, and keeps every part that stayed', () => {
    const session = createSession(base, { kind: 'new' });
    const step = { label: 'Name', forward: [], back: [{ op: 'replace' as const, path: ['name'], value: 'Base' }], selectedBefore: { kind: 'nothing' as const }, selectedAfter: { kind: 'nothing' as const } };
    const before = planOf(session.getState());
    followPlan(session, { ...copyOf(base), name: 'From there' }, { past: [step], future: [] });
    expect(planOf(session.getState()).kit).toBe(before.kit);
    undo(session);
    expect(planOf(session.getState()).name).toBe('Base');
  });
});
