import { beforeEach, describe, expect, it } from 'vitest';
import { pathLength } from '../../geometry/measure.ts';
import { carry } from '../../geometry/pose.ts';
import { newPlan } from '../../model/new-plan.ts';
import type { Placement, Plan, Registration } from '../../model/plan.ts';
import { undo } from '../change-plan.ts';
import { layTemplate } from '../lay/bring-in.ts';
import { handleOf } from '../lay/shown.ts';
import { laidHere } from '../lay/on-table.ts';
import { sizeTable, zoomToArea } from '../look.ts';
import { type Session, createSession, planOf } from '../store.ts';
import { onScreen } from '../view.ts';
import { auditioning } from './auditioning.ts';
import { type GestureNode, type Gestures, type Hand, type Held, runGestures } from './node.ts';
import { pullingUp } from './pulling-up.ts';

const NOTHING: Held = { shift: false, control: false, alt: false };

/** One 12-inch block; its middle lies in the middle of a table of 900 by 900 pixels, at 60 pixels to the inch. */
function planWith(placements: { readonly [id: string]: Partial<Placement> }, repeat: Plan['sheets'][string]['repeat'] = []): Plan {
  const plan = newPlan('Trial');
  return {
    ...plan,
    top: { ...plan.top, borders: [], blocks: { setting: 'straight', rows: 1, columns: 1, size: [12, 12], sashing: 0, cornerstones: false } },
    kit: {
      feet: { foot: { name: 'Half-inch round', diameter: 0.5, needleOffset: [0, 0], shank: 'high' } },
      templates: {
        circle: { name: 'Circle 3', family: 'circle', sizes: { diameter: 3 }, thickness: 0.25, grips: 'none' },
        leaf: { name: 'Leaf 6', family: 'leaf', sizes: { length: 6, width: 2.5 }, thickness: 0.25, grips: 'none' },
        // Ten by one, square-cornered: its needle line is two straight lines and four quarter rounds of a quarter inch.
        bar: { name: 'Bar', outline: 'M -5 -0.5 H 5 V 0.5 H -5 Z', thickness: 0.25, grips: 'none' },
      },
    },
    sheets: {
      one: {
        name: 'One',
        for: { kind: 'block' },
        chosen: true,
        placements: Object.fromEntries(
          Object.entries(placements).map(([id, placement]) => [
            id,
            { template: 'circle', foot: 'foot', flipped: false, pose: { x: 0, y: 0, angle: 0 }, registrations: [], passes: {}, ...placement },
          ]),
        ),
        repeat,
        fills: {},
      },
    },
  };
}

let session: Session;
let hands: Gestures;
let clock: number;

function lay(plan: Plan): void {
  session = createSession(plan, { kind: 'new' });
  sizeTable(session, { width: 900, height: 900 });
  zoomToArea(session, session.getState().evaluation.top.areas.find(({ kind }) => kind === 'block')!.id);
  session.setState({ view: { x: -1.5, y: -1.5, scale: 60 } });
  hands = runGestures(auditioning(session));
  clock = 0;
}

/** A place in the block's own axes, in inches from its middle, on the screen. */
const at = (x: number, y: number) => onScreen(session.getState().view, { x: x + 6, y: y + 6 });

interface With {
  readonly by?: Hand;
  readonly held?: Held;
  readonly pointer?: number;
}

function down(x: number, y: number, { by = 'mouse', held = NOTHING, pointer = 1 }: With = {}): void {
  hands.send({ kind: 'down', pointer, at: at(x, y), by, time: (clock += 500), held });
}
function move(x: number, y: number, { by = 'mouse', held = NOTHING, pointer = 1 }: With = {}): void {
  hands.send({ kind: 'move', pointer, at: at(x, y), by, time: (clock += 16), held });
}
function up(x: number, y: number, pointer = 1): void {
  hands.send({ kind: 'up', pointer, at: at(x, y), time: (clock += 16) });
}
function key(name: string, held: Partial<Held> = {}): void {
  hands.send({ kind: 'key', key: name, held: { ...NOTHING, ...held } });
}
const keysUp = () => hands.send({ kind: 'keys-up' });

/** Press, go there in steps, let go. */
function drag(from: readonly [number, number], to: readonly [number, number], how: With = {}, steps = 12): void {
  down(...from, how);
  for (let i = 1; i <= steps; i++) move(from[0] + ((to[0] - from[0]) * i) / steps, from[1] + ((to[1] - from[1]) * i) / steps, how);
  up(...to);
}

const placement = (id = 'a') => planOf(session.getState()).sheets['one']!.placements[id]!;
const laid = (id = 'a') => laidHere(session.getState(), id)!;
const steps = () => session.getState().history.past.map(({ label }) => label);
const pick = (id = 'a') => session.setState({ selection: { kind: 'placement', sheet: 'one', placement: id } });
const ALT: With = { held: { ...NOTHING, alt: true } };

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
