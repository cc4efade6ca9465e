import { describe, expect, it } from 'vitest';
import { ellipse } from '../fit/ellipse.ts';
import { fitCurve, fitClosedCurve } from '../fit/curve.ts';
import { nearestOnPath } from '../nearest.ts';
import { type Path, closedPath, circle, segmentsOf } from '../path.ts';
import { type OffsetOutcome, offsetClosed } from './offset-closed.ts';
import type { OffsetLoop } from './contact.ts';

const outline = (...vertices: readonly (readonly [number, number, number?])[]): Path<'template'> =>
  closedPath(vertices.map(([x, y, bulge = 0]) => ({ x, y, bulge })));

function only(offset: OffsetOutcome<'template'>): OffsetLoop<'template'> {
  if (offset.kind === 'collapsed') throw new Error('collapsed');
  expect(offset.loops).toHaveLength(1);
  return offset.loops[0]!;
}

function pieces(loop: OffsetLoop<'template'>): readonly string[] {
  return loop.contacts.map((c) => `${c.kind} ${c.edge}`);
}

const QUARTER = Math.tan(Math.PI / 8);
const square = outline([0, 0], [4, 0], [4, 4], [0, 4]);

describe('a convex outline, the foot outside', () => {
  // Steiner's formula (integral geometry): length L + 2 pi r, area A + L r + pi r^2.
  it('of a square of side 4 with a foot 1/2 across follows Steiner', () => {
    const loop = only(offsetClosed(square, 0.25, 'outside'));
    expect(loop.length).toBeCloseTo(17.570796327, 9);
    expect(loop.area).toBeCloseTo(20.196349541, 9);
    expect(pieces(loop)).toEqual(['corner 0', 'edge 0', 'corner 1', 'edge 1', 'corner 2', 'edge 2', 'corner 3', 'edge 3']);
  });

  it('of a 3-4-5 triangle follows Steiner', () => {
    const loop = only(offsetClosed(outline([0, 0], [4, 0], [0, 3]), 0.25, 'outside'));
    expect(loop.length).toBeCloseTo(13.570796327, 9);
    expect(loop.area).toBeCloseTo(9.196349541, 9);
  });

  it('of a 20 x 10 rectangle, 2 outward', () => {
    const loop = only(offsetClosed(outline([0, 0], [20, 0], [20, 10], [0, 10]), 2, 'outside'));
    expect(loop.length).toBeCloseTo(72.566370614, 8);
    expect(loop.area).toBeCloseTo(332.566370614, 8);
  });

  it('of an ellipse fitted with arcs follows Steiner to the fit', () => {
    const fit = 1e-6;
    const loop = only(offsetClosed(ellipse<'template'>({ x: 0, y: 0 }, 3, 2, 0, fit), 0.25, 'outside'));
    expect(Math.abs(loop.length - 17.436235916)).toBeLessThan(2 * Math.PI * fit);
    expect(Math.abs(loop.area - 23.01226536)).toBeLessThan(18 * fit);
  });
});

