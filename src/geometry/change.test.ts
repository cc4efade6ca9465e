import { describe, expect, it } from 'vitest';
import { carryPath, closeUp, joinPaths, lengthened, reversedPath, splitPath, startingAt, stretchOfPath } from './change.ts';
import { pathLength, pointAlong, signedArea } from './measure.ts';
import { type Path, circle, closedPath, endOf, openPath, polygon, startOf, straight } from './path.ts';
import { type Point, point } from './point.ts';
import { poseOf } from './pose.ts';

const p = (x: number, y: number): Point<'area'> => point(x, y);
const square = polygon([p(0, 0), p(4, 0), p(4, 4), p(0, 4)]);
const places = (path: Path<'area'>) => path.vertices.map((v) => [v.x, v.y]);
const bow = openPath<'area'>([{ x: 0, y: 0, bulge: 0.5 }, { x: 2, y: 0, bulge: 0 }, { x: 5, y: 4, bulge: -0.25 }, { x: 8, y: 4, bulge: 0 }]);

describe('run the other way', () => {
  it('an open path starts at its end, a closed one where it did', () => {
    expect(reversedPath(bow).vertices).toEqual([{ x: 8, y: 4, bulge: 0.25 }, { x: 5, y: 4, bulge: 0 }, { x: 2, y: 0, bulge: -0.5 }, { x: 0, y: 0, bulge: 0 }]);
    expect(places(reversedPath(square))).toEqual([[0, 0], [0, 4], [4, 4], [4, 0]]);
    expect(signedArea(reversedPath(square))).toBe(-16);
    expect(reversedPath(reversedPath(bow))).toEqual(bow);
    expect(reversedPath(openPath<'area'>([]))).toEqual(openPath([]));
  });
});

describe('carried to another frame', () => {
  it('moves and turns points, and turns arcs the other way when flipped', () => {
    const there = carryPath(poseOf<'area', 'quilt'>(10, 20, 0, true), bow);
    expect(there.vertices).toEqual([{ x: 10, y: 20, bulge: -0.5 }, { x: 8, y: 20, bulge: 0 }, { x: 5, y: 24, bulge: 0.25 }, { x: 2, y: 24, bulge: 0 }]);
    expect(carryPath(poseOf<'area', 'quilt'>(0, 0, 0, false), square)).toEqual(square);
  });
});

describe('a stretch', () => {
  it('between corners keeps them, and is straight on', () => {
    expect(stretchOfPath(square, 2, 9).vertices).toEqual([{ x: 2, y: 0, bulge: 0 }, { x: 4, y: 0, bulge: 0 }, { x: 4, y: 4, bulge: 0 }, { x: 3, y: 4, bulge: 0 }]);
  });

  it('of an arc keeps its radius: a quarter of a circle', () => {
    const quarter = stretchOfPath(circle(p(0, 0), 2), Math.PI / 2, (3 * Math.PI) / 2);
    expect(quarter.vertices.map((v) => v.bulge)).toEqual([expect.closeTo(Math.tan(Math.PI / 8), 14), 0]);
    expect(pathLength(quarter)).toBeCloseTo(Math.PI, 14);
  });

  it('over the start of a closed path', () => {
    expect(places(stretchOfPath(square, 14, 3))).toEqual([[0, 2], [0, 0], [3, 0]]);
    expect(places(stretchOfPath(square, -2, 3))).toEqual([[0, 2], [0, 0], [3, 0]]);
    expect(pathLength(stretchOfPath(square, 15, 14))).toBe(15);
  });

  it('all round', () => {
    expect(places(stretchOfPath(square, 2, 18))).toEqual([[2, 0], [4, 0], [4, 4], [0, 4], [0, 0], [2, 0]]);
    expect(places(stretchOfPath(square, 0, 16))).toEqual([[0, 0], [4, 0], [4, 4], [0, 4], [0, 0]]);
    expect(places(stretchOfPath(square, 4, 4))).toEqual([[4, 0]]);
  });

  it('on an open path stays within it', () => {
    const line = straight(p(0, 0), p(10, 0));
    expect(places(stretchOfPath(line, -3, 4))).toEqual([[0, 0], [4, 0]]);
    expect(places(stretchOfPath(line, 4, 99))).toEqual([[4, 0], [10, 0]]);
    expect(places(stretchOfPath(line, 7, 4))).toEqual([[7, 0]]);
  });

  it('leaves no slivers beside a vertex', () => {
    expect(places(stretchOfPath(square, 4 - 5e-10, 8 + 5e-10))).toEqual([[4, 0], [4, 4]]);
  });

  it('a whole stretch keeps its bulge to the last digit', () => {
    expect(stretchOfPath(bow, 0, 99)).toEqual(bow);
  });

  it('of a path of no length is its first vertex', () => {
    expect(stretchOfPath(openPath<'area'>([{ x: 1, y: 2, bulge: 0.5 }]), 0, 3).vertices).toEqual([{ x: 1, y: 2, bulge: 0 }]);
    expect(stretchOfPath(openPath<'area'>([]), 0, 3).vertices).toEqual([]);
  });
});

