import { describe, expect, it } from 'vitest';
import { greatestKink, measureFit } from '../../../test/property/fit-measure.ts';
import { boundsOf } from '../bounds.ts';
import { cubic } from '../fit/bezier.ts';
import { ellipseCurve } from '../fit/ellipse.ts';
import { pathLength, signedArea } from '../measure.ts';
import type { Path } from '../path.ts';
import { readPathData } from './read.ts';

function read(d: string, fit?: number): readonly Path<'template'>[] {
  const outcome = readPathData<'template'>(d, fit);
  if (!outcome.ok) throw new Error(outcome.problem.message);
  return outcome.value;
}

const one = (d: string, fit?: number): Path<'template'> => {
  const paths = read(d, fit);
  expect(paths).toHaveLength(1);
  return paths[0]!;
};

const corners = (path: Path<'template'>) => path.vertices.map(({ x, y }) => [x, y]);

describe('lines in path data', () => {
  it('reads absolute and relative commands alike', () => {
    const square = [[1, 1], [4, 1], [4, 4], [1, 4]];
    for (const d of ['M 1 1 L 4 1 L 4 4 L 1 4 Z', 'M1 1H4V4H1Z', 'm1,1h3v3h-3z', 'M1 1 4 1 4 4 1 4z', 'm 1 1 3 0 0 3 -3 0 z', 'M1,1L4,1,4,4,1,4,1,1Z', ' M 1 1\nL4 1\tL4 4L1 4 Z ']) {
      const path = one(d);
      expect(path.closed).toBe(true);
      expect(corners(path), d).toEqual(square);
    }
  });

  it('leaves a subpath without Z open, even where it ends at its start', () => {
    expect(one('M0 0L1 0L1 1L0 0').closed).toBe(false);
  });

  it('gives one path for each subpath, and starts a new one after Z where the last began', () => {
    const paths = read('M0 0h2v2z l-1 -1 M5 5h1 m1 1v2 M9 9');
    expect(paths.map((p) => p.closed)).toEqual([true, false, false, false]);
    expect(paths.map(corners)).toEqual([[[0, 0], [2, 0], [2, 2]], [[0, 0], [-1, -1]], [[5, 5], [6, 5]], [[7, 6], [7, 8]]]);
  });

  it('leaves stretches of no length out', () => {
    expect(corners(one('M0 0L0 0L1 0L1 0L1 1L0 0Z'))).toEqual([[0, 0], [1, 0], [1, 1]]);
  });
});

describe('curves in path data', () => {
  const expectCubic = (path: Path<'template'>, c: readonly number[]) => {
    const p = (i: number) => ({ x: c[i]!, y: c[i + 1]! });
    const fit = measureFit(path, cubic(p(0), p(2), p(4), p(6)), 0, 1);
    expect(Math.max(fit.toPath, fit.toCurve)).toBeLessThanOrEqual(0.0005);
    expect(greatestKink(fit)).toBeLessThan(1e-9);
  };

  it('fits cubics and quadratics, absolute and relative', () => {
    expectCubic(one('M1 1C2 3 4 3 5 0'), [1, 1, 2, 3, 4, 3, 5, 0]);
    expectCubic(one('M1 1c1 2 3 2 4 -1'), [1, 1, 2, 3, 4, 3, 5, 0]);
    const q = [0, 0, 2, 4, 4, 4, 6, 0];
    expectCubic(one('M0 0Q3 6 6 0'), q);
    expectCubic(one('M0 0q3 6 6 0'), q);
  });

  it('mirrors the last control point for S and T, and takes the point itself where there is none', () => {
    const smooth = one('M0 0C1 2 2 2 3 0S5 -2 6 0');
    const spelled = one('M0 0C1 2 2 2 3 0C4 -2 5 -2 6 0');
    expect(smooth.vertices).toEqual(spelled.vertices);
    expect(one('M0 0c1 2 2 2 3 0s2 -2 3 0').vertices).toEqual(spelled.vertices);
    expect(one('M0 0Q1 2 2 0T4 0t2 0').vertices).toEqual(one('M0 0Q1 2 2 0Q3 -2 4 0Q5 2 6 0').vertices);
    expect(one('M0 0L3 0S5 -2 6 0').vertices).toEqual(one('M0 0L3 0C3 0 5 -2 6 0').vertices);
    expect(one('M0 0L3 0T6 1').vertices).toEqual(one('M0 0L3 0L6 1').vertices);
  });

  it('keeps to the tolerance asked for', () => {
    const coarse = one('M0 0C1 4 5 -4 6 0', 0.05);
    const fine = one('M0 0C1 4 5 -4 6 0', 1e-5);
    expect(coarse.vertices.length * 3).toBeLessThan(fine.vertices.length);
  });
});