describe('a window, the foot inside', () => {
  it('of a 20 x 10 rectangle, 2 inward', () => {
    const loop = only(offsetClosed(outline([0, 0], [20, 0], [20, 10], [0, 10]), 2, 'inside'));
    expect(loop.length).toBeCloseTo(44, 12);
    expect(loop.area).toBeCloseTo(96, 12);
  });

  // Elementary geometry: the inner square has its sides 5 nearer, its diagonal 20 - 10 sqrt 2.
  it('of a square with its corners at +-10 on the axes, 5 inward', () => {
    const loop = only(offsetClosed(outline([0, -10], [10, 0], [0, 10], [-10, 0]), 5, 'inside'));
    expect(loop.length).toBeCloseTo(16.568542495, 9);
    expect(loop.area).toBeCloseTo(17.157287525, 9);
  });

  it('misses each corner of a square by the foot radius on both sides, merged over the joint and over the start', () => {
    const { missed } = offsetClosed(square, 0.25, 'inside');
    expect(missed).toEqual([
      { start: 3.75, end: 4.25, length: 0.5 },
      { start: 7.75, end: 8.25, length: 0.5 },
      { start: 11.75, end: 12.25, length: 0.5 },
      { start: 15.75, end: 0.25, length: 0.5 },
    ]);
  });

  it('collapses in a window smaller than the foot, and all of its edge is missed', () => {
    const round = expect.closeTo(0.4 * Math.PI, 12) as number;
    expect(offsetClosed(circle<'template'>({ x: 1, y: 1 }, 0.2), 0.25, 'inside')).toEqual({ kind: 'collapsed', missed: [{ start: 0, end: round, length: round }] });
  });

  it('falls into two loops when a neck is too narrow, and into one when it is not', () => {
    const dumbbell = (half: number) => outline([0, 0], [2, 0], [2, 1 - half], [3, 1 - half], [3, 0], [5, 0], [5, 2], [3, 2], [3, 1 + half], [2, 1 + half], [2, 2], [0, 2]);
    const narrow = offsetClosed(dumbbell(0.24), 0.25, 'inside');
    expect(narrow.kind === 'loops' && narrow.loops.map((l) => l.path.closed)).toEqual([true, true]);
    expect(only(offsetClosed(dumbbell(0.26), 0.25, 'inside')).path.closed).toBe(true);
  });
});

describe('parallels of an ellipse', () => {
  const fit = 1e-6;
  const path = ellipse<'template'>({ x: 0, y: 0 }, 3, 2, 0, fit);

  // MathWorld, "Ellipse Parallel Curves": x = (a + b k / W) cos t, y = (b + a k / W) sin t.
  it.each([
    ['outside', 2.259995393, 1.622226136],
    ['inside', 1.982645295, 1.206200989],
  ] as const)('pass through the closed form at 45 degrees, %s', (where, x, y) => {
    const loop = only(offsetClosed(path, 0.25, where));
    expect(nearestOnPath(loop.path, { x, y }).distance).toBeLessThan(fit);
  });

  // Cam Design Handbook 6.4.2: a roller larger than the least radius of curvature (b^2 / a = 4/3 here) undercuts. The parallel at 1.5
  // crosses itself on the long axis at x = +-1.479019946, from the closed form.
  it('are undercut where the roller is larger than the curve: 1.5 inward ends in a corner on the long axis', () => {
    const loop = only(offsetClosed(path, 1.5, 'inside'));
    for (const x of [1.479019946, -1.479019946]) expect(nearestOnPath(loop.path, { x, y: 0 }).distance).toBeLessThan(2e-6);
    const reach = Math.max(...loop.path.vertices.map((v) => Math.abs(v.x)));
    expect(Math.abs(reach - 1.479019946)).toBeLessThan(2e-6);
    expect(offsetClosed(path, 1.5, 'inside').missed).toHaveLength(2);
  });

  it('touch the whole edge up to the least radius of curvature, and miss some beyond it', () => {
    // The fitted arcs at the ends of the long axis are a little off 4/3.
    expect(offsetClosed(path, 4 / 3 - 0.01, 'inside').missed).toEqual([]);
    expect(offsetClosed(path, 4 / 3 + 0.01, 'inside').missed).toHaveLength(2);
  });
});

