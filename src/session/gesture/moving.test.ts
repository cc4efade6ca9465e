// Sliding and turning: with a mouse, a finger, two fingers, the handle.

import { beforeEach, describe, expect, it } from 'vitest';
import { carry } from '../../geometry/pose.ts';
import type { Registration } from '../../model/plan.ts';
import { undo } from '../change-plan.ts';
import { handleOf } from '../lay/shown.ts';
import { planOf } from '../store.ts';
import { ALT, type With, down, drag, hands, key, keysUp, laid, lay, move, pick, placement, planWith, session, steps, up } from './trial.fixture.ts';

describe('sliding', () => {
  beforeEach(() => lay(planWith({ a: { pose: { x: 2, y: 2, angle: 20 } } })));

  it('takes a template along by as much as the hand goes, as one step of undo', () => {
    drag([2, 2], [3.4, 0.7], ALT);
    expect(placement().pose.x).toBeCloseTo(3.4, 4);
    expect(placement().pose.y).toBeCloseTo(0.7, 4);
    expect(placement().registrations).toEqual([]);
    expect(steps()).toEqual(['Slide Circle 3']);
    undo(session);
    expect(placement().pose).toEqual({ x: 2, y: 2, angle: 20 });
  });

  it('returns with Escape to where it began, and hears nothing until the hand is lifted', () => {
    const before = planOf(session.getState());
    down(2, 2);
    move(3, 3);
    expect(placement().pose.x).not.toBe(2);
    key('Escape');
    expect(planOf(session.getState())).toBe(before);
    move(4, 4);
    up(4, 4);
    expect(planOf(session.getState())).toBe(before);
    expect(steps()).toEqual([]);
  });

  it('is drawn within an eighth of an inch and makes a registration of it on letting go', () => {
    drag([2, 2], [0.09, 1.3]);
    const [made] = placement().registrations;
    expect(made).toEqual({ put: 'etching:cross', on: 'line:vertical-centre' });
    expect(laid().pose.x).toBeCloseTo(0, 9);
    expect(laid().standing.kind).toBe('free');
  });

  it('tells of what is near before it is drawn to it', () => {
    down(2, 2);
    move(1, 1.3);
    move(0.2, 1.3);
    const { inHand } = session.getState();
    expect(inHand?.made.filter(({ registration }) => registration.on === 'line:vertical-centre')).toEqual([]);
    // 0.2 in away: more than an eighth, less than a quarter.
    expect(inHand?.near?.registration).toEqual({ put: 'etching:cross', on: 'line:vertical-centre' });
    expect(inHand?.near?.distance).toBeCloseTo(0.2, 6);
    up(0.2, 1.3);
    expect(session.getState().inHand).toBeUndefined();
  });

  it('lays by eye while Alt is held', () => {
    drag([2, 2], [0.09, 1.3], ALT);
    expect(placement().registrations).toEqual([]);
    expect(laid().pose.x).toBeCloseTo(0.09, 4);
  });

  it('draws from no farther than 14 pixels when the quilt is seen large', () => {
    session.setState({ view: { x: 3, y: 3, scale: 280 } });
    // 14 px at 280 px to the inch are 1/20 in.
    drag([2, 2], [0.06, 1.3]);
    expect(placement().registrations.filter(({ on }) => on === 'line:vertical-centre')).toEqual([]);
    drag([0.06, 1.3], [0.045, 1.3]);
    expect(placement().registrations.some(({ on }) => on === 'line:vertical-centre')).toBe(true);
  });
});

describe('drawn to a line while it slides', () => {
  it('a template is not turned, and nothing else is pinned by chance', () => {
    // Its cross comes near the diagonal; tips and needle line of a leaf are always near something.
    lay(planWith({ a: { template: 'leaf', pose: { x: 2.6, y: 0.9, angle: 17 } } }));
    drag([2.6, 0.9], [1.86, 1.79]);
    expect(placement().registrations).toEqual([{ put: 'etching:cross', on: 'line:diagonal-down' }]);
    expect(placement().pose.angle).toBe(17);
    expect(placement().pose.x).toBeCloseTo(1.825, 4);
    expect(placement().pose.y).toBeCloseTo(1.825, 4);
  });

  it('its etched line lies along the line when it almost does, and through a pinned cross only its way is asked', () => {
    lay(planWith({ a: { template: 'leaf', pose: { x: 1, y: 1, angle: 44 }, registrations: [{ put: 'etching:cross', on: 'line:diagonal-down' }] } }));
    pick();
    drag([1, 1], [1.6, 1.6]);
    expect(placement().registrations).toEqual([
      { put: 'etching:cross', on: 'line:diagonal-down' },
      { put: 'etching:centre-across', on: 'line:diagonal-down', angle: 0 },
    ]);
    expect(laid().pose.angle).toBeCloseTo(Math.PI / 4, 6);
    expect(laid().standing.kind).toBe('free');
  });
});

