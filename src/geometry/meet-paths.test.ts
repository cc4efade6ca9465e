import { describe, expect, it } from 'vitest';
import { reversedPath, startingAt } from './change.ts';
import { pathLength } from './measure.ts';
import { meetItself, meetPaths } from './meet-paths.ts';
import { type Path, circle, closedPath, openPath, polygon, straight } from './path.ts';
import { type Point, point } from './point.ts';

const p = (x: number, y: number): Point<'quilt'> => point(x, y);
const chain = (...xy: readonly (readonly [number, number])[]): Path<'quilt'> => openPath(xy.map(([x, y]) => ({ x, y, bulge: 0 })));
const square = polygon([p(0, 0), p(4, 0), p(4, 4), p(0, 4)]);

describe('crossing and touching', () => {
  it('a line through a circle crosses twice, in order along the line', () => {
    // 3-4-5: at distance 3 from the centre of a circle of radius 5 the half chord is 4.
    const meetings = meetPaths(straight(p(-10, 3), p(10, 3)), circle(p(0, 0), 5));
    expect(meetings.map((m) => m.kind)).toEqual(['crossing', 'crossing']);
    expect(meetings.map((m) => (m.kind === 'overlap' ? NaN : m.alongA))).toEqual([expect.closeTo(6, 12), expect.closeTo(14, 12)]);
  });

  it('through a shared vertex is one crossing', () => {
    const meetings = meetPaths(chain([-1, -1], [0, 0], [1, 1]), chain([-1, 1], [0, 0], [1, -1]));
    expect(meetings).toEqual([{ kind: 'crossing', at: { x: 0, y: 0 }, alongA: expect.closeTo(Math.SQRT2, 12) as number, alongB: expect.closeTo(Math.SQRT2, 12) as number }]);
  });

  it('through a vertex of one and the middle of a stretch of the other is one crossing', () => {
    expect(meetPaths(chain([-1, -1], [0, 0], [1, 2]), chain([-5, 0], [5, 0]))).toMatchObject([{ kind: 'crossing', alongB: 5 }]);
  });

  it('a vertex that only reaches the other path is a touching', () => {
    expect(meetPaths(chain([-1, -1], [0, 0], [1, -1]), chain([-5, 0], [5, 0]))).toMatchObject([{ kind: 'touching', alongB: 5 }]);
    expect(meetPaths(chain([-1, -1], [0, 0], [1, -1]), chain([-1, 1], [0, 0], [1, 1]))).toMatchObject([{ kind: 'touching' }]);
    // A wedge inside a wedge.
    expect(meetPaths(chain([-2, -1], [0, 0], [2, -1]), chain([-1, -2], [0, 0], [1, -2]))).toMatchObject([{ kind: 'touching' }]);
  });

  it('an end on the other path is a touching', () => {
    expect(meetPaths(straight(p(2, 2), p(4, 2)), square)).toEqual([{ kind: 'touching', at: { x: 4, y: 2 }, alongA: 2, alongB: 6 }]);
    expect(meetPaths(straight(p(2, 2), p(4, 4)), square)).toMatchObject([{ kind: 'touching', alongB: 8 }]);
  });

  it('at the start of a closed path the meeting is told once, at distance 0', () => {
    expect(meetPaths(chain([-1, -1], [1, 1]), square)).toMatchObject([{ kind: 'crossing', alongB: 0 }]);
    expect(meetPaths(chain([-1, 1], [1, -1]), square)).toMatchObject([{ kind: 'touching', alongB: 0 }]);
  });

  it('tangent circles touch; tangent branches that change sides cross', () => {
    expect(meetPaths(circle(p(0, 0), 2), circle(p(5, 0), 3))).toMatchObject([{ kind: 'touching' }]);
    // Two S-curves through the origin, both along x there, bent ever more: they change sides at the shared vertex.
    const s = (bulge: number) => openPath<'quilt'>([{ x: -2, y: 0, bulge }, { x: 0, y: 0, bulge: -bulge }, { x: 2, y: 0, bulge: 0 }]);
    expect(meetPaths(s(0.5), s(0.25)).find((m) => m.kind !== 'overlap' && Math.abs(m.at.x) < 1e-9)).toMatchObject({ kind: 'crossing' });
    // A bow and a flatter bow, both smooth through the origin, do not.
    const bow = (r: number) => openPath<'quilt'>([{ x: -r, y: -r, bulge: -Math.tan(Math.PI / 8) }, { x: 0, y: 0, bulge: -Math.tan(Math.PI / 8) }, { x: r, y: -r, bulge: 0 }]);
    expect(meetPaths(bow(1), bow(2))).toMatchObject([{ kind: 'touching' }]);
  });
});

