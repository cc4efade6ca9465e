import { describe, expect, it } from 'vitest';
import { circle, closedPath } from '../../geometry/path.ts';
import type { TemplateShape } from '../../model/kit/shape.ts';
import type { Etching } from '../../model/plan.ts';
import { isOnAcrylic, penPlace, reachedOnAcrylic } from './etch-place.ts';
import { PEN_UP, type Pen, type PenEvent, penAfter } from './etching-pen.ts';

const shape: TemplateShape = {
  outline: closedPath([[-4, -2], [4, -2], [4, 2], [-4, 2]].map(([x, y]) => ({ x: x!, y: y!, bulge: 0 }))),
  windows: [{ id: 'round', path: circle({ x: 2, y: 0 }, 1) }],
  etchings: [{ kind: 'point', id: 'dot', name: 'the dot', at: { x: -2.03, y: 1.01 } }],
};
const centre = { x: 0, y: 0 };

describe('where the pen sets down', () => {
  it('on sixteenths from the centre', () => {
    expect(penPlace(shape, centre, { x: -1.04, y: 0.7 }, 0.02)).toEqual({ at: { x: -1.0625, y: 0.6875 } });
  });

  it('on what is etched, on the centre lines, level or upright with the start', () => {
    expect(penPlace(shape, centre, { x: -2, y: 1 }, 0.1)).toEqual({ at: { x: -2.03, y: 1.01 }, to: 'the dot' });
    expect(penPlace(shape, centre, { x: 0.05, y: 1.3 }, 0.1)).toEqual({ at: { x: 0, y: 1.3125 }, to: 'the centre line down' });
    expect(penPlace(shape, centre, { x: 0.05, y: 0.02 }, 0.1).to).toBe('the centre');
    expect(penPlace(shape, centre, { x: -3, y: 1.55 }, 0.1, { x: -1.03, y: 1.53 })).toEqual({ at: { x: -3, y: 1.53 }, to: 'level with the start' });
  });

  it('never off the acrylic', () => {
    expect(penPlace(shape, centre, { x: -7, y: 1 }, 0.1)).toEqual({ at: { x: -4, y: 1 }, to: 'the edge' });
    const { at, to } = penPlace(shape, centre, { x: 2.5, y: 0.5 }, 0.01);
    expect(to).toBe('the edge');
    expect(Math.hypot(at.x - 2, at.y)).toBeCloseTo(1, 9);
    expect(isOnAcrylic(shape, at)).toBe(true);
    expect(isOnAcrylic(shape, { x: 2, y: 0.2 })).toBe(false);
  });

  it('moved by keys, stops at the edge it is moved against', () => {
    expect(reachedOnAcrylic(shape, { x: -1, y: 1 }, { x: -1, y: 3 })).toEqual({ x: -1, y: 2 });
    expect(reachedOnAcrylic(shape, { x: 0, y: 0 }, { x: 1.5, y: 0 }).x).toBeCloseTo(1, 9);
    expect(reachedOnAcrylic(shape, { x: 4, y: 1 }, { x: 4.25, y: 1 })).toEqual({ x: 4, y: 1 });
    expect(reachedOnAcrylic(shape, { x: 0, y: 0 }, { x: 0.5, y: 0 })).toEqual({ x: 0.5, y: 0 });
  });
});

describe('the pen', () => {
  const at = (x: number, y: number) => ({ place: { at: { x, y } } });

  function draw(...events: readonly PenEvent[]): { readonly pen: Pen; readonly made: readonly Etching[] } {
    let pen = PEN_UP;
    const made: Etching[] = [];
    for (const event of events) {
      const step = penAfter(pen, event);
      pen = step.pen;
      if (step.made) made.push(step.made);
    }
    return { pen, made };
  }

  const LINE = { kind: 'line', from: [0, 0], to: [2, 1] };

  it('draws a line from press to letting go', () => {
    expect(draw({ kind: 'down', ...at(0, 0) }, { kind: 'move', ...at(1, 1) }, { kind: 'up', ...at(2, 1) }).made).toEqual([LINE]);
  });

  it('draws a line by setting down twice', () => {
    const { pen, made } = draw({ kind: 'down', ...at(0, 0) }, { kind: 'up', ...at(0, 0) }, { kind: 'move', ...at(1, 0) }, { kind: 'down', ...at(2, 1) }, { kind: 'up', ...at(2, 1) });
    expect(made).toEqual([LINE]);
    expect(pen.start).toBeUndefined();
  });

  it('draws by keys', () => {
    expect(draw({ kind: 'move', ...at(0, 0) }, { kind: 'set' }, { kind: 'move', ...at(2, 1) }, { kind: 'set' }).made).toEqual([LINE]);
    expect(draw({ kind: 'tool', tool: 'cross' }, { kind: 'move', ...at(1, 1) }, { kind: 'set' }).made).toEqual([{ kind: 'cross', at: [1, 1], angle: 0 }]);
  });

  it('sets points where it is put down', () => {
    expect(draw({ kind: 'tool', tool: 'point' }, { kind: 'down', ...at(1, 1) }, { kind: 'up', ...at(1, 1) }).made).toEqual([{ kind: 'point', at: [1, 1] }]);
  });

  it('is taken up by Escape, and a line of no length is none', () => {
    expect(draw({ kind: 'down', ...at(0, 0) }, { kind: 'move', ...at(1, 1) }, { kind: 'escape' }, { kind: 'up', ...at(2, 1) }).made).toEqual([]);
    expect(draw({ kind: 'down', ...at(0, 0) }, { kind: 'up', ...at(0.01, 0) }, { kind: 'down', ...at(0.02, 0) }).made).toEqual([]);
  });
});
