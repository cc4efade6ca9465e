// Tracing: the foot led along the needle line by a hand or by keys.

import { beforeEach, describe, expect, it } from 'vitest';
import { pathLength } from '../../geometry/measure.ts';
import { ALT, type With, at, down, hands, key, laid, lay, move, pick, placement, planWith, session, steps, up } from './trial.fixture.ts';

describe('tracing', () => {
  // The needle line of a circle of 3 in with a foot of 1/2 in is a circle of radius 1 3/4 in.
  const R = 1.75;
  const on = (degrees: number): [number, number] => [R * Math.cos((degrees * Math.PI) / 180), R * Math.sin((degrees * Math.PI) / 180)];

  beforeEach(() => {
    lay(planWith({ a: {} }));
    pick();
  });

  function traceFrom(from: number, to: number, how: With = {}, count = 30): void {
    down(...on(from), how);
    for (let i = 1; i <= count; i++) move(...on(from + ((to - from) * i) / count), how);
    up(...on(to));
  }

  it('rides the needle line from where the hand went down to where it lifts, and ends on what draws it', () => {
    traceFrom(-88, 2);
    expect(placement().passes).toEqual({ a: { start: { crosses: 'line:vertical-centre' }, stop: { crosses: 'line:horizontal-centre', nth: 2 }, way: 'clockwise' } });
    const [pass] = laid().passes;
    expect(pass?.kind === 'found' && pass.length).toBeCloseTo((Math.PI / 2) * R, 9);
    expect(steps()).toEqual(['Trace a pass along Circle 3']);
  });

  it('counterclockwise too, and by eye with Alt', () => {
    traceFrom(-30, -80, ALT);
    const { a } = placement().passes;
    expect(a?.way).toBe('counterclockwise');
    const [pass] = laid().passes;
    expect(pass?.kind === 'found' && pass.length).toBeCloseTo((50 / 180) * Math.PI * R, 3);
  });

  it('never leaves the line, however the hand strays', () => {
    down(...on(-88), ALT);
    for (let i = 0; i <= 40; i++) {
      const [x, y] = on(-88 + i * 3);
      const far = 1 + 0.5 * Math.sin(i);
      move(x * far, y * far, ALT);
      for (const pass of laid().passes) {
        if (pass.kind !== 'found') throw new Error('the pass is lost');
        for (const vertex of pass.path.vertices) expect(Math.hypot(vertex.x, vertex.y)).toBeCloseTo(R, 9);
      }
    }
    up(0, 0);
  });

  it('drawn back, gets shorter, and past its start runs the other way', () => {
    down(...on(-60), ALT);
    for (const angle of [-40, -20, 0, 20, 40]) move(...on(angle), ALT);
    const length = () => {
      const [pass] = laid().passes;
      return pass?.kind === 'found' ? pass.length : 0;
    };
    const far = length();
    for (const angle of [20, 0, -20, -40]) move(...on(angle), ALT);
    expect(length()).toBeLessThan(far / 3);
    for (const angle of [-60, -80, -100]) move(...on(angle), ALT);
    expect(placement().passes['a']?.way).toBe('counterclockwise');
    up(...on(-100));
  });

  it('does not jump across a narrow template', () => {
    lay(planWith({ a: { template: 'bar' } }));
    pick();
    // Along the upper side; the hand strays down to the lower one, an inch and a half away, and on.
    down(-3, -0.75, ALT);
    for (let i = 1; i <= 40; i++) move(-3 + i * 0.15, -0.75 + i * 0.04, ALT);
    up(3, 0.85);
    const [pass] = laid().passes;
    if (pass?.kind !== 'found') throw new Error('no pass');
    for (const vertex of pass.path.vertices) expect(vertex.y).toBeCloseTo(-0.75, 6);
    expect(pathLength(pass.path)).toBeCloseTo(6, 1);
  });

  it('goes all round on a double tap on the line', () => {
    for (let tap = 0; tap < 2; tap++) {
      hands.send({ kind: 'down', pointer: 1, at: at(...on(-45)), by: 'mouse', time: 100 * tap });
      hands.send({ kind: 'up', pointer: 1, at: at(...on(-45)), time: 100 * tap + 40 });
    }
    const [pass] = laid().passes;
    expect(placement().passes['a']?.stop).toBe('all-round');
    expect(pass?.kind === 'found' && pass.length).toBeCloseTo(2 * Math.PI * R, 9);
  });

  it('changes an end that is dragged, and keeps the other as it was', () => {
    traceFrom(-88, 2);
    down(...on(0));
    for (let i = 1; i <= 20; i++) move(...on((i * 91) / 20));
    up(...on(91));
    expect(placement().passes).toEqual({ a: { start: { crosses: 'line:vertical-centre' }, stop: { crosses: 'line:vertical-centre', nth: 2 }, way: 'clockwise' } });
    // And the start, the other way: back over the line, to the left.
    down(...on(-90));
    for (let i = 1; i <= 20; i++) move(...on(-90 - (i * 89) / 20));
    up(...on(-179));
    expect(placement().passes['a']).toEqual({ start: { crosses: 'line:horizontal-centre' }, stop: { crosses: 'line:vertical-centre', nth: 2 }, way: 'clockwise' });
    expect(steps()).toHaveLength(3);
  });

  it('gives one placement several passes', () => {
    traceFrom(-88, -30, ALT);
    traceFrom(92, 130, ALT);
    expect(Object.keys(placement().passes)).toEqual(['a', 'b']);
  });

  it('blooms at once: the images of the repeat are there while the hand still moves', () => {
    lay(planWith({ a: { pose: { x: 3, y: 0, angle: 0 } } }, [{ mirrorAndTurn: 8 }]));
    pick();
    const line = ([x, y]: [number, number]): [number, number] => [x + 3, y];
    down(...line(on(-88)));
    move(...line(on(-60)));
    move(...line(on(-30)));
    expect(session.getState().gesture).toBeDefined();
    expect(session.getState().evaluation.lines).toHaveLength(16);
    up(...line(on(-30)));
  });

  it('by keys: Enter, arrows, Enter', () => {
    key('Enter');
    for (let i = 0; i < 16; i++) key('ArrowRight');
    key('Enter');
    const [pass] = laid().passes;
    // Sixteen sixteenths, or less where a crossing halted the foot on its way.
    expect(pass?.kind === 'found' && pass.length).toBeGreaterThan(0.9);
    expect(pass?.kind === 'found' && pass.length).toBeLessThanOrEqual(1 + 1e-6);
    expect(steps()).toEqual(['Trace a pass along Circle 3']);
    key('Enter');
    key('PageDown');
    key('Escape');
    expect(Object.keys(placement().passes)).toEqual(['a']);
  });

  it('by keys, from what draws the foot to the next such place: here from the centre line past an etched line to the diagonal', () => {
    key('Enter');
    key('PageDown');
    const [first] = laid().passes;
    // The circle carries etched lines at 30 and 45 degrees.
    expect(first?.kind === 'found' && first.length).toBeCloseTo((Math.PI / 6) * R, 4);
    key('PageDown');
    key('Enter');
    expect(placement().passes).toEqual({ a: { start: { crosses: 'line:horizontal-centre', nth: 2 }, stop: { crosses: 'line:diagonal-down', nth: 2 }, way: 'clockwise' } });
  });
});