describe('shared stretches', () => {
  it('lies along one side of a square', () => {
    expect(meetPaths(straight(p(-1, 0), p(3, 0)), square)).toMatchObject([
      { kind: 'overlap', from: { x: 0, y: 0 }, to: { x: 3, y: 0 }, alongA: [1, 4], alongB: [0, 3], sameWay: true, crosses: false },
    ]);
  });

  it('crosses by way of a shared stretch, or only comes alongside', () => {
    const along = chain([-2, 0], [6, 0]);
    expect(meetPaths(along, chain([0, -1], [1, 0], [3, 0], [4, 1]))).toMatchObject([{ kind: 'overlap', alongA: [3, 5], crosses: true, sameWay: true }]);
    expect(meetPaths(along, chain([0, -1], [1, 0], [3, 0], [4, -1]))).toMatchObject([{ kind: 'overlap', crosses: false }]);
    expect(meetPaths(along, reversedPath(chain([0, -1], [1, 0], [3, 0], [4, 1])))).toMatchObject([{ kind: 'overlap', crosses: true, sameWay: false }]);
  });

  it('goes on round corners as one stretch', () => {
    const meetings = meetPaths(chain([-1, 1], [0, 0], [4, 0], [4, 4], [5, 5]), square);
    expect(meetings).toMatchObject([{ kind: 'overlap', alongB: [0, 8], length: 8, crosses: false }]);
  });

  it('runs over the start of a closed path', () => {
    const turned = startingAt(square, 2);
    expect(meetPaths(turned, chain([0, 1], [0, 0], [3, 0]))).toMatchObject([{ kind: 'overlap', alongA: [13, 1], alongB: [0, 4], length: 4 }]);
    expect(meetPaths(chain([3, 0], [0, 0], [0, 1]), turned)).toMatchObject([{ kind: 'overlap', alongA: [0, 4], alongB: [1, 13], sameWay: false }]);
  });

  it('a closed path has all of itself in common with itself, started anywhere, run either way', () => {
    const shape = closedPath<'quilt'>([{ x: 0, y: 0, bulge: 0.3 }, { x: 5, y: 1, bulge: 0 }, { x: 4, y: 4, bulge: -0.4 }, { x: 1, y: 3, bulge: 0 }]);
    for (const other of [shape, startingAt(shape, 2), reversedPath(shape), startingAt(reversedPath(shape), 7)]) {
      const meetings = meetPaths(shape, other);
      expect(meetings).toHaveLength(1);
      expect(meetings[0]).toMatchObject({ kind: 'overlap', crosses: false, length: expect.closeTo(pathLength(shape), 9) as number });
    }
  });

  it('cocircular arcs share what they have in common', () => {
    const arc = openPath<'quilt'>([{ x: 1, y: 0, bulge: Math.tan(Math.PI / 8) }, { x: 0, y: 1, bulge: 0 }]);
    expect(meetPaths(arc, circle(p(0, 0), 1))).toMatchObject([{ kind: 'overlap', alongA: [0, expect.closeTo(Math.PI / 2, 12)] }]);
  });
});

describe('a path with itself', () => {
  it('a simple one has no meetings', () => {
    expect(meetItself(square)).toEqual([]);
    expect(meetItself(circle(p(1, 1), 2))).toEqual([]);
    expect(meetItself(chain([0, 0], [1, 0], [1, 1]))).toEqual([]);
  });

  it('a bow tie crosses once', () => {
    expect(meetItself(polygon([p(0, 0), p(2, 2), p(2, 0), p(0, 2)]))).toMatchObject([{ kind: 'crossing', at: { x: 1, y: 1 }, alongA: expect.closeTo(Math.SQRT2, 12) as number }]);
  });

  it('a figure of eight through one vertex crosses there; two loops that share it touch', () => {
    expect(meetItself(polygon([p(0, 0), p(2, -1), p(2, 1), p(0, 0), p(-2, -1), p(-2, 1)]))).toMatchObject([{ kind: 'crossing', alongA: 0 }]);
    expect(meetItself(polygon([p(0, 0), p(2, -1), p(2, 1), p(0, 0), p(-2, 1), p(-2, -1)]))).toMatchObject([{ kind: 'touching', alongA: 0 }]);
  });

  it('doubling back is a shared stretch', () => {
    expect(meetItself(chain([0, 0], [3, 0], [1, 0], [1, 1]))).toMatchObject([{ kind: 'overlap', length: 2, sameWay: false }]);
  });
});
