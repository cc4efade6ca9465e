import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { newPlan } from '../model/new-plan.ts';
import { beginGesture, keepGesture, moveGesture } from '../session/change-plan.ts';
import { atLeisure } from './at-leisure.ts';
import { namePlan } from '../session/choose.ts';
import { createSession, planOf } from '../session/store.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('a state seen at leisure', () => {
  const begin = () => {
    const session = createSession(newPlan('Trial'), { kind: 'new' });
    let soft = 0;
    const softly = (tell: () => void) => {
      soft += 1;
      tell();
    };
    const seen = atLeisure(session, 100, softly, () => Date.now());
    const names: string[] = [];
    const stop = seen.subscribe((state) => names.push(planOf(state).name));
    const rename = (name: string) => moveGesture(session, (plan) => void (plan.name = name));
    return { session, seen, names, stop, rename, soft: () => soft };
  };

  it('follows a gesture a few times a second, and tells the last of it', () => {
    const { session, names, rename } = begin();
    vi.advanceTimersByTime(500);
    beginGesture(session, 'Rename');
    for (let i = 0; i < 20; i++) {
      rename(`${i}`);
      vi.advanceTimersByTime(16);
    }
    // 320 ms: the beginning, and every 100 ms.
    expect(names.length).toBeLessThanOrEqual(5);
    expect(names.length).toBeGreaterThanOrEqual(4);
    rename('last');
    keepGesture(session);
    expect(names.at(-1)).toBe('last');
  });

  it('is told late of a move after which the hand rests', () => {
    const { session, seen, rename } = begin();
    vi.advanceTimersByTime(500);
    beginGesture(session, 'Rename');
    rename('a');
    rename('b');
    expect(planOf(seen.getState()).name).not.toBe('b');
    vi.advanceTimersByTime(101);
    expect(planOf(seen.getState()).name).toBe('b');
  });

  it('is told softly of what a gesture changes, its end included, and not of anything else', () => {
    const { session, names, rename, soft } = begin();
    namePlan(session, 'One');
    expect([names.length, soft()]).toEqual([1, 0]);
    vi.advanceTimersByTime(500);
    beginGesture(session, 'Rename');
    rename('a');
    vi.advanceTimersByTime(500);
    keepGesture(session);
    expect(soft()).toBe(names.length - 1);
    namePlan(session, 'Two');
    expect(soft()).toBe(names.length - 2);
  });

  it('is told of everything else at once, and of nothing once it no longer listens', () => {
    const { session, seen, names, stop } = begin();
    namePlan(session, 'One');
    expect(names).toEqual(['One']);
    stop();
    namePlan(session, 'Two');
    expect(names).toEqual(['One']);
    expect(planOf(seen.getState()).name).toBe('Two');
  });
});
