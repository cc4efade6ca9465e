// What is done to a template with one press: nudged by keys, turned over.

import { describe, expect, it } from 'vitest';
import { carry } from '../../geometry/pose.ts';
import { undo } from '../change-plan.ts';
import { at, hands, key, keysUp, laid, lay, pick, placement, planWith, session, steps } from './trial.fixture.ts';

describe('nudging', () => {
  it('goes a sixteenth, a quarter, a sixty-fourth', () => {
    lay(planWith({ a: { pose: { x: 1, y: 1, angle: 0 } } }));
    pick();
    key('ArrowRight');
    keysUp();
    expect(placement().pose.x).toBe(1 + 1 / 16);
    key('ArrowUp', { shift: true });
    keysUp();
    expect(placement().pose.y).toBe(0.75);
    key('ArrowLeft', { alt: true });
    keysUp();
    expect(placement().pose.x).toBeCloseTo(1 + 1 / 16 - 1 / 64, 4);
    undo(session);
    undo(session);
    undo(session);
    expect(placement().pose).toEqual({ x: 1, y: 1, angle: 0 });
  });

  it('cannot leave the pins', () => {
    lay(planWith({ a: { registrations: [{ put: 'etching:cross', on: 'centre' }] } }));
    pick();
    key('ArrowRight', { shift: true });
    keysUp();
    expect(laid().pose.x).toBeCloseTo(0, 9);
    expect(placement().registrations).toHaveLength(1);
  });
});

describe('flipping', () => {
  it('turns a template over about its own upright axis, and sews the same stretch of it', () => {
    // An L: a flip shows. The pass runs along its long foot, from one reference line to the other end by distance.
    lay(
      planWith({
        a: {
          template: 'bar',
          pose: { x: 1, y: 2, angle: 20 },
          passes: { a: { start: { crosses: 'line:vertical-centre' }, stop: { along: 3 }, way: 'clockwise' } },
        },
      }),
    );
    pick();
    const before = laid();
    const [pass] = before.passes;
    if (pass?.kind !== 'found') throw new Error('the pass is not there');
    key('f');
    const [after] = laid().passes;
    if (after?.kind !== 'found') throw new Error('the pass is lost');
    expect(placement().flipped).toBe(true);
    // The middle of the bar is on its axis: it stays.
    expect(carry(laid().pose, { x: 0, y: 0 })).toEqual({ x: expect.closeTo(1, 4) as number, y: expect.closeTo(2, 4) as number });
    expect(after.length).toBeCloseTo(pass.length, 3);
    expect(after.start).toBeCloseTo(pass.start, 3);
    expect(after.way).toBe(pass.way);
    key('f');
    const [again] = laid().passes;
    expect(again?.kind === 'found' && again.start).toBeCloseTo(pass.start, 3);
    expect(placement().pose.x).toBeCloseTo(1, 4);
  });

  it('on a diagonal, an end on one centre line goes to the other, and comes back with a second flip', () => {
    const ends = { start: { crosses: 'line:diagonal-down', nth: 2 }, stop: { crosses: 'line:vertical-centre', nth: 2 }, way: 'counterclockwise' } as const;
    const registrations = [{ put: 'etching:cross', on: 'line:diagonal-down' }, { put: 'etching:centre-across', on: 'line:diagonal-up', angle: 0 }];
    lay(planWith({ a: { template: 'circle', pose: { x: 0.8, y: 0.8, angle: -45 }, registrations, passes: { a: ends } } }));
    pick();
    key('f');
    expect(placement().passes['a']?.stop).toMatchObject({ crosses: 'line:horizontal-centre' });
    key('f');
    expect(placement().passes['a']).toEqual(ends);
  });

  it('happens on a double tap', () => {
    lay(planWith({ a: { template: 'leaf', pose: { x: 1, y: 2, angle: 20 } } }));
    for (let tap = 0; tap < 2; tap++) {
      hands.send({ kind: 'down', pointer: 1, at: at(1, 2), by: 'touch', time: 100 * tap });
      hands.send({ kind: 'up', pointer: 1, at: at(1, 2), time: 100 * tap + 40 });
    }
    expect(placement().flipped).toBe(true);
    expect(steps()).toEqual(['Flip Leaf 6']);
  });
});
