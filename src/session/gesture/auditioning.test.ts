// What else the hands do: several templates together, the shelf, the bare table.

import { beforeEach, describe, expect, it } from 'vitest';
import { undo } from '../change-plan.ts';
import { layTemplate } from '../lay/bring-in.ts';
import { planOf } from '../store.ts';
import { type GestureNode, runGestures } from './node.ts';
import { pullingUp } from './pulling-up.ts';
import { ALT, NOTHING, type With, at, down, drag, hands, key, lay, pick, placement, planWith, session, steps, up } from './trial.fixture.ts';

describe('several templates', () => {
  beforeEach(() => {
    lay(planWith({ a: { pose: { x: -2, y: -2, angle: 0 } }, b: { pose: { x: 2, y: 2, angle: 30 } }, c: { pose: { x: 3.8, y: -3.5, angle: 0 } } }));
  });

  it('are picked with Shift and moved together, each keeping its place beside the other', () => {
    const SHIFT: With = { held: { ...NOTHING, shift: true } };
    down(-2, -2);
    up(-2, -2);
    down(2, 2, SHIFT);
    up(2, 2);
    drag([-2, -2], [-1.3, -2.6], ALT);
    expect(placement('a').pose).toEqual({ x: expect.closeTo(-1.3, 4) as number, y: expect.closeTo(-2.6, 4) as number, angle: 0 });
    expect(placement('b').pose.x).toBeCloseTo(2.7, 4);
    expect(placement('b').pose.y).toBeCloseTo(1.4, 4);
    expect(placement('b').pose.angle).toBeCloseTo(30, 4);
    expect(placement('c').pose.x).toBe(3.8);
    expect(steps()).toEqual(['Slide 2 templates']);
  });

  it('are gathered by a rectangle over the bare table, and put away together', () => {
    drag([-4.5, -5], [4.5, -0.2], { held: { ...NOTHING, shift: true } });
    key('Delete');
    expect(Object.keys(planOf(session.getState()).sheets['one']!.placements)).toEqual(['b']);
    undo(session);
    expect(Object.keys(planOf(session.getState()).sheets['one']!.placements)).toHaveLength(3);
  });
});

describe('a template pulled up from the shelf', () => {
  const rest: GestureNode = { name: 'idle', on: () => rest };
  const home = { rest: () => rest, tapped: () => undefined, tappedTwice: () => undefined };
  const pulled = () => {
    const press = { kind: 'down', pointer: 9, at: { x: 300, y: 905 }, by: 'mouse', time: 0 } as const;
    return runGestures(pullingUp(session, home, 'bar', press)!);
  };

  it('comes under the hand by its middle, and is one step of undo', () => {
    lay(planWith({}));
    const shelf = pulled();
    shelf.send({ kind: 'move', pointer: 9, at: at(1.3, 2.2), by: 'mouse', time: 20, held: { ...NOTHING, alt: true } });
    shelf.send({ kind: 'up', pointer: 9, at: at(1.3, 2.2), time: 40 });
    expect(placement('bar').pose).toEqual({ x: expect.closeTo(1.3, 4) as number, y: expect.closeTo(2.2, 4) as number, angle: 0 });
    expect(session.getState().selection).toEqual({ kind: 'placement', sheet: 'one', placement: 'bar' });
    expect(steps()).toEqual(['Lay Bar']);
    undo(session);
    expect(planOf(session.getState()).sheets['one']!.placements).toEqual({});
  });

  it('goes back to the shelf when it is let go beside the table', () => {
    lay(planWith({}));
    const before = planOf(session.getState());
    const shelf = pulled();
    shelf.send({ kind: 'move', pointer: 9, at: at(1, 1), by: 'mouse', time: 20 });
    shelf.send({ kind: 'move', pointer: 9, at: { x: 300, y: 930 }, by: 'mouse', time: 30 });
    shelf.send({ kind: 'up', pointer: 9, at: { x: 300, y: 930 }, time: 40 });
    expect(planOf(session.getState())).toBe(before);
    expect(steps()).toEqual([]);
  });

  it('takes a new sheet along where there is none, by hand and by key', () => {
    lay({ ...planWith({}), sheets: {} });
    const shelf = pulled();
    shelf.send({ kind: 'move', pointer: 9, at: at(1, 1), by: 'mouse', time: 20 });
    shelf.send({ kind: 'move', pointer: 9, at: at(2, 1), by: 'mouse', time: 30 });
    shelf.send({ kind: 'up', pointer: 9, at: at(2, 1), time: 40 });
    layTemplate(session, 'leaf');
    const { sheets } = planOf(session.getState());
    expect(Object.keys(sheets)).toEqual(['sheet']);
    expect(sheets['sheet']!.for).toEqual({ kind: 'block' });
    expect(Object.keys(sheets['sheet']!.placements)).toEqual(['bar', 'leaf']);
    expect(steps()).toEqual(['Lay Bar', 'Lay Leaf 6']);
  });
});

describe('the bare table', () => {
  it('is pushed and let go of as anywhere else', () => {
    lay(planWith({ a: {} }));
    pick();
    const { view } = session.getState();
    const [from, to] = [at(-5, -5), at(-4, -5)];
    hands.send({ kind: 'down', pointer: 1, at: from, by: 'mouse', time: 0 });
    hands.send({ kind: 'move', pointer: 1, at: to, by: 'mouse', time: 20 });
    hands.send({ kind: 'up', pointer: 1, at: to, time: 40 });
    expect(session.getState().view.x).toBeCloseTo(view.x - 1, 9);
    expect(steps()).toEqual([]);
    down(-5, 5);
    up(-5, 5);
    expect(session.getState().selection.kind).toBe('nothing');
  });
});