describe('split', () => {
  it('an open path at two places gives three', () => {
    expect(splitPath(straight(p(0, 0), p(10, 0)), [7, 2]).map(places)).toEqual([[[0, 0], [2, 0]], [[2, 0], [7, 0]], [[7, 0], [10, 0]]]);
  });

  it('a closed path at two places gives two, the last over the start', () => {
    expect(splitPath(square, [2, 6]).map(places)).toEqual([[[2, 0], [4, 0], [4, 2]], [[4, 2], [4, 4], [0, 4], [0, 0], [2, 0]]]);
    expect(splitPath(square, [16]).map(places)).toEqual([[[0, 0], [4, 0], [4, 4], [0, 4], [0, 0]]]);
  });

  it('at the ends, twice at one place, or nowhere cuts nothing off', () => {
    const line = straight(p(0, 0), p(10, 0));
    expect(splitPath(line, [0, 10])).toEqual([line]);
    expect(splitPath(line, [])).toEqual([line]);
    expect(splitPath(square, [])).toEqual([square]);
    expect(splitPath(line, [3, 3, 3 + 1e-10])).toHaveLength(2);
  });
});

describe('joined', () => {
  it('end to start, with one vertex where they meet', () => {
    const joined = joinPaths(straight(p(0, 0), p(1, 0)), straight(p(1, 0), p(1, 1)), 0);
    expect(joined).toEqual({ ok: true, value: openPath([{ x: 0, y: 0, bulge: 0 }, { x: 1, y: 0, bulge: 0 }, { x: 1, y: 1, bulge: 0 }]) });
  });

  it('a small gap is closed in its middle', () => {
    const joined = joinPaths(straight(p(0, 0), p(1, 0)), straight(p(1.01, 0), p(2, 1)), 1 / 64);
    expect(joined.ok && places(joined.value)).toEqual([[0, 0], [1.005, 0], [2, 1]]);
  });

  it('refuses ends that are apart, closed paths and empty ones, and says why', () => {
    expect(joinPaths(straight(p(0, 0), p(1, 0)), straight(p(2, 0), p(3, 0)), 1 / 64)).toMatchObject({ ok: false, problem: { kind: 'apart', gap: 1 } });
    expect(joinPaths(square, straight(p(0, 0), p(1, 0)), 1)).toMatchObject({ ok: false, problem: { kind: 'closed' } });
    expect(joinPaths(openPath<'area'>([]), straight(p(0, 0), p(1, 0)), 1)).toMatchObject({ ok: false, problem: { kind: 'empty' } });
  });

  it('closes up', () => {
    const round = stretchOfPath(square, 0, 16);
    expect(closeUp(round, 0)).toEqual({ ok: true, value: square });
    expect(closeUp(straight(p(0, 0), p(1, 0)), 0.5)).toMatchObject({ ok: false, problem: { kind: 'apart', gap: 1 } });
    expect(closeUp(openPath<'area'>([]), 0.5)).toMatchObject({ ok: false, problem: { kind: 'empty' } });
    expect(closeUp(square, 0)).toEqual({ ok: true, value: square });
  });
});

describe('started elsewhere, and lengthened', () => {
  it('a closed path keeps its shape', () => {
    expect(places(startingAt(square, 6))).toEqual([[4, 2], [4, 4], [0, 4], [0, 0], [4, 0]]);
    expect(places(startingAt(square, 8))).toEqual([[4, 4], [0, 4], [0, 0], [4, 0]]);
    expect(startingAt(square, 16)).toBe(square);
    expect(startingAt(bow, 3)).toBe(bow);
    const shape = closedPath<'area'>([{ x: 0, y: 0, bulge: 0.3 }, { x: 5, y: 1, bulge: 0 }, { x: 4, y: 4, bulge: -0.4 }]);
    expect(signedArea(startingAt(shape, 2))).toBeCloseTo(signedArea(shape), 13);
  });

  it('an open path goes straight on beyond its ends', () => {
    const quarter = openPath<'area'>([{ x: 1, y: 0, bulge: Math.tan(Math.PI / 8) }, { x: 0, y: 1, bulge: 0 }]);
    const longer = lengthened(quarter, 2, 3);
    expect(startOf(longer)).toEqual({ x: expect.closeTo(1, 14) as number, y: expect.closeTo(-2, 14) as number });
    expect(endOf(longer)).toEqual({ x: expect.closeTo(-3, 14) as number, y: expect.closeTo(1, 14) as number });
    expect(pathLength(longer)).toBeCloseTo(Math.PI / 2 + 5, 14);
    expect(pointAlong(longer, 2).point).toEqual({ x: 1, y: 0 });
    expect(lengthened(square, 1, 1)).toBe(square);
  });
});