describe('a template that is pinned', () => {
  const CENTRE: Registration = { put: 'etching:cross', on: 'line:vertical-centre' };

  it('moves only within its freedom', () => {
    lay(planWith({ a: { pose: { x: 0, y: 2.3, angle: 0 }, registrations: [CENTRE] } }));
    drag([0, 2.3], [0.3, 0.8], ALT);
    expect(placement().registrations).toEqual([CENTRE]);
    expect(laid().pose.x).toBeCloseTo(0, 9);
    expect(laid().pose.y).toBeCloseTo(0.8, 4);
  });

  it('is let go by a pull of more than half an inch, and by no less', () => {
    lay(planWith({ a: { pose: { x: 0, y: 2.3, angle: 0 }, registrations: [CENTRE] } }));
    drag([0, 2.3], [0.48, 2.3], ALT);
    expect(placement().registrations).toEqual([CENTRE]);
    drag([0, 2.3], [0.7, 2.3], ALT);
    expect(placement().registrations).toEqual([]);
    expect(laid().pose.x).toBeCloseTo(0.7, 4);
  });

  it('lets go only the pin that stands in the way', () => {
    const level: Registration = { put: 'etching:cross', on: 'line:horizontal-centre' };
    lay(planWith({ a: { registrations: [CENTRE, level] } }));
    drag([0.4, 0.4], [0.45, 1.9], ALT);
    expect(placement().registrations).toEqual([CENTRE]);
    expect(laid().pose.x).toBeCloseTo(0, 9);
    expect(laid().pose.y).toBeCloseTo(1.5, 4);
  });

  it('that cannot be met stays where it could last lie, until a pin is pulled off', () => {
    // The cross cannot be on both edges, twelve inches apart.
    const left: Registration = { put: 'etching:cross', on: 'line:edge-left' };
    const right: Registration = { put: 'etching:cross', on: 'line:edge-right' };
    lay(planWith({ a: { pose: { x: 1, y: 1, angle: 0 }, registrations: [left, right] } }));
    expect(laid().standing.kind).toBe('impossible');
    drag([1, 1], [1.3, 1], ALT);
    expect(placement().registrations).toHaveLength(2);
    expect(placement().pose.x).toBe(1);
    drag([1, 1], [2, 1], ALT);
    expect(placement().registrations.length).toBeLessThan(2);
  });
});

describe('turning', () => {
  beforeEach(() => {
    lay(planWith({ a: { template: 'bar', pose: { x: 0.4, y: 1.3, angle: 0 } } }));
    pick();
  });

  it('by the handle goes about the middle', () => {
    const handle = handleOf(session.getState())!;
    const { view } = session.getState();
    const hand = { x: view.x + handle.at.x / view.scale - 6, y: view.y + handle.at.y / view.scale - 6 };
    const reach = Math.hypot(hand.x - 0.4, hand.y - 1.3);
    const began = Math.atan2(hand.y - 1.3, hand.x - 0.4);
    down(hand.x, hand.y);
    for (let i = 1; i <= 30; i++) {
      const angle = began + (i * Math.PI) / 180;
      move(0.4 + reach * Math.cos(angle), 1.3 + reach * Math.sin(angle), ALT);
    }
    expect(hands.name()).toBe('turning');
    up(0, 0);
    expect(placement().pose.angle).toBeCloseTo(30, 3);
    expect(placement().pose.x).toBeCloseTo(0.4, 4);
    expect(placement().pose.y).toBeCloseTo(1.3, 4);
    expect(steps()).toEqual(['Turn Bar']);
  });

  it('with two fingers slides and turns at once, and the places under the fingers stay under them', () => {
    const touch: With = { by: 'touch' };
    const [p, q] = [[-2.6, 1.3], [3.4, 1.3]] as const;
    const before = laid().pose;
    down(...p, { ...touch, pointer: 1 });
    down(...q, { ...touch, pointer: 2 });
    // Turned a sixth about the left finger, which itself goes an inch to the right.
    const to = [p[0] + 1 + 6 * Math.cos(Math.PI / 3), p[1] + 6 * Math.sin(Math.PI / 3)] as const;
    for (let i = 1; i <= 10; i++) {
      const turn = ((Math.PI / 3) * i) / 10;
      move(p[0] + i / 10, p[1], { ...touch, pointer: 1 });
      move(p[0] + i / 10 + 6 * Math.cos(turn), p[1] + 6 * Math.sin(turn), { ...touch, pointer: 2 });
    }
    expect(hands.name()).toBe('twisting');
    expect(placement().pose.angle).toBeCloseTo(60, 3);
    const held = carry(laid().pose, { x: p[0] - before.x, y: p[1] - before.y });
    expect(held.x).toBeCloseTo(p[0] + 1, 3);
    expect(held.y).toBeCloseTo(p[1], 3);
    const other = carry(laid().pose, { x: q[0] - before.x, y: q[1] - before.y });
    expect(other.x).toBeCloseTo(to[0], 3);
    expect(other.y).toBeCloseTo(to[1], 3);
    up(...to, 2);
    up(p[0] + 1, p[1], 1);
    expect(steps()).toEqual(['Slide Bar']);
    expect(placement().registrations).toEqual([]);
  });

  it('by keys: one degree, fifteen, a tenth; one step of undo while keys are held', () => {
    key('.');
    key('.');
    keysUp();
    expect(placement().pose.angle).toBeCloseTo(2, 4);
    key('>', { shift: true });
    keysUp();
    expect(placement().pose.angle).toBeCloseTo(17, 4);
    key(',', { alt: true });
    keysUp();
    expect(placement().pose.angle).toBeCloseTo(16.9, 4);
    expect(steps()).toHaveLength(3);
  });
});
