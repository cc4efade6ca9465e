import { describe, expect, it } from 'vitest';
import { readPlan, writePlan } from './codec.ts';
import { shapeOf } from './kit/shape-of.ts';
import { newPlan } from './new-plan.ts';

describe('a new plan', () => {
  it('can be written and read again as the same', () => {
    const plan = newPlan('Tidewater');
    const again = readPlan(writePlan(plan));
    expect(again.ok ? again.value : again.problem).toEqual(plan);
  });

  it('starts with a kit whose every template can be drawn', () => {
    const { kit } = newPlan('Tidewater');
    expect(Object.keys(kit.feet).length).toBeGreaterThan(0);
    expect(Object.keys(kit.templates).length).toBeGreaterThanOrEqual(14);
    expect(Object.entries(kit.templates).filter(([, template]) => !shapeOf(template).ok).map(([id]) => id)).toEqual([]);
  });
});