describe('cams and worked templates', () => {
  // The usual least radius of a sine of amplitude 1, length 6: l^2 / (4 pi^2 A) = 0.911891. A foot of 1/2 rolls along all of it, one of 2 does not.
  it('a wave touches everywhere only for a foot smaller than its least radius of curvature', () => {
    const wave = fitCurve<'template'>(
      (t) => ({ point: { x: t, y: Math.sin((2 * Math.PI * t) / 6) }, tangent: { x: 1, y: ((2 * Math.PI) / 6) * Math.cos((2 * Math.PI * t) / 6) } }), 0, 12, 1e-5,
    );
    const last = wave.vertices[wave.vertices.length - 1]!;
    const template = closedPath<'template'>([...wave.vertices.slice(0, -1), last, { x: 12, y: 4, bulge: 0 }, { x: 0, y: 4, bulge: 0 }]);
    expect(offsetClosed(template, 0.9, 'outside').missed).toEqual([]);
    expect(offsetClosed(template, 0.93, 'outside').missed.length).toBe(2);
  });

  // Harmonic rise of 1 in 60 degrees on a base radius of 2 (cam textbooks): the roller centre curve r = 2 + (1 - cos 3a) / 2, its least radius of
  // curvature exactly 1.2 at the end of the rise, by the formula of the pitch radius in polar coordinates.
  it('a cam cut for a roller gives back the roller centre curve, up to its least pitch radius of 1.2', () => {
    const pitch = (a: number) => 2 + (1 - Math.cos(3 * a)) / 2;
    const slope = (a: number) => 1.5 * Math.sin(3 * a);
    // Six rises and falls of 60 degrees make three equal lobes.
    const at = (a: number) => ({
      point: { x: pitch(a) * Math.cos(a), y: pitch(a) * Math.sin(a) },
      tangent: { x: slope(a) * Math.cos(a) - pitch(a) * Math.sin(a), y: slope(a) * Math.sin(a) + pitch(a) * Math.cos(a) },
    });
    const centreCurve = fitClosedCurve<'template'>(at, 0, 2 * Math.PI, 1e-6);
    const cut = (roller: number) => offsetClosed(centreCurve, roller, 'inside');
    // The curve is convex at the end of its rise: a cam for a roller below 1.2 has no point missed, one above is undercut there.
    expect(cut(1.19).missed).toEqual([]);
    expect(cut(1.21).missed).toHaveLength(3);
    const cam = only(cut(1));
    const back = only(offsetClosed(cam.path, 1, 'outside'));
    for (let a = 0.05; a < 6; a += 0.25) expect(nearestOnPath(back.path, at(a).point).distance).toBeLessThan(2e-6);
  });

  // A maker's worked example: chord 2 1/4, rise 3/8 wants a stitched radius (c^2 / 4 + h^2) / 2h = 1.875; with a half-inch foot the edge has
  // radius 1.625 when the foot runs outside it and 2.125 when it runs inside.
  it.each([
    [1.625, 'outside'],
    [2.125, 'inside'],
  ] as const)('an edge of radius %f with the foot %s stitches at radius 1.875', (radius, where) => {
    const loop = only(offsetClosed(circle<'template'>({ x: 0, y: 0 }, radius), 0.25, where));
    for (const s of segmentsOf(loop.path)) expect(s.kind === 'arc' && s.radius).toBeCloseTo(1.875, 12);
    const sweep = (73.739795 * Math.PI) / 180;
    expect((loop.length * sweep) / (2 * Math.PI)).toBeCloseTo(2.413129, 6);
  });

  // The same source: a 9/16 foot where 1/2 was planned puts the line 1/32 farther out.
  it('the wrong foot puts the line half the difference farther out', () => {
    const planned = only(offsetClosed(square, 1 / 4, 'outside'));
    const sewn = only(offsetClosed(square, 9 / 32, 'outside'));
    const off = sewn.path.vertices.map((v) => nearestOnPath(planned.path, v).distance);
    expect(Math.max(...off)).toBeCloseTo(1 / 32, 12);
  });
});

