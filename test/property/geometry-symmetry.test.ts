// Every measure under symmetry: a path run the other way, started elsewhere, mirrored, moved or turned is as long, goes round as
// much and reaches as far.

import { describe, expect, it } from 'vitest';
import { random } from '../../src/num/random.ts';
import { SAME_POINT } from '../../src/num/tolerances.ts';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { carryPath, closeUp, joinPaths, reversedPath, splitPath, startingAt, stretchOfPath } from '../../src/geometry/change.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { whereIs } from '../../src/geometry/inside.ts';
import { pathLength, pointAlong, signedArea } from '../../src/geometry/measure.ts';
import { nearestIndex, nearestOnPath } from '../../src/geometry/nearest.ts';
import { type Path, endOf, startOf } from '../../src/geometry/path.ts';
import { distance } from '../../src/geometry/point.ts';
import { carry, inverse, poseOf } from '../../src/geometry/pose.ts';
import { tidied } from '../../src/geometry/tidy.ts';
import { randomPath, randomPoint, randomPose } from './geometry-random.ts';

const SEEDS = [1, 2, 3, 4];
const ROUNDS = 60;
/** Rounding that builds up over some tens of operations on lengths of some tens of inches. */
const DIGITS = 10;

function expectSameShape(one: Path<'area'>, other: Path<'area'>) {
  expect(pathLength(other)).toBeCloseTo(pathLength(one), DIGITS);
  const along = pathLength(one) / 7;
  // Not at the very end, which on a closed path is the start to within rounding.
  const gaps = [0, 1, 2, 3, 4, 5, 6].map((i) => distance(pointAlong(one, i * along).point, pointAlong(other, i * along).point));
  expect(Math.max(...gaps)).toBeLessThan(1e-10);
}

