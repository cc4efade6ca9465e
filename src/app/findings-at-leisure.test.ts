import { describe, expect, it } from 'vitest';
import { check } from '../check/check.ts';
import { knownFindings, setOut } from '../engine/evaluate.ts';
import { newPlan } from '../model/new-plan.ts';
import { type Recipe, beginGesture, changePlan, keepGesture, moveGesture, openPlan } from '../session/change-plan.ts';
import { createSession, planOf } from '../session/store.ts';
import { findingsAtLeisure } from './findings-at-leisure.ts';

/** Spare moments that come when the test says so. */
function spareMoments() {
  let waiting: { readonly steps: Iterator<unknown, unknown>; readonly done: () => void } | undefined;
  return {
    work: (steps: Iterator<unknown, unknown>, done: () => void) => {
      const mine = { steps, done };
      waiting = mine;
      return () => {
        if (waiting === mine) waiting = undefined;
      };
    },
    isWaiting: () => waiting !== undefined,
    /** As many steps as asked for. */
    have: (count: number) => {
      for (let i = 0; i < count && waiting; i++) {
        if (!waiting.steps.next().done) continue;
        const { done } = waiting;
        waiting = undefined;
        done();
      }
    },
  };
}

const bordered = (width: number): Recipe => (plan) => {
  plan.top.borders = [{ width, corners: 'butted' }];
};

describe('findings at leisure', () => {
  it('are there once there was time for them, and are those of the checks', () => {
    const session = createSession(newPlan('One'), { kind: 'new' });
    const moments = spareMoments();
    const findings = findingsAtLeisure(session, moments.work);
    let heard = 0;
    findings.subscribe(() => (heard += 1));
    expect(findings.get()).toBeUndefined();
    moments.have(3);
    expect(findings.get()).toBeUndefined();
    moments.have(1000);
    expect(heard).toBe(1);
    expect(findings.get()).toEqual(check(setOut(planOf(session.getState()))));
    expect(findings.get()).toBe(session.getState().evaluation.findings);
  });

  it('after a change stand as they were until the new ones are found, and only the last change is looked at', () => {
    const session = createSession(newPlan('Two'), { kind: 'new' });
    const moments = spareMoments();
    const findings = findingsAtLeisure(session, moments.work);
    moments.have(1000);
    const before = findings.get();
    changePlan(session, 'Border', bordered(-1));
    const between = planOf(session.getState());
    moments.have(2);
    expect(findings.get()).toBe(before);
    changePlan(session, 'Border', bordered(-2));
    moments.have(1000);
    expect(knownFindings(between)).toBeUndefined();
    expect(findings.get()).toBe(knownFindings(planOf(session.getState())));
    expect(findings.get()).not.toEqual(before);
  });

  it('are not looked for while a hand moves something, and are when it lets go', () => {
    const session = createSession(newPlan('Three'), { kind: 'new' });
    const moments = spareMoments();
    findingsAtLeisure(session, moments.work);
    moments.have(1000);
    beginGesture(session, 'Move');
    moveGesture(session, bordered(3));
    moveGesture(session, bordered(4));
    expect(moments.isWaiting()).toBe(false);
    keepGesture(session);
    expect(moments.isWaiting()).toBe(true);
    moments.have(1000);
    expect(knownFindings(planOf(session.getState()))).toBeDefined();
  });

  it('of another plan are not those of the one before', () => {
    const session = createSession(newPlan('Four'), { kind: 'new' });
    const moments = spareMoments();
    const findings = findingsAtLeisure(session, moments.work);
    moments.have(1000);
    openPlan(session, newPlan('Five'), { kind: 'new' });
    expect(findings.get()).toBeUndefined();
  });
});
