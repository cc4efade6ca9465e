import { describe, expect, it } from 'vitest';
import { newPlan } from '../model/new-plan.ts';
import type { Plan } from '../model/plan.ts';
import { random } from '../num/random.ts';
import { abandonGesture, beginGesture, changePlan, keepGesture, markSaved, moveGesture, openPlan, redo, undo } from './change-plan.ts';
import { chooseSheet, namePlan, showIn } from './choose.ts';
import { createSession, isChanged, planOf } from './store.ts';

function withSheet(): Plan {
  const plan = newPlan('Trial');
  return {
    ...plan,
    sheets: {
      one: {
        name: 'One',
        for: { kind: 'block' },
        chosen: true,
        placements: {
          p: { template: 'circle-6', foot: 'half-round', flipped: false, pose: { x: 0, y: 0, angle: 0 }, registrations: [], passes: { round: { start: { along: 0 }, stop: 'all-round', way: 'clockwise' } } },
        },
        repeat: [],
        fills: {},
      },
    },
  };
}

const fresh = () => createSession(withSheet(), { kind: 'new' });

/** Slides the one placement to x. */
const slideTo = (x: number) => (plan: { sheets: Record<string, { placements: Record<string, { pose: { x: number } }> }> }) => {
  plan.sheets['one']!.placements['p']!.pose.x = x;
};

describe('changing the plan', () => {
  it('evaluates with every change', () => {
    const session = fresh();
    expect(session.getState().evaluation.lines).toHaveLength(1);
    chooseSheet(session, 'one', false);
    expect(session.getState().evaluation.lines).toHaveLength(0);
    undo(session);
    expect(session.getState().evaluation.lines).toHaveLength(1);
  });

  it('leaves no step for a change that changes nothing', () => {
    const session = fresh();
    namePlan(session, 'Trial');
    namePlan(session, '   ');
    chooseSheet(session, 'nowhere', true);
    expect(session.getState().history.past).toHaveLength(0);
  });

  it('undoes all the way back and does everything again, seed 7', () => {
    const session = fresh();
    const start = planOf(session.getState());
    const { next, pick } = random(7);
    const plans = [start];
    for (let i = 0; i < 60; i++) {
      pick([
        () => namePlan(session, `Name ${i}`),
        () => showIn(session, next() < 0.5 ? 'in' : 'cm'),
        () => chooseSheet(session, 'one', next() < 0.5),
        () => changePlan(session, 'Slide', slideTo(next())),
        () => {
          beginGesture(session, 'Drag');
          for (let move = 0; move < 5; move++) moveGesture(session, slideTo(next()));
          keepGesture(session);
        },
      ])();
      if (plans.at(-1) !== planOf(session.getState())) plans.push(planOf(session.getState()));
    }
    const steps = session.getState().history.past.length;
    expect(steps).toBe(plans.length - 1);
    expect(steps).toBeGreaterThan(20);
    for (let i = steps - 1; i >= 0; i--) {
      undo(session);
      expect(planOf(session.getState())).toEqual(plans[i]);
    }
    undo(session);
    expect(planOf(session.getState())).toEqual(start);
    for (let i = 1; i <= steps; i++) {
      redo(session);
      expect(planOf(session.getState())).toEqual(plans[i]);
    }
  });

  it('forgets what could be redone once something else is done', () => {
    const session = fresh();
    namePlan(session, 'A');
    undo(session);
    namePlan(session, 'B');
    redo(session);
    expect(planOf(session.getState()).name).toBe('B');
  });

  it('knows whether the plan lies in a file as it is', () => {
    const session = fresh();
    expect(isChanged(session.getState())).toBe(false);
    namePlan(session, 'A');
    expect(isChanged(session.getState())).toBe(true);
    undo(session);
    expect(isChanged(session.getState())).toBe(false);
    redo(session);
    markSaved(session, session.getState().history.past.at(-1), 'a.needlefall.json');
    expect(isChanged(session.getState())).toBe(false);
    undo(session);
    expect(isChanged(session.getState())).toBe(true);
  });

  it('takes the history away with the plan it belongs to', () => {
    const session = fresh();
    namePlan(session, 'A');
    openPlan(session, newPlan('Other'), { kind: 'file', name: 'other.json' });
    undo(session);
    expect(planOf(session.getState()).name).toBe('Other');
  });
});

describe('a gesture', () => {
  it('is one step of undo, however many moves it takes', () => {
    const session = fresh();
    beginGesture(session, 'Slide');
    for (let x = 1; x <= 40; x++) moveGesture(session, slideTo(x / 16));
    expect(session.getState().history.past).toHaveLength(0);
    keepGesture(session);
    expect(session.getState().history.past.map(({ label }) => label)).toEqual(['Slide']);
    expect(planOf(session.getState()).sheets['one']!.placements['p']!.pose.x).toBe(2.5);
    undo(session);
    expect(planOf(session.getState())).toEqual(withSheet());
  });

  it('given up returns to the very plan it began with', () => {
    const session = fresh();
    const before = planOf(session.getState());
    beginGesture(session, 'Slide');
    moveGesture(session, slideTo(3));
    abandonGesture(session);
    expect(planOf(session.getState())).toBe(before);
    expect(session.getState().history.past).toHaveLength(0);
  });

  it('is given up by undo, and by nothing that was not begun', () => {
    const session = fresh();
    const before = planOf(session.getState());
    beginGesture(session, 'Slide');
    moveGesture(session, slideTo(3));
    undo(session);
    expect(planOf(session.getState())).toBe(before);
    keepGesture(session);
    abandonGesture(session);
    moveGesture(session, slideTo(9));
    expect(planOf(session.getState())).toBe(before);
  });

  it('that comes back to where it began leaves no step', () => {
    const session = fresh();
    beginGesture(session, 'Slide');
    moveGesture(session, slideTo(3));
    moveGesture(session, slideTo(0));
    keepGesture(session);
    expect(session.getState().history.past).toHaveLength(0);
  });

  it('keeps the identity of every part it does not touch', () => {
    const session = fresh();
    const before = planOf(session.getState());
    beginGesture(session, 'Slide');
    moveGesture(session, slideTo(3));
    const after = planOf(session.getState());
    expect(after.kit).toBe(before.kit);
    expect(after.top).toBe(before.top);
    expect(after.sheets).not.toBe(before.sheets);
  });
});
