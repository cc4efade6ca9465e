import { describe, expect, it } from 'vitest';
import { circle, closedPath } from '../geometry/path.ts';
import type { TemplateShape } from '../model/kit/shape.ts';
import { needleLines } from './needle-lines.ts';

const square = (side: number, x = 0, y = 0) =>
  closedPath<'template'>([[0, 0], [side, 0], [side, side], [0, side]].map(([a, b]) => ({ x: x + a!, y: y + b!, bulge: 0 })));

const shape: TemplateShape = {
  outline: square(6),
  windows: [
    { id: 'big', path: square(2, 1, 1) },
    { id: 'pin', path: circle({ x: 5, y: 5 }, 0.2) },
  ],
  etchings: [],
};

describe('needle lines of a template', () => {
  const found = needleLines(shape, 0.5);

  it('run outside the outline and inside each window the foot fits into', () => {
    expect(found.lines.map((l) => [l.from, l.loop])).toEqual([['outline', 0], ['window:big', 0]]);
    // Steiner's formula outside; inside a square of side 2 the line is a square of side 1.5.
    expect(found.lines[0]!.length).toBeCloseTo(24 + 0.5 * Math.PI, 12);
    expect(found.lines[1]!.area).toBeCloseTo(2.25, 12);
  });

  it('name the window the foot cannot enter, and miss all of its edge', () => {
    const round = expect.closeTo(0.4 * Math.PI, 12) as number;
    expect(found.collapsed).toEqual(['window:pin']);
    expect(found.missed.filter((m) => m.from === 'window:pin')).toEqual([{ from: 'window:pin', start: 0, end: round, length: round }]);
    expect(found.missed.filter((m) => m.from === 'window:big')).toHaveLength(4);
    expect(found.missed.filter((m) => m.from === 'outline')).toEqual([]);
  });

  it('are kept with the shape and the foot', () => {
    expect(needleLines(shape, 0.5)).toBe(found);
    expect(needleLines(shape, 0.5625)).not.toBe(found);
    expect(needleLines({ ...shape }, 0.5)).not.toBe(found);
  });
});
