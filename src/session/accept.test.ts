import { beforeEach, describe, expect, it } from 'vitest';
import { findingKey } from '../check/finding-key.ts';
import { readPlan, writePlan } from '../model/codec.ts';
import { newPlan } from '../model/new-plan.ts';
import type { Plan } from '../model/plan.ts';
import { alike, forgetReason, leaveSo, leftoverReasons, takeUpAgain } from './accept.ts';
import { changePlan, redo, undo } from './change-plan.ts';
import { countBySeverity } from './numbered-findings.ts';
import { type Session, createSession, planOf } from './store.ts';

/** Two sheets, each with a circle that runs beyond the raw edge of a 12 in block. */
function tooLow(): Plan {
  const plan = newPlan('Too low');
  const sheet = (name: string, y: number) => ({
    name,
    for: { kind: 'block' as const },
    chosen: true,
    placements: {
      p: { template: 'circle-6', foot: 'half-round', flipped: false, pose: { x: 0, y, angle: 0 }, registrations: [], passes: { r: { start: { along: 0 }, stop: 'all-round' as const, way: 'clockwise' as const } } },
    },
    repeat: [],
    fills: {},
  });
  return { ...plan, sheets: { low: sheet('Low round', 5), high: sheet('High round', -5) } };
}

let session: Session;
const findings = () => session.getState().evaluation.findings;
const over = (sheet: string) => findings().find(({ code, where }) => code === 'near-raw-edge' && where.sheet === sheet)!;

beforeEach(() => {
  session = createSession(tooLow(), { kind: 'new' });
});

describe('what is left so', () => {
  it('keeps its reason in the plan and in its file, counts no more, and comes last', () => {
    const before = countBySeverity(findings());
    const finding = over('low');
    leaveSo(session, finding, '  The binding is narrow there. ');
    expect(planOf(session.getState()).accepted).toEqual({ [findingKey(finding)]: { reason: 'The binding is narrow there.' } });
    expect(over('low').accepted).toBe('The binding is narrow there.');
    expect(countBySeverity(findings())).toEqual({ ...before, error: before.error - 1 });
    expect(findings().at(-1)).toBe(over('low'));
    const read = readPlan(writePlan(planOf(session.getState())));
    expect(read.ok && read.value.accepted).toEqual(planOf(session.getState()).accepted);
  });

  it('is one step of undo, and so is taking it up again', () => {
    leaveSo(session, over('low'), 'It is meant so.');
    takeUpAgain(session, over('low'));
    expect(over('low').accepted).toBeUndefined();
    expect(planOf(session.getState()).accepted).toBeUndefined();
    expect(session.getState().history.past.map(({ label }) => label)).toEqual(['Leave it so', 'Take it up again']);
    undo(session);
    expect(over('low').accepted).toBe('It is meant so.');
    undo(session);
    expect(planOf(session.getState())).toEqual(tooLow());
    redo(session);
    expect(over('low').accepted).toBe('It is meant so.');
  });

  it('takes another reason in place of the first, with what else the file says of it', () => {
    const key = findingKey(over('low'));
    changePlan(session, 'From a file', (plan) => {
      plan.accepted = { [key]: { reason: 'First.', by: 'hand' } as { reason: string } };
    });
    leaveSo(session, over('low'), 'Second.');
    expect(planOf(session.getState()).accepted).toEqual({ [key]: { reason: 'Second.', by: 'hand' } });
  });

  it('needs a reason', () => {
    leaveSo(session, over('low'), '   ');
    expect(session.getState().history.past).toEqual([]);
  });

  it('leaves other findings as they are', () => {
    leaveSo(session, over('low'), 'It is meant so.');
    expect(over('high').accepted).toBeUndefined();
    expect(alike(findings(), over('low'))).toBe(1);
  });
});

describe('a reason whose finding is gone', () => {
  const mend = () =>
    changePlan(session, 'Move it', (plan) => {
      plan.sheets['low']!.placements['p']!.pose = { x: 0, y: 0, angle: 0 };
    });

  it('is listed apart in words, holds again when the same is found again, and can be forgotten', () => {
    leaveSo(session, over('low'), 'It is meant so.');
    expect(leftoverReasons(planOf(session.getState()), findings())).toEqual([]);
    mend();
    const [leftover, ...others] = leftoverReasons(planOf(session.getState()), findings());
    expect(others).toEqual([]);
    expect(leftover).toMatchObject({ reason: 'It is meant so.', about: 'Too near to the raw edge, on Low round' });
    undo(session);
    expect(over('low').accepted).toBe('It is meant so.');
    redo(session);
    forgetReason(session, leftover!.key);
    expect(planOf(session.getState()).accepted).toBeUndefined();
  });

  it('says when its sheet is gone too', () => {
    leaveSo(session, over('low'), 'It is meant so.');
    changePlan(session, 'Delete', (plan) => {
      delete plan.sheets['low'];
    });
    expect(leftoverReasons(planOf(session.getState()), findings())[0]!.about).toBe('Too near to the raw edge, on a sheet that is gone');
  });

  it('that is not there changes nothing when forgotten', () => {
    forgetReason(session, 'near-seam/none///');
    expect(session.getState().history.past).toEqual([]);
  });
});
