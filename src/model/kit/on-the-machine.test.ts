import { describe, expect, it } from 'vitest';
import type { Foot } from '../plan.ts';
import { footOnTheMachine } from './on-the-machine.ts';

const foot = (name: string): Foot => ({ name, diameter: 0.5, needleOffset: [0, 0], shank: 'high' });
const feet = { one: foot('One'), other: foot('Other') };

describe('the foot on the machine', () => {
  it('is the one named, the first when none is, and the first when the one named is gone', () => {
    expect(footOnTheMachine({ feet, templates: {}, onTheMachine: 'other' })?.id).toBe('other');
    expect(footOnTheMachine({ feet, templates: {} })?.id).toBe('one');
    expect(footOnTheMachine({ feet, templates: {}, onTheMachine: 'lost' })?.foot.name).toBe('One');
    expect(footOnTheMachine({ feet, templates: {}, onTheMachine: 'constructor' })?.id).toBe('one');
    expect(footOnTheMachine({ feet: {}, templates: {}, onTheMachine: 'one' })).toBeUndefined();
  });
});