describe('a gap exactly a foot wide', () => {
  it('gives the open centre line of a slot with square ends, both sides touched', () => {
    const line = only(offsetClosed(outline([0, 0], [4, 0], [4, 0.5], [0, 0.5]), 0.25, 'inside'));
    expect(line.path.closed).toBe(false);
    expect(line.area).toBe(0);
    expect(line.length).toBeCloseTo(3.5, 12);
    expect(line.contacts).toEqual([
      { kind: 'edge', edge: 0, edgeStart: 0.25, edgeEnd: 3.75, start: 0, end: 3.5, opposite: { kind: 'edge', edge: 2, edgeStart: 8.25, edgeEnd: 4.75 } },
    ]);
  });

  it('touches all of a slot with round ends', () => {
    const slot = offsetClosed(outline([0, 0], [4, 0, 1], [4, 0.5], [0, 0.5, 1]), 0.25, 'inside');
    const line = only(slot);
    expect(line.path.closed).toBe(false);
    expect(line.length).toBeCloseTo(4, 12);
    expect(pieces(line)).toEqual(['edge 3', 'edge 0', 'edge 1']);
    expect(slot.missed).toEqual([]);
  });

  it('gives the centre arc of a curved slot', () => {
    const band = outline([2, 0, QUARTER], [0, 2, 0], [0, 1.5, -QUARTER], [1.5, 0]);
    const line = only(offsetClosed(band, 0.25, 'inside'));
    expect(line.path.closed).toBe(false);
    for (const s of segmentsOf(line.path)) expect(s.kind === 'arc' && s.radius).toBeCloseTo(1.75, 12);
  });

  it('keeps the outside loop whole past the mouth of a slot, and gives the slot a line of its own', () => {
    const offset = offsetClosed(outline([0, 0], [2, 0], [2, 2], [2.5, 2], [2.5, 0], [4, 0], [4, 4], [0, 4]), 0.25, 'outside');
    expect(offset.kind === 'loops' && offset.loops.map((l) => l.path.closed)).toEqual([true, false]);
    const slot = offset.kind === 'loops' && offset.loops[1]!;
    expect(slot && slot.length).toBeCloseTo(1.75, 12);
    expect(offset.missed).toEqual([{ start: 3.75, end: 4.75, length: 1 }]);
  });

  it('joins two chambers by an open line through an exact neck', () => {
    const offset = offsetClosed(outline([0, 0], [2, 0], [2, 0.75], [3, 0.75], [3, 0], [5, 0], [5, 2], [3, 2], [3, 1.25], [2, 1.25], [2, 2], [0, 2]), 0.25, 'inside');
    expect(offset.kind === 'loops' && offset.loops.map((l) => [l.path.closed, Number(l.length.toFixed(6))])).toEqual([[true, 6.285398], [true, 6.285398], [false, 1]]);
  });

  it('gives two loops that touch where two corners stand just a foot apart', () => {
    const offset = offsetClosed(outline([0, 0], [2, 0], [2.5, 0.75], [3, 0], [5, 0], [5, 2], [3, 2], [2.5, 1.25], [2, 2], [0, 2]), 0.25, 'inside');
    expect(offset.kind === 'loops' && offset.loops.map((l) => l.path.closed)).toEqual([true, true]);
    if (offset.kind === 'loops') for (const l of offset.loops) expect(nearestOnPath(l.path, { x: 2.5, y: 1 }).distance).toBeLessThan(1e-9);
  });

  it('lets nothing pass that is narrower by more than rounding slack', () => {
    expect(offsetClosed(outline([0, 0], [4, 0], [4, 0.5 - 1e-7], [0, 0.5 - 1e-7]), 0.25, 'inside').kind).toBe('collapsed');
    expect(only(offsetClosed(outline([0, 0], [4, 0], [4, 0.5 + 1e-6], [0, 0.5 + 1e-6]), 0.25, 'inside')).path.closed).toBe(true);
  });

  it('counts a place that fits the foot and lets it move nowhere as collapsed', () => {
    expect(offsetClosed(circle<'template'>({ x: 0, y: 0 }, 0.25), 0.25, 'inside').kind).toBe('collapsed');
    expect(offsetClosed(outline([0, 0], [0.5, 0], [0.5, 0.5], [0, 0.5]), 0.25, 'inside').kind).toBe('collapsed');
  });
});