describe.each(SEEDS)('seed %i', (seed) => {
  it('length, area and extents under reversal, another start, mirroring, moving and turning', () => {
    const r = random(seed);
    for (let i = 0; i < ROUNDS; i++) {
      const path = randomPath(r, true);
      const [length, area, b] = [pathLength(path), signedArea(path), boundsOf(path)];
      const back = reversedPath(path);
      expect([pathLength(back), signedArea(back)]).toEqual([expect.closeTo(length, DIGITS), expect.closeTo(-area, DIGITS)]);
      const near = (minX: number, minY: number, maxX: number, maxY: number) => ({ minX: expect.closeTo(minX, DIGITS) as number, minY: expect.closeTo(minY, DIGITS) as number, maxX: expect.closeTo(maxX, DIGITS) as number, maxY: expect.closeTo(maxY, DIGITS) as number });
      expect(boundsOf(back)).toEqual(near(b.minX, b.minY, b.maxX, b.maxY));
      const shifted = startingAt(path, r.between(-length, 2 * length));
      expect([pathLength(shifted), signedArea(shifted)]).toEqual([expect.closeTo(length, DIGITS), expect.closeTo(area, DIGITS)]);
      expect(boundsOf(shifted)).toEqual(near(b.minX, b.minY, b.maxX, b.maxY));
      const moved = carryPath(poseOf<'area', 'quilt'>(3, -4), path);
      expect(boundsOf(moved)).toEqual(near(b.minX + 3, b.minY - 4, b.maxX + 3, b.maxY - 4));
      const turned = carryPath(poseOf<'area', 'quilt'>(0, 0, Math.PI / 2), path);
      expect(boundsOf(turned)).toEqual(near(-b.maxY, b.minX, -b.minY, b.maxX));
      const mirrored = carryPath(poseOf<'area', 'quilt'>(0, 0, 0, true), path);
      expect(boundsOf(mirrored)).toEqual(near(-b.maxX, b.minY, -b.minX, b.maxY));
      const pose = randomPose(r);
      const anywhere = carryPath(pose, path);
      expect([pathLength(anywhere), signedArea(anywhere)]).toEqual([expect.closeTo(length, DIGITS), expect.closeTo(pose.flipped ? -area : area, 8)]);
    }
  });

  it('a path carried and carried back is the same, and so is every place on it', () => {
    const r = random(seed + 100);
    for (let i = 0; i < ROUNDS; i++) {
      const path = randomPath(r, r.next() < 0.5);
      const pose = randomPose(r);
      const there = carryPath(pose, path);
      expectSameShape(path, carryPath(inverse(pose), there));
      const along = r.between(0, pathLength(path));
      expect(distance(carry(pose, pointAlong(path, along).point), pointAlong(there, along).point)).toBeLessThan(1e-10);
    }
  });

  it('extents hold the path and are reached by it', () => {
    const r = random(seed + 200);
    for (let i = 0; i < ROUNDS; i++) {
      const path = randomPath(r, r.next() < 0.5);
      const b = boundsOf(path);
      const points = flatten(path, 1e-3);
      expect(Math.min(...points.map((p) => Math.min(p.x - b.minX, p.y - b.minY, b.maxX - p.x, b.maxY - p.y)))).toBeGreaterThan(-1e-12);
      expect(Math.min(...points.map((p) => p.x)) - b.minX).toBeLessThan(1e-3);
      expect(b.maxY - Math.max(...points.map((p) => p.y))).toBeLessThan(1e-3);
    }
  });

  it('split and joined again gives the path back', () => {
    const r = random(seed + 300);
    for (let i = 0; i < ROUNDS; i++) {
      const path = randomPath(r, r.next() < 0.5);
      const length = pathLength(path);
      const cuts = Array.from({ length: r.whole(1, 5) }, () => r.between(0, length));
      const pieces = splitPath(path, cuts);
      expect(pieces.reduce((sum, piece) => sum + pathLength(piece), 0)).toBeCloseTo(length, DIGITS);
      let whole = pieces[0]!;
      for (const piece of pieces.slice(1)) {
        const joined = joinPaths(whole, piece, SAME_POINT);
        expect(joined.ok).toBe(true);
        if (joined.ok) whole = joined.value;
      }
      if (!path.closed) {
        expectSameShape(path, whole);
        expect(tidied(whole).vertices).toHaveLength(tidied(path).vertices.length);
        continue;
      }
      const round = closeUp(whole, SAME_POINT);
      expect(round.ok).toBe(true);
      if (!round.ok) continue;
      const first = [...cuts].sort((a, b) => a - b)[0]!;
      expectSameShape(startingAt(path, first), round.value);
      expect(signedArea(round.value)).toBeCloseTo(signedArea(path), DIGITS);
    }
  });

  it('a stretch starts, ends and measures as asked; run backwards it is the stretch of the path run backwards', () => {
    const r = random(seed + 400);
    for (let i = 0; i < ROUNDS; i++) {
      const path = randomPath(r, true);
      const length = pathLength(path);
      const [from, to] = [r.between(0, length), r.between(0, length)];
      const stretch = stretchOfPath(path, from, to);
      expect(pathLength(stretch)).toBeCloseTo(to >= from ? to - from : to - from + length, 8);
      expect(distance(startOf(stretch)!, pointAlong(path, from).point)).toBeLessThan(2 * SAME_POINT);
      expect(distance(endOf(stretch)!, pointAlong(path, to).point)).toBeLessThan(2 * SAME_POINT);
      expectSameShape(reversedPath(stretch), stretchOfPath(reversedPath(path), length - to, length - from));
    }
  });

  it('the place along and the nearest place undo each other', () => {
    const r = random(seed + 500);
    for (let i = 0; i < ROUNDS; i++) {
      const path = randomPath(r, r.next() < 0.5);
      const along = r.between(0, pathLength(path));
      const place = pointAlong(path, along);
      const near = nearestOnPath(path, place.point);
      expect(near.distance).toBeLessThan(1e-12);
      // A path that crosses itself may be at the place at another time, too.
      expect(distance(pointAlong(path, near.along).point, place.point)).toBeLessThan(1e-12);
      const any = randomPoint(r, 20);
      const nearest = nearestOnPath(path, any);
      expect(distance(nearest.point, any)).toBeCloseTo(nearest.distance, 12);
      expect(distance(pointAlong(path, nearest.along).point, nearest.point)).toBeLessThan(1e-12);
      expect(Math.min(...flatten(path, 0.01).map((p) => distance(p, any)))).toBeGreaterThan(nearest.distance - 1e-12);
      expect(nearestIndex([path])(any)).toEqual({ ...nearest, path: 0 });
    }
  });

  it('inside stays inside under every symmetry', () => {
    const r = random(seed + 600);
    for (let i = 0; i < ROUNDS; i++) {
      const path = randomPath(r, true);
      const pose = randomPose(r);
      for (let j = 0; j < 4; j++) {
        const p = randomPoint(r, 11);
        const where = whereIs(path, p);
        const images = [whereIs(reversedPath(path), p), whereIs(startingAt(path, r.between(0, pathLength(path))), p), whereIs(carryPath(pose, path), carry(pose, p))];
        expect(images).toEqual([where, where, where]);
      }
    }
  });
});