describe('arcs in path data', () => {
  it('keeps a circle of two half turns exact', () => {
    const path = one('M 2 0 A 2 2 0 0 1 -2 0 A 2 2 0 0 1 2 0 Z');
    expect(path.vertices).toEqual([{ x: 2, y: 0, bulge: 1 }, { x: -2, y: 0, bulge: 1 }]);
    expect(signedArea(path)).toBeCloseTo(4 * Math.PI, 12);
  });

  it('takes a sweep flag of 1 for clockwise on the screen', () => {
    // From (1, 0) to (0, 1), y down: the clockwise quarter has its centre at the origin, the other at (1, 1).
    const quarter = Math.tan(Math.PI / 8);
    expect(one('M1 0A1 1 0 0 1 0 1').vertices[0]!.bulge).toBeCloseTo(quarter, 14);
    expect(one('M1 0A1 1 0 0 0 0 1').vertices[0]!.bulge).toBeCloseTo(-quarter, 14);
  });

  it('splits an arc of more than a half turn', () => {
    // SVG 2, 8.3.8 example arcs01, first pie: three quarters of a circle of radius 150, drawn anticlockwise.
    const pie = one('M300,200 h-150 a150,150 0 1,0 150,-150 z');
    expect(pie.vertices).toHaveLength(4);
    expect(pathLength(pie)).toBeCloseTo(2 * 150 + 150 * 1.5 * Math.PI, 9);
    expect(signedArea(pie)).toBeCloseTo(-(3 / 4) * Math.PI * 150 ** 2, 8);
    expect(boundsOf(pie)).toMatchObject({ minX: 150, maxX: 450, maxY: 350 });
    // The second pie is the quarter left over.
    const rest = one('M275,175 v-150 a150,150 0 0,0 -150,150 z');
    expect(pathLength(rest)).toBeCloseTo(2 * 150 + 150 * 0.5 * Math.PI, 9);
  });

  it('draws the four arcs through the same two points that the flags tell apart', () => {
    // SVG 2, 9.3.8: of the four, two are the large sweep. Circle of radius 5 through (0, 0) and (6, 0): centres (3, +-4).
    const turn = 2 * Math.asin(3 / 5);
    const lengths = ['0 0', '0 1', '1 0', '1 1'].map((flags) => pathLength(one(`M0 0A5 5 0 ${flags} 6 0`)));
    expect(lengths[0]).toBeCloseTo(5 * turn, 12);
    expect(lengths[1]).toBeCloseTo(5 * turn, 12);
    expect(lengths[2]).toBeCloseTo(5 * (2 * Math.PI - turn), 12);
    expect(lengths[3]).toBeCloseTo(5 * (2 * Math.PI - turn), 12);
    const tops = ['0 0', '0 1', '1 0', '1 1'].map((flags) => boundsOf(one(`M0 0A5 5 0 ${flags} 6 0`)));
    // Positive sweep from left to right bulges up (negative y).
    expect([tops[0]!.maxY, tops[1]!.minY, tops[2]!.maxY, tops[3]!.minY].map((y) => Math.round(y * 1e9) / 1e9)).toEqual([1, -1, 9, -9]);
  });

  it('draws an ellipse the same as four arcs meeting there', () => {
    // Centre (1, 2), semi-axes 5 and 2 turned 30 degrees, all round in two halves.
    const c = Math.cos(Math.PI / 6);
    const s = Math.sin(Math.PI / 6);
    const [x0, y0, x1, y1] = [1 + 5 * c, 2 + 5 * s, 1 - 5 * c, 2 - 5 * s];
    const path = one(`M${x0} ${y0}A5 2 30 0 1 ${x1} ${y1}A5 2 30 0 1 ${x0} ${y0}Z`);
    const fit = measureFit(path, ellipseCurve({ x: 1, y: 2 }, 5, 2, Math.PI / 6), 0, 2 * Math.PI);
    expect(Math.max(fit.toPath, fit.toCurve)).toBeLessThanOrEqual(0.0005);
    expect(greatestKink(fit)).toBeLessThan(1e-6);
    expect(signedArea(path)).toBeCloseTo(10 * Math.PI, 2);
  });

  it('follows the implementation notes for odd radii (SVG 2, B.2.5)', () => {
    const half = one('M0 0A1 1 0 0 1 6 0');
    // Too small to reach: grown to half the chord.
    expect(half.vertices[0]!.bulge).toBe(1);
    expect(one('M0 0A-3 -3 0 0 1 6 0').vertices[0]!.bulge).toBe(1);
    expect(one('M0 0A0 3 0 0 1 6 0').vertices).toEqual([{ x: 0, y: 0, bulge: 0 }, { x: 6, y: 0, bulge: 0 }]);
    // Ends that are the same: the arc is left out.
    expect(corners(one('M0 0A3 3 0 1 1 0 0L1 1'))).toEqual([[0, 0], [1, 1]]);
    // An ellipse too small keeps its shape: half of one with semi-axes 3 and 1.5.
    const flat = one('M0 0A1 .5 0 0 1 6 0', 1e-6);
    expect(boundsOf(flat).minY).toBeCloseTo(-1.5, 5);
  });

  it('reads flags written without spaces', () => {
    expect(one('M0 0a5 5 0 016 0').vertices).toEqual(one('M0 0A5 5 0 0 1 6 0').vertices);
  });
});

