import { describe, expect, it } from 'vitest';
import { newPlan } from '../../model/new-plan.ts';
import type { Plan } from '../../model/plan.ts';
import { layTop } from '../../top/lay-top.ts';
import { undo } from '../change-plan.ts';
import { runGestures } from '../gesture/node.ts';
import { drawing } from '../gesture/drawing.ts';
import { keepTyped } from '../typing.ts';
import { fitTop, sizeTable } from '../look.ts';
import { type Session, createSession, planOf } from '../store.ts';
import { onScreen } from '../view.ts';
import { BEDS, coverBed, quiltFor, topNear } from './beds.ts';
import { addBorder, removeBorder, setCorners, typeMeasured, typeWidth } from './borders.ts';
import { sheetsLeftOut } from './left-out.ts';
import { middleOfBlocks, middleOfCloth, setSetting, typeBlocks } from './middle.ts';
import { movedOutline, outlineData, outlineOf, pulled } from './outlines.ts';
import { nameShape, removeShape, typeKeepOutClearance } from './shapes.ts';

function fresh(change: Partial<Plan> = {}): Session {
  return createSession({ ...newPlan('Harbour'), ...change }, { kind: 'new' });
}

const topOf = (session: Session) => planOf(session.getState()).top;
const steps = (session: Session) => session.getState().history.past.length;

describe('the middle', () => {
  it('becomes one piece of cloth of the size the blocks came to, and blocks again', () => {
    const session = fresh();
    typeBlocks(session, 'Blocks across', { columns: 3 });
    keepTyped(session);
    const { width, height } = session.getState().evaluation.top;
    middleOfCloth(session, [width, height]);
    expect(topOf(session)).toMatchObject({ panel: { size: [36, 12] } });
    expect(topOf(session).blocks).toBeUndefined();
    middleOfBlocks(session);
    expect(topOf(session).blocks).toMatchObject({ rows: 1, columns: 3, size: [12, 12] });
    expect(topOf(session).panel).toBeUndefined();
  });

  it('makes all that is typed into one field one step of undo', () => {
    const session = fresh();
    for (const columns of [1, 12, 2]) typeBlocks(session, 'Blocks across', { columns });
    keepTyped(session);
    expect(steps(session)).toBe(1);
    undo(session);
    expect(topOf(session).blocks!.columns).toBe(1);
  });

  it('makes blocks square when they are set on point', () => {
    const session = fresh();
    typeBlocks(session, 'Height of a block', { size: [12, 9] });
    keepTyped(session);
    setSetting(session, 'on-point');
    expect(topOf(session).blocks).toMatchObject({ setting: 'on-point', size: [12, 12] });
    expect(session.getState().evaluation.top.problems).toEqual([]);
  });
});

describe('borders', () => {
  it('are added like the outermost, measured and taken off', () => {
    const session = fresh();
    addBorder(session);
    typeWidth(session, 0, 2);
    keepTyped(session);
    setCorners(session, 0, 'butted', 'left-and-right');
    addBorder(session);
    expect(topOf(session).borders).toEqual([{ width: 2, corners: 'butted', through: 'left-and-right' }, { width: 2, corners: 'butted' }]);
    typeMeasured(session, 0, 'top', 12.125);
    keepTyped(session);
    expect(session.getState().evaluation.top.areas.find(({ id }) => id === 'border:1:top')?.width).toBe(12.125);
    typeMeasured(session, 0, 'top', undefined);
    keepTyped(session);
    expect(topOf(session).borders[0]).not.toHaveProperty('measured');
    removeBorder(session, 0);
    expect(topOf(session).borders).toHaveLength(1);
  });
});

describe('a top for a bed', () => {
  // Mattress sizes of the trade: queen 60 x 80, king 76 x 80; quilt = width + 2 drop by length + drop (common practice).
  it('is as wide as the mattress and two drops, as long as it and one', () => {
    const queen = BEDS.find(({ id }) => id === 'queen')!;
    expect(quiltFor(queen, 12)).toEqual({ width: 84, height: 92 });
  });

  it('comes within half a block of it, straight and on point, sashed or not', () => {
    const base = newPlan('Bed').top;
    for (const setting of ['straight', 'on-point'] as const) {
      for (const sashing of [0, 1.5]) {
        for (const bed of BEDS) {
          const wanted = quiltFor(bed, 10);
          const top = topNear({ ...base, blocks: { ...base.blocks!, setting, sashing, size: [9, 9] }, borders: [{ width: 4, corners: 'mitred' }] }, wanted);
          const laid = layTop(top);
          const half = ((9 + sashing) * (setting === 'on-point' ? Math.SQRT2 : 1)) / 2;
          expect(Math.abs(laid.width - wanted.width), `${setting} ${sashing} ${bed.id}`).toBeLessThanOrEqual(half + 1e-9);
          expect(Math.abs(laid.height - wanted.height)).toBeLessThanOrEqual(half + 1e-9);
        }
      }
    }
  });

  it('cuts cloth to the size exactly', () => {
    const session = fresh();
    middleOfCloth(session, [40, 40]);
    addBorder(session);
    coverBed(session, BEDS[4]!, 12);
    expect(session.getState().evaluation.top).toMatchObject({ width: 100, height: 92 });
  });
});

