import { describe, expect, it } from 'vitest';
import { newPlan } from '../../model/new-plan.ts';
import { fitTop, sizeTable } from '../look.ts';
import { type Session, createSession } from '../store.ts';
import { type ScreenPoint, onQuilt, onScreen } from '../view.ts';
import { looking } from './looking.ts';
import { type Gestures, type Hand, runGestures } from './node.ts';
import { burstOf, factorOf } from './wheel.ts';

const HELD = { shift: false, control: false, alt: false };

function atTheTable(): { readonly session: Session; readonly hand: Gestures; readonly press: (kind: 'down' | 'move' | 'up', x: number, y: number, time?: number, pointer?: number, by?: Hand) => void } {
  const plan = newPlan('Nine');
  const session = createSession({ ...plan, top: { ...plan.top, blocks: { ...plan.top.blocks!, rows: 3, columns: 3 } } }, { kind: 'new' });
  sizeTable(session, { width: 900, height: 900 });
  const hand = runGestures(looking(session));
  return { session, hand, press: (kind, x, y, time = 0, pointer = 1, by = 'touch') => hand.send({ kind, pointer, at: { x, y }, by, time }) };
}

const seen = (session: Session, at: ScreenPoint) => onQuilt(session.getState().view, at);

describe('looking', () => {
  it('keeps the place under the finger while pushing', () => {
    const { session, press } = atTheTable();
    const held = seen(session, { x: 400, y: 400 });
    press('down', 400, 400);
    for (let i = 1; i <= 20; i++) press('move', 400 + i * 5, 400 - i * 3);
    const under = onScreen(session.getState().view, held);
    expect(under.x).toBeCloseTo(500, 6);
    expect(under.y).toBeCloseTo(340, 6);
    press('up', 500, 340);
    expect(session.getState().framing).toBe('free');
  });

  it('takes the quilt back to where the push began on Escape, and waits for the finger to lift', () => {
    const { session, hand, press } = atTheTable();
    const before = session.getState().view;
    press('down', 400, 400);
    press('move', 600, 600);
    expect(hand.name()).toBe('pushing');
    hand.send({ kind: 'key', key: 'Escape', held: HELD });
    expect(session.getState().view).toEqual(before);
    expect(session.getState().framing).toBe('top');
    press('move', 700, 700);
    expect(session.getState().view).toEqual(before);
    press('up', 700, 700);
    expect(hand.name()).toBe('looking');
  });

  it('keeps the places under both fingers while pinching', () => {
    const { session, press } = atTheTable();
    const a = seen(session, { x: 350, y: 450 });
    const b = seen(session, { x: 550, y: 450 });
    press('down', 350, 450, 0, 1);
    press('down', 550, 450, 0, 2);
    press('move', 300, 470, 0, 1);
    press('move', 700, 470, 0, 2);
    const { view } = session.getState();
    expect(onScreen(view, a)).toEqual({ x: expect.closeTo(300, 6) as number, y: expect.closeTo(470, 6) as number });
    expect(onScreen(view, b)).toEqual({ x: expect.closeTo(700, 6) as number, y: expect.closeTo(470, 6) as number });
  });

  it('goes on pushing with the finger that stays', () => {
    const { session, hand, press } = atTheTable();
    press('down', 350, 450, 0, 1);
    press('down', 550, 450, 0, 2);
    press('move', 600, 450, 0, 2);
    press('up', 350, 450, 0, 1);
    expect(hand.name()).toBe('pushing');
    const held = seen(session, { x: 600, y: 450 });
    press('move', 640, 480, 0, 2);
    expect(onScreen(session.getState().view, held).x).toBeCloseTo(640, 6);
    press('up', 640, 480, 0, 2);
    expect(hand.name()).toBe('looking');
  });

  it('picks the area under a tap, and nothing beside the quilt', () => {
    const { session, press } = atTheTable();
    press('down', 450, 450);
    press('move', 453, 452);
    press('up', 453, 452, 80);
    expect(session.getState().selection).toEqual({ kind: 'area', area: 'block:r2c2' });
    press('down', 5, 5, 2000);
    press('up', 5, 5, 2050);
    expect(session.getState().selection).toEqual({ kind: 'nothing' });
  });

  it('shows an area large on a double tap, and all of it again on another', () => {
    const { session, press } = atTheTable();
    const tap = (time: number) => {
      press('down', 450, 450, time);
      press('up', 450, 450, time + 40);
    };
    tap(0);
    tap(200);
    expect(session.getState().framing).toEqual({ area: 'block:r2c2' });
    // A 12-inch block in 900 px less a margin on both sides.
    expect(session.getState().view.scale).toBeCloseTo((900 - 144) / 12, 9);
    tap(2000);
    tap(2200);
    expect(session.getState().framing).toBe('top');
  });

  it('zooms to the pointer by wheel and by key', () => {
    const { session, hand, press } = atTheTable();
    const at = { x: 300, y: 200 };
    const held = seen(session, at);
    hand.send({ kind: 'wheel', at, dx: 0, dy: -120, held: HELD, time: 0 });
    expect(onScreen(session.getState().view, held)).toEqual({ x: expect.closeTo(300, 6) as number, y: expect.closeTo(200, 6) as number });
    const nearer = session.getState().view.scale;
    press('move', 300, 200, 0, 1, 'mouse');
    hand.send({ kind: 'key', key: '+', held: HELD });
    expect(session.getState().view.scale).toBeGreaterThan(nearer);
    expect(onScreen(session.getState().view, held).x).toBeCloseTo(300, 6);
    hand.send({ kind: 'key', key: '0', held: HELD });
    expect(session.getState().framing).toBe('top');
  });

  it('stays fitted when the table changes its size, until the view is changed by hand', () => {
    const { session } = atTheTable();
    fitTop(session);
    sizeTable(session, { width: 500, height: 900 });
    const { view, evaluation } = session.getState();
    expect(view.scale).toBeCloseTo((500 - 80) / evaluation.top.width, 9);
  });
});

describe('the wheel', () => {
  it('tells a mouse wheel, two fingers and a pinch apart, and stays with what a burst began as', () => {
    expect(burstOf(undefined, { dx: 0, dy: 120, held: HELD, time: 0 }).means).toBe('zoom');
    const fingers = burstOf(undefined, { dx: 0, dy: 4, held: HELD, time: 0 });
    expect(fingers.means).toBe('push');
    expect(burstOf(fingers, { dx: 0, dy: 300, held: HELD, time: 16 }).means).toBe('push');
    expect(burstOf(fingers, { dx: 0, dy: 120, held: HELD, time: 1000 }).means).toBe('zoom');
    expect(burstOf(fingers, { dx: 0, dy: 3, held: { ...HELD, control: true }, time: 16 }).means).toBe('zoom');
  });

  it('goes as far back as it went forth', () => {
    expect(factorOf(-120, false) * factorOf(120, false)).toBeCloseTo(1, 12);
    expect(factorOf(-120, false)).toBeGreaterThan(1);
  });
});