describe('pockets, corners and cusps', () => {
  it('keeps the loop inside a pocket with a mouth narrower than the foot, clockwise like the rest', () => {
    const offset = offsetClosed(outline([0, 0], [1.9, 0], [1.9, 1], [1, 1], [1, 3], [3, 3], [3, 1], [2.1, 1], [2.1, 0], [4, 0], [4, 4], [0, 4]), 0.25, 'outside');
    if (offset.kind === 'collapsed') throw new Error('collapsed');
    expect(offset.loops).toHaveLength(2);
    const pocket = offset.loops[1]!;
    // Against the edge's own direction, and all the way round from where the edge is touched first.
    for (const c of pocket.contacts) expect(c.edgeStart).toBeGreaterThanOrEqual(c.edgeEnd);
    expect(pocket.contacts[0]).toMatchObject({ kind: 'corner', edge: 2 });
    expect(pocket.contacts[1]).toMatchObject({ kind: 'corner', edge: 7 });
  });

  it('leaves no corner where arcs and lines run on smoothly, and touches a corner arc of its own radius all at once', () => {
    const rounded = (r: number) =>
      outline([r, 0], [4 - r, 0, QUARTER], [4, r], [4, 3 - r, QUARTER], [4 - r, 3], [r, 3, QUARTER], [0, 3 - r], [0, r, QUARTER]);
    const outside = only(offsetClosed(rounded(0.5), 0.25, 'outside'));
    expect(pieces(outside)).toEqual(['edge 0', 'edge 1', 'edge 2', 'edge 3', 'edge 4', 'edge 5', 'edge 6', 'edge 7']);
    const inside = offsetClosed(rounded(0.25), 0.25, 'inside');
    const loop = only(inside);
    expect(inside.missed).toEqual([]);
    expect(loop.path.vertices).toHaveLength(4);
    expect(loop.contacts.filter((c) => c.start === c.end).map((c) => c.edge)).toEqual([1, 3, 5, 7]);
    expect(offsetClosed(rounded(0.2), 0.25, 'inside').missed).toHaveLength(4);
  });

  it('turns half way round the tip of a cusp, and misses the cusp between abutting half circles', () => {
    // Half circles bulging out: the foot bridges the notch between them. Bulging in: their tips are sharp, and it turns about them.
    const humps = (bulge: number) => outline([0, 0, bulge], [2, 0, bulge], [4, 0], [4, 3], [0, 3]);
    const notch = offsetClosed(humps(1), 0.25, 'outside');
    expect(pieces(only(notch)).filter((p) => p === 'corner 1')).toEqual([]);
    expect(notch.missed).toHaveLength(1);
    const tip = offsetClosed(humps(-1), 0.25, 'outside');
    const turn = only(tip).contacts.find((c) => c.kind === 'corner' && c.edge === 1)!;
    expect(turn.end - turn.start).toBeCloseTo(Math.PI * 0.25, 9);
    expect(tip.missed).toEqual([]);
  });

  it('runs round a circle inside and outside as two half turns', () => {
    expect(only(offsetClosed(circle<'template'>({ x: 0, y: 0 }, 1), 0.25, 'inside')).length).toBeCloseTo(1.5 * Math.PI, 12);
    expect(only(offsetClosed(circle<'template'>({ x: 0, y: 0 }, 1), 0.25, 'outside')).length).toBeCloseTo(2.5 * Math.PI, 12);
  });

  it('passes a step of next to no length', () => {
    for (const step of [1e-9, 1e-8, 1e-7, 1e-6, 1e-5, 1e-4]) {
      const loop = only(offsetClosed(outline([0, 0], [2, 0], [2, -step], [4, -step], [4, 4], [0, 4]), 0.25, 'outside'));
      expect(Math.abs(loop.length - 17.570796327)).toBeLessThan(1e-3);
      const back = only(offsetClosed(outline([0, 0], [2, 0], [2, -step], [4, -step], [4, 4], [0, 4]), 0.25, 'inside'));
      expect(Math.abs(back.length - 14)).toBeLessThan(1e-3);
    }
  });

  it('gives clockwise loops and the same lengths whichever way the edge runs', () => {
    const way = only(offsetClosed(square, 0.25, 'inside'));
    const other = only(offsetClosed(outline([0, 0], [0, 4], [4, 4], [4, 0]), 0.25, 'inside'));
    expect(other.length).toBeCloseTo(way.length, 12);
    expect(other.contacts[0]!.edgeStart).toBeGreaterThan(other.contacts[0]!.edgeEnd);
  });
});
