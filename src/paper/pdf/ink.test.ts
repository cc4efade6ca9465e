import { describe, expect, it } from 'vitest';
import { type DisplayItem, LAYERS } from '../../drawing/display-list.ts';
import { type Path, circle, openPath, straight } from '../../geometry/path.ts';
import { PAPER_STYLE } from '../style.ts';
import { inkOf } from './ink.ts';

const item = (path: Path<'quilt'>): DisplayItem<'quilt'> => ({ kind: 'path', layer: 'needle', path, source: '' });
const ink = (...items: readonly DisplayItem<'quilt'>[]) => inkOf({ bounds: { x: 0, y: 0, width: 10, height: 10 }, items }, new Set(LAYERS), PAPER_STYLE);
const box = (minX: number, minY: number, maxX: number, maxY: number) => ({ minX, minY, maxX, maxY });
const runs = (path: Path<'quilt'>, b: ReturnType<typeof box>) => ink(item(path)).in(b).map((inked) => ('runs' in inked ? inked.runs : []));

describe('inkOf', () => {
  it('tells a line that passes a box from one that runs through it', () => {
    const diagonal = ink(item(straight({ x: 0, y: 0 }, { x: 10, y: 10 })));
    expect(diagonal.holds(box(4, 4, 5, 5))).toBe(true);
    expect(diagonal.holds(box(6, 1, 9, 4))).toBe(false);
    expect(diagonal.holds(box(4, 4.5, 4.8, 4.9))).toBe(true);
  });

  it('tells the inside of a circle from its line', () => {
    const ring = ink(item(circle({ x: 5, y: 5 }, 4)));
    expect(ring.holds(box(4, 4, 6, 6))).toBe(false);
    expect(ring.holds(box(8.5, 4, 9.5, 6))).toBe(true);
    expect(ring.holds(box(0, 0, 1, 1))).toBe(false);
  });

  it('counts no fill and no ground as something to print', () => {
    expect(ink({ kind: 'path', layer: 'ground', path: circle({ x: 5, y: 5 }, 4), filled: true, source: '' }).items).toEqual([]);
    expect(ink({ kind: 'path', layer: 'template', path: circle({ x: 5, y: 5 }, 4), filled: true, source: '' }).holds(box(0, 0, 10, 10))).toBe(false);
  });

  const saw = openPath<'quilt'>(Array.from({ length: 11 }, (_, i) => ({ x: i, y: i % 2, bulge: 0 })));

  it('gives of a long path only the run that reaches in', () => {
    expect(runs(saw, box(2.2, -1, 3.7, 2))).toEqual([[{ first: 2, count: 2 }]]);
    expect(runs(saw, box(-1, -1, 11, 2))).toEqual(['all']);
    expect(runs(saw, box(2, 3, 4, 5))).toEqual([]);
  });

  it('goes on over the start of a closed path', () => {
    const square: Path<'quilt'> = { closed: true, vertices: [[0, 0], [2, 0], [4, 0], [4, 4], [0, 4], [0, 2]].map(([x, y]) => ({ x: x!, y: y!, bulge: 0 })) };
    expect(runs(square, box(-1, -1, 1, 1))).toEqual([[{ first: 5, count: 2 }]]);
  });
});