describe('path data with an error', () => {
  it.each<[string, RegExp, number | undefined]>([
    ['', /empty/, undefined],
    ['   ', /empty/, undefined],
    ['M 1 1', /draws nothing/, undefined],
    ['M 1 1 Z M 2 2', /draws nothing/, undefined],
    ['L 1 1', /starts with M/, 0],
    ['M 0 0 L', /number is missing/, 7],
    ['M 0 0 L 1', /number is missing/, 9],
    ['M 0 0 L 1 1 X 2', /command was expected/, 12],
    ['M 0 0 L 1 abc', /number was expected/, 10],
    ['M 0 0 L . 1', /decimal point without a digit/, 8],
    ['M 0 0 A 1 1 0 2 1 3 3', /flag of an arc/, 14],
    ['M 0 0 L 1e 2', /exponent/, 10],
    ['M 0 0 R 1 1 2 2', /not a command/, 6],
    ['M 0 0 L 1 1 Z 5', /command was expected/, 14],
    ['M 0 0 L 1e9 0', /beyond/, undefined],
    ['M 0 0 L 1e999 0', /beyond/, undefined],
    ['none', /command was expected/, 0],
    ['<path d="M0 0"/>', /command was expected/, 0],
  ])('%j is refused whole, saying what and where', (d, what, at) => {
    const outcome = readPathData(d);
    expect(outcome.ok).toBe(false);
    if (outcome.ok) return;
    expect(outcome.problem.message).toMatch(what);
    expect(outcome.problem.at).toBe(at);
    if (at !== undefined) expect(outcome.problem.message).toContain(`character ${at + 1}`);
  });
});
