import { describe, expect, it } from 'vitest';
import type { Requirement } from './requirement.ts';
import { sayRegistration, sayStanding } from './say.ts';

const style = { unit: 'in', smallest: 16 } as const;
const cross: Requirement['feature'] = { kind: 'point', at: { x: 0, y: 0 }, name: 'cross' };
const needle: Requirement['feature'] = { kind: 'needle-line', paths: [], name: 'needle line' };
const etched: Requirement['feature'] = { kind: 'line', at: { x: 0, y: 0 }, way: { x: 1, y: 0 }, lever: 2, name: 'centre line across' };
const upright: Requirement['target'] = { kind: 'line', at: { x: 0, y: 0 }, way: { x: 0, y: 1 }, name: 'vertical centre line' };
const level: Requirement['target'] = { kind: 'line', at: { x: 0, y: 0 }, way: { x: 1, y: 0 }, name: 'horizontal centre line' };
const centre: Requirement['target'] = { kind: 'point', at: { x: 0, y: 0 }, name: 'centre' };

const say = (feature: Requirement['feature'], target: Requirement['target'], more: { distance?: number; angle?: number } = {}) =>
  sayRegistration({ put: '', on: '', ...more }, { feature, target }, style);

describe('registrations in words', () => {
  it('says what goes where', () => {
    expect(say(cross, upright)).toBe('Put the cross on the vertical centre line.');
    expect(say(needle, centre, { distance: 1.5 })).toBe('Put the needle line 1 1/2 in from the centre.');
  });

  it('says the side of a line as the eye sees it', () => {
    expect(say(cross, level, { distance: -1.5 })).toBe('Put the cross 1 1/2 in above the horizontal centre line.');
    expect(say(cross, level, { distance: 1.5 })).toBe('Put the cross 1 1/2 in below the horizontal centre line.');
    expect(say(cross, upright, { distance: 2 })).toBe('Put the cross 2 in left of the vertical centre line.');
    expect(say(cross, upright, { distance: -2 })).toBe('Put the cross 2 in right of the vertical centre line.');
  });

  it('says an angle', () => {
    expect(say(etched, level, { angle: 0 })).toBe('Lay the centre line across the way of the horizontal centre line.');
    expect(say(etched, level, { angle: 22.5 })).toBe('Turn the centre line across 22.5 degrees from the horizontal centre line.');
  });
});

describe('standing in words', () => {
  it('says what holds it and what it can still do', () => {
    expect(sayStanding({ kind: 'fixed' }, 2, style)).toBe('Held by 2 pins, it cannot slide or turn.');
    expect(sayStanding({ kind: 'by-eye' }, 0, style)).toBe('Laid by eye. It can slide and turn.');
    expect(sayStanding({ kind: 'free', freedom: { kind: 'slide', along: { x: Math.SQRT1_2, y: Math.SQRT1_2 } } }, 1, style)).toBe('Held by 1 pin. It can still slide down to the right.');
    expect(sayStanding({ kind: 'impossible', against: [0, 1], gap: 0.375 }, 2, style)).toBe('Cannot be: 2 pins quarrel by 3/8 in. Take one out.');
  });
});
