// Against what is known of the curves the points are taken from: a straight line stays straight, a circle keeps its radius.

import { describe, expect, it } from 'vitest';
import { random } from '../../num/random.ts';
import { flatten } from '../flatten.ts';
import { endOf, startOf } from '../path.ts';
import type { Point } from '../point.ts';
import { freehandPath } from './freehand.ts';

const along = (count: number, at: (t: number) => Point<'area'>): readonly Point<'area'>[] => Array.from({ length: count + 1 }, (_, i) => at(i / count));

describe('freehandPath', () => {
  it('keeps a straight line straight, from its first point to its last', () => {
    const path = freehandPath(along(50, (t) => ({ x: 8 * t, y: 3 * t })))!;
    expect(startOf(path)).toEqual({ x: 0, y: 0 });
    expect(endOf(path)).toEqual({ x: 8, y: 3 });
    for (const { x, y } of flatten(path, 1e-3)) expect(Math.abs(8 * y - 3 * x) / Math.hypot(8, 3)).toBeLessThan(1e-9);
  });

  it('keeps to a circle of radius 4 within a fiftieth of an inch (steadying draws it in by about step squared over 4 r a round)', () => {
    const path = freehandPath(along(300, (t) => ({ x: 4 * Math.cos(3 * t), y: 4 * Math.sin(3 * t) })))!;
    for (const { x, y } of flatten(path, 1e-3)) expect(Math.abs(Math.hypot(x, y) - 4)).toBeLessThan(0.02);
  });

  it('steadies a hand that trembles by a thirty-second (seed 11): the line is as smooth as few arcs', () => {
    const { next } = random(11);
    const path = freehandPath(along(400, (t) => ({ x: 10 * t + (next() - 0.5) / 16, y: Math.sin(3 * t) + (next() - 0.5) / 16 })))!;
    for (const { x, y } of flatten(path, 1e-3)) expect(Math.abs(y - Math.sin((3 * x) / 10))).toBeLessThan(1 / 16);
    expect(path.vertices.length).toBeLessThan(120);
  });

  it('gives nothing for a tap', () => {
    expect(freehandPath([{ x: 1, y: 1 }])).toBeUndefined();
    expect(freehandPath([{ x: 1, y: 1 }, { x: 1, y: 1 }])).toBeUndefined();
    expect(freehandPath([])).toBeUndefined();
  });
});
