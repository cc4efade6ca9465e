import { describe, expect, it } from 'vitest';
import { type Point, type Vec, dot, heading, point } from '../point.ts';
import { type Segment, tangentOnSegment } from '../segment.ts';
import { biarc, biarcThrough } from './biarc.ts';

type P = Point<'template'>;
const p = (x: number, y: number): P => point(x, y);
const towards = (degrees: number): Vec<'template'> => heading((degrees * Math.PI) / 180);

function expectSmooth(pair: readonly [Segment<'template'>, Segment<'template'>], t0: Vec<'template'>, t1: Vec<'template'>): void {
  expect(dot(tangentOnSegment(pair[0], 0), t0)).toBeCloseTo(1, 12);
  expect(dot(tangentOnSegment(pair[1], 1), t1)).toBeCloseTo(1, 12);
  expect(dot(tangentOnSegment(pair[0], 1), tangentOnSegment(pair[1], 0))).toBeCloseTo(1, 12);
}

describe('biarc', () => {
  it('is one circle when the ends lie on one', () => {
    // A quarter of the unit circle: both arcs an eighth turn of it.
    const pair = biarc(p(1, 0), towards(90), p(0, 1), towards(180))!;
    for (const s of pair) {
      expect(s.kind === 'arc' && s.radius).toBeCloseTo(1, 12);
      expect(s.kind === 'arc' && s.sweep).toBeCloseTo(Math.PI / 4, 12);
    }
  });

  it('is a straight line when both directions lie along the chord', () => {
    const pair = biarc(p(0, 0), towards(0), p(3, 0), towards(0))!;
    expect(pair.map((s) => s.kind)).toEqual(['line', 'line']);
    expect(pair[0].to).toEqual({ x: 1.5, y: 0 });
  });

  it('is an S of two equal arcs for equal directions, by the closed form d = v.v / 4 v.t', () => {
    const [first, second] = biarc(p(0, 0), towards(45), p(4, 0), towards(45))!;
    // Joint at the middle of the chord; each arc turns twice 45 degrees over a chord of 2: radius 2 / (2 sin 45).
    expect(first.to.x).toBeCloseTo(2, 12);
    expect(first.to.y).toBeCloseTo(0, 12);
    expect(first.kind === 'arc' && first.sweep).toBeCloseTo(-Math.PI / 2, 12);
    expect(second.kind === 'arc' && second.sweep).toBeCloseTo(Math.PI / 2, 12);
    expect(first.kind === 'arc' && first.radius).toBeCloseTo(Math.SQRT2, 12);
  });

  it('is two half circles for equal directions square to the chord', () => {
    const t = towards(90);
    const pair = biarc(p(0, 0), t, p(4, 0), t)!;
    for (const s of pair) expect(s.kind === 'arc' && s.radius).toBeCloseTo(1, 12);
    expectSmooth(pair, t, t);
  });

  it('does not exist between equal points, nor where both directions are one that leads away', () => {
    expect(biarc(p(1, 1), towards(0), p(1, 1), towards(90))).toBeUndefined();
    expect(biarc(p(0, 0), towards(180), p(1, 0), towards(180))).toBeUndefined();
  });

  it('keeps its ends and directions, smoothly joined, for every pair of directions in steps of 15 degrees', () => {
    let count = 0;
    for (let a = -180; a < 180; a += 15) {
      for (let b = -180; b < 180; b += 15) {
        const pair = biarc(p(-1, 2), towards(a), p(3, 5), towards(b));
        if (!pair) continue;
        count++;
        expectSmooth(pair, towards(a), towards(b));
        expect(pair[1].to).toEqual({ x: 3, y: 5 });
        for (const s of pair) if (s.kind === 'arc') expect(Math.abs(s.sweep)).toBeLessThanOrEqual(Math.PI + 1e-12);
      }
    }
    // Of 576 pairs there is none for the twelve equal directions that lead away.
    expect(count).toBe(564);
  });
});

describe('a biarc through a joint', () => {
  it('is smooth wherever the joint is asked for', () => {
    let count = 0;
    for (const x of [0.5, 1, 2, 3, 3.5]) {
      for (const y of [-1, -0.3, 0.2]) {
        const pair = biarcThrough(p(0, 0), towards(-30), p(4, 0), towards(50), p(x, y));
        if (!pair) continue;
        count++;
        expectSmooth(pair, towards(-30), towards(50));
      }
    }
    expect(count).toBeGreaterThan(8);
  });

  it('has its joint where asked when that is on the joint circle', () => {
    const even = biarc(p(0, 0), towards(-30), p(4, 0), towards(50))!;
    const again = biarcThrough(p(0, 0), towards(-30), p(4, 0), towards(50), even[0].to)!;
    expect(again[0].to.x).toBeCloseTo(even[0].to.x, 12);
    expect(again[0].to.y).toBeCloseTo(even[0].to.y, 12);
  });
});