describe('drawn shapes', () => {
  it('are read back as what they were drawn as', () => {
    const rectangle = { kind: 'rectangle', x: 1, y: 2, width: 3, height: 4 } as const;
    const round = { kind: 'round', x: 5, y: 6, across: 3 } as const;
    expect(outlineOf(outlineData(rectangle))).toEqual(rectangle);
    expect(outlineOf(outlineData(round))).toEqual(round);
    expect(outlineOf('M 0 0 L 4 0 L 0 3 Z')?.kind).toBe('shape');
    expect(outlineOf('M 0 0 L 4')).toBeUndefined();
    expect(movedOutline(round, 1, -1)).toEqual({ kind: 'round', x: 6, y: 5, across: 3 });
    expect(pulled('rectangle', { x: 4, y: 5 }, { x: 1, y: 7 })).toEqual({ kind: 'rectangle', x: 1, y: 5, width: 3, height: 2 });
  });

  function atTheTable() {
    const session = fresh();
    sizeTable(session, { width: 800, height: 800 });
    fitTop(session);
    const hand = runGestures(drawing(session));
    const at = (x: number, y: number) => onScreen(session.getState().view, { x, y });
    const send = (kind: 'down' | 'move' | 'up', x: number, y: number) => hand.send({ kind, pointer: 1, at: at(x, y), by: 'mouse', time: 0, held: { shift: false, control: false, alt: false } });
    return { session, hand, send };
  }

  it('are pulled on the table, in one step of undo', () => {
    const { session, send } = atTheTable();
    session.setState({ drawing: { use: 'keepOuts', kind: 'round', outline: undefined, corners: [] } });
    send('down', 6, 6);
    send('move', 7, 6);
    send('up', 8, 6);
    expect(outlineOf(topOf(session).keepOuts['keep-out']!.outline)).toEqual({ kind: 'round', x: 6, y: 6, across: 4 });
    expect(session.getState().drawing).toBeUndefined();
    expect(steps(session)).toBe(1);
    typeKeepOutClearance(session, 'keep-out', 0.25);
    keepTyped(session);
    nameShape(session, 'keepOuts', 'keep-out', ' Anchor ');
    expect(topOf(session).keepOuts['keep-out']).toMatchObject({ name: 'Anchor', clearance: 0.25 });
    removeShape(session, 'keepOuts', 'keep-out');
    expect(topOf(session).keepOuts).toEqual({});
  });

  it('of straight sides are tapped corner by corner and closed on the first', () => {
    const { session, send } = atTheTable();
    session.setState({ drawing: { use: 'drawnAreas', kind: 'shape', outline: undefined, corners: [] } });
    for (const [x, y] of [[2, 2], [9, 2], [2, 9], [2, 2]] as const) {
      send('down', x, y);
      send('up', x, y);
    }
    expect(topOf(session).drawnAreas['own-area']).toEqual({ name: 'Own area 1', outline: 'M 2 2 L 9 2 L 2 9 Z' });
    expect(session.getState().evaluation.top.areas.some(({ id }) => id === 'drawn:own-area')).toBe(true);
  });

  it('are given up with Escape, and a mere tap draws nothing', () => {
    const { session, hand, send } = atTheTable();
    session.setState({ drawing: { use: 'keepOuts', kind: 'rectangle', outline: undefined, corners: [] } });
    send('down', 2, 2);
    send('move', 5, 5);
    hand.send({ kind: 'key', key: 'Escape', held: { shift: false, control: false, alt: false } });
    send('up', 5, 5);
    expect(topOf(session).keepOuts).toEqual({});
    session.setState({ drawing: { use: 'keepOuts', kind: 'rectangle', outline: undefined, corners: [] } });
    send('down', 2, 2);
    send('up', 2, 2);
    expect(topOf(session).keepOuts).toEqual({});
  });
});

describe('sheets whose areas went', () => {
  it('are kept and named', () => {
    const sheet = { name: 'Corner arcs', for: { kind: 'block', only: ['block:r1c1', 'block:r1c2'] }, chosen: true, placements: {}, repeat: [], fills: {} } as const;
    const session = fresh({ sheets: { arcs: sheet, side: { ...sheet, name: 'Swags', for: { kind: 'border-side' } } } });
    expect(sheetsLeftOut(session.getState().evaluation)).toEqual([
      { sheet: 'arcs', name: 'Corner arcs', lost: ['block:r1c2'] },
      { sheet: 'side', name: 'Swags', lost: 'all' },
    ]);
    expect(Object.keys(planOf(session.getState()).sheets)).toHaveLength(2);
  });
});
