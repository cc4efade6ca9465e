import { describe, expect, it } from 'vitest';
import { newPlan } from '../model/new-plan.ts';
import { random } from '../num/random.ts';
import { undo } from './change-plan.ts';
import { copied, cut, paste, readClip } from './clipboard.ts';
import { layTemplate } from './lay/bring-in.ts';
import { onTable, workOn } from './lay/on-table.ts';
import { pickPlacement } from './lay/pick.ts';
import { addPass } from './sheet/passes.ts';
import { addPin } from './sheet/pins.ts';
import { type Session, createSession, planOf } from './store.ts';

function quilt(): Session {
  const plan = newPlan('Try');
  const blocks = { setting: 'straight', rows: 2, columns: 2, size: [12, 12], sashing: 0, cornerstones: false } as const;
  const session = createSession({ ...plan, top: { ...plan.top, blocks, borders: [{ width: 6, corners: 'squares' }] } }, { kind: 'new' });
  workOn(session, { area: 'block:r1c1' });
  return session;
}

function withLeaf(): Session {
  const session = quilt();
  layTemplate(session, 'leaf-4');
  const { selection } = session.getState();
  if (selection.kind !== 'placement') throw new Error('nothing was laid');
  addPin(session, selection.placement, { put: 'tip:1', on: 'centre' });
  addPass(session, selection.placement);
  pickPlacement(session, selection.sheet, selection.placement);
  return session;
}

const sheetOf = (session: Session) => onTable(session.getState())!.sheet!;

describe('placements', () => {
  it('are pasted on another kind of area with their pins and passes, in one step', () => {
    const session = withLeaf();
    const text = copied(session.getState())!;
    const [leaf] = Object.values(sheetOf(session).sheet.placements);
    workOn(session, { sheet: undefined, area: 'border:1:top' });
    expect(onTable(session.getState())!.sheet).toBeUndefined();
    const steps = session.getState().history.past.length;
    expect(paste(session, text)).toBeUndefined();
    expect(session.getState().history.past.length).toBe(steps + 1);
    expect(Object.values(sheetOf(session).sheet.placements)).toEqual([leaf]);
    expect(sheetOf(session).sheet.for).toEqual({ kind: 'border-side', border: 1 });
    undo(session);
    expect(onTable(session.getState())!.sheet).toBeUndefined();
  });

  it('bring their template and foot into another plan, once', () => {
    const text = copied(withLeaf().getState())!;
    const plan = newPlan('Other');
    const { 'leaf-4': leaf, ...others } = plan.kit.templates;
    const bare = createSession({ ...quiltTop(plan), kit: { ...plan.kit, templates: others } }, { kind: 'new' });
    expect(paste(bare, text)).toBeUndefined();
    expect(planOf(bare.getState()).kit.templates['leaf-4']).toEqual(leaf);
    // Another template of that name is left as it is.
    const taken = createSession({ ...quiltTop(plan), kit: { ...plan.kit, templates: { ...others, 'leaf-4': { ...leaf!, thickness: 0.3 } } } }, { kind: 'new' });
    paste(taken, text);
    const { kit } = planOf(taken.getState());
    expect(kit.templates['leaf-4']!.thickness).toBe(0.3);
    expect(kit.templates['leaf-4-2']).toEqual(leaf);
    expect(Object.values(sheetOf(taken).sheet.placements)[0]!.template).toBe('leaf-4-2');
  });

  it('pasted over themselves lie beside, free of pins; what was cut comes back', () => {
    const session = withLeaf();
    paste(session, copied(session.getState())!);
    const [first, second] = Object.values(sheetOf(session).sheet.placements);
    expect(second!.pose.x - first!.pose.x).toBeCloseTo(1, 9);
    expect(second!.registrations).toEqual([]);
    const text = cut(session)!;
    expect(Object.keys(sheetOf(session).sheet.placements)).toHaveLength(1);
    paste(session, text);
    expect(Object.keys(sheetOf(session).sheet.placements)).toHaveLength(2);
  });
});

describe('passes', () => {
  it('are copied alone when one is picked, and pasted along another template', () => {
    const session = withLeaf();
    const { id, sheet } = sheetOf(session);
    const [leaf] = Object.keys(sheet.placements);
    const [pass] = Object.keys(sheet.placements[leaf!]!.passes);
    session.setState({ selection: { kind: 'placement', sheet: id, placement: leaf!, pass: pass! } });
    const text = copied(session.getState())!;
    expect(JSON.parse(text)).not.toHaveProperty('placements');
    session.setState({ selection: { kind: 'nothing' } });
    expect(paste(session, text)).toBe('Pick out the template the pass is to be sewn along, then paste.');
    layTemplate(session, 'circle-6');
    expect(paste(session, text)).toBeUndefined();
    const { selection } = session.getState();
    if (selection.kind !== 'placement') throw new Error('nothing picked');
    expect(Object.values(sheetOf(session).sheet.placements[selection.placement]!.passes)).toEqual(Object.values(sheet.placements[leaf!]!.passes));
  });
});

describe('reading', () => {
  const refused = (text: string) => {
    const read = readClip(text);
    return read.ok ? 'read' : read.problem;
  };

  it('is lenient about what stands round it', () => {
    const text = copied(withLeaf().getState())!;
    expect(readClip(`Leaf from the sampler:\n\n  ${text}\n-- try it on the border`).ok).toBe(true);
    expect(readClip(text.replace('"version"', '"later field": [1, 2],\n"version"')).ok).toBe(true);
  });

  it('says clearly what cannot be pasted', () => {
    expect(refused('')).toBe('There is nothing on the clipboard.');
    expect(refused('3 3/4 in')).toBe('What is on the clipboard is no template and no pass. Copy one from a sheet first.');
    expect(refused('{"a": 1')).toMatch(/no template and no pass/);
    expect(refused('{"format":"needlefall-plan"}')).toBe('That is a whole plan. Open it as a file instead.');
    expect(refused('{"format":"needlefall-clip"}')).toBe('What is on the clipboard holds no template and no pass.');
    expect(refused('{"format":"needlefall-clip","passes":{"a":{"start":{"along":"x"},"stop":"all-round","way":"clockwise"}}}')).toMatch(/^What is on the clipboard cannot be pasted: at passes\.a\.start/);
    expect(refused('{"format":"needlefall-clip","placements":{"p":{}}}')).toMatch(/at placements\.p\./);
  });

  it('never gives out on damaged text (seeds 1 to 300)', () => {
    const text = copied(withLeaf().getState())!;
    for (let seed = 1; seed <= 300; seed++) {
      const { whole, pick } = random(seed);
      const at = whole(0, text.length - 1);
      const damaged = text.slice(0, at) + pick(['', '"', '}', '{', '9e99', 'null', '[]', '__proto__']) + text.slice(at + whole(0, 12));
      const read = readClip(damaged);
      if (read.ok) {
        const session = quilt();
        paste(session, damaged);
        expect(session.getState().evaluation.plan.format).toBe('needlefall-plan');
      } else expect(read.problem, `seed ${seed}`).toMatch(/\.$/);
    }
  });
});

function quiltTop(plan: ReturnType<typeof newPlan>): ReturnType<typeof newPlan> {
  return { ...plan, top: planOf(quilt().getState()).top };
}
