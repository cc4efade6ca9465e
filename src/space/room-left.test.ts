import { describe, expect, it } from 'vitest';
import { circle, closedPath, openPath, polygon, straight } from '../geometry/path.ts';
import { distanceToPath } from '../geometry/nearest.ts';
import type { Bounds } from '../geometry/bounds.ts';
import type { Path } from '../geometry/path.ts';
import type { Point } from '../geometry/point.ts';
import { random } from '../num/random.ts';
import { roomLeft } from './room-left.ts';

type Q = Path<'quilt'>;
const around = (half: number, x = 0, y = 0): Bounds => ({ minX: x - half, minY: y - half, maxX: x + half, maxY: y + half });
const at = (x: number, y: number): Point<'quilt'> => ({ x, y });
const room = (paths: readonly Q[], from: Point<'quilt'>, within: Bounds) => roomLeft(paths.map((path) => ({ path })), from, within);

describe('against closed forms', () => {
  it('the incircle of a triangle: radius = area / half the perimeter, centre weighed by the opposite sides (Euclid IV.4)', () => {
    const [a, b, c] = [at(0, 0), at(9, 1), at(2, 7)];
    const side = (p: Point<'quilt'>, q: Point<'quilt'>) => Math.hypot(p.x - q.x, p.y - q.y);
    const [la, lb, lc] = [side(b, c), side(c, a), side(a, b)];
    const area = Math.abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) / 2;
    const found = room([polygon([a, b, c])], at(1, 1), around(12))!;
    expect(found.radius).toBeCloseTo(area / ((la + lb + lc) / 2), 6);
    expect(found.at.x).toBeCloseTo((la * a.x + lb * b.x + lc * c.x) / (la + lb + lc), 4);
    expect(found.at.y).toBeCloseTo((la * a.y + lb * b.y + lc * c.y) / (la + lb + lc), 4);
  });

  it('inside a circle the circle itself, from wherever in it', () => {
    for (const from of [at(2.9, 0), at(-2, -2), at(0.1, 0)]) expect(room([circle(at(0, 0), 3)], from, around(8))!.radius).toBeCloseTo(3, 6);
  });

  it('between two circles and their common tangent: 1/sqrt(r) = 1/sqrt(a) + 1/sqrt(b) (Descartes, with one line)', () => {
    const [a, b] = [4, 1];
    const apart = 2 * Math.sqrt(a * b);
    const paths: Q[] = [circle(at(0, -a), a), circle(at(apart, -b), b), straight(at(-20, 0), at(20, 0))];
    const r = 1 / (1 / Math.sqrt(a) + 1 / Math.sqrt(b)) ** 2;
    const middle = at(2 * Math.sqrt(a * r), -r);
    expect(room(paths, at(middle.x + 0.02, middle.y), { minX: 1.5, minY: -1.2, maxX: 4, maxY: 0 })!.radius).toBeCloseTo(r, 5);
  });

  it('between four coins on a square: diagonal less their radius', () => {
    const coins = [[-2, -2], [2, -2], [2, 2], [-2, 2]].map(([x, y]): Q => circle(at(x!, y!), 1.5));
    expect(room(coins, at(0.3, -0.2), around(1.9))!.radius).toBeCloseTo(2 * Math.SQRT2 - 1.5, 6);
  });

  it('in the lens of two circles: half its width across', () => {
    // Two circles of radius 5, centres 6 apart, cross in a lens 2 * 5 - 6 = 4 wide.
    expect(room([circle(at(-3, 0), 5), circle(at(3, 0), 5)], at(0, 3.2), around(9))!.radius).toBeCloseTo(2, 5);
  });
});

describe('the space', () => {
  const box = polygon([at(0, 0), at(10, 0), at(10, 6), at(0, 6)]);
  const wall = straight(at(4, 0), at(4, 6));

  it('ends at a line, on either side of it', () => {
    expect(room([box, wall], at(1, 3), around(12, 5, 3))!.radius).toBeCloseTo(2, 6);
    expect(room([box, wall], at(9, 1), around(12, 5, 3))!.radius).toBeCloseTo(3, 6);
  });

  it('runs on through a wide gap in a line', () => {
    const doors = straight(at(4, 0), at(4, 3));
    expect(room([box, doors], at(1, 1), around(12, 5, 3))!.radius).toBeCloseTo(3, 6);
  });

  it('is found when it is far smaller than what is searched', () => {
    const tiny = closedPath<'quilt'>([{ x: 3, y: 3, bulge: 0.4 }, { x: 3.4, y: 3, bulge: 0.4 }]);
    const found = room([box, tiny], at(3.2, 3), around(12, 5, 3))!;
    // A lens of two equal arcs of bulge b over a chord c is b * c wide (DXF reference: the bulge is the rise over half the chord).
    expect(found.radius).toBeCloseTo((0.4 * 0.4) / 2, 6);
  });

  it('keeps the distance an edge asks for', () => {
    const found = roomLeft([{ path: box, keep: 0.5 }, { path: wall }], at(8, 3), around(12, 5, 3))!;
    expect(found.radius).toBeCloseTo(2.5, 6);
    expect(roomLeft([{ path: box, keep: 0.5 }], at(9.8, 3), around(12, 5, 3))).toBeUndefined();
  });

  it('says what the circle touches', () => {
    expect([...room([box, wall], at(1, 3), around(12, 5, 3))!.touches].sort()).toEqual([0, 1]);
  });
});

describe('over random lines and arcs (seeds 1 to 30)', () => {
  it('is entered by nothing, and no circle of a fine search in the same space is larger', () => {
    for (let seed = 1; seed <= 30; seed++) {
      const { between, whole } = random(seed);
      const paths: Q[] = [polygon([at(-6, -6), at(6, -6), at(6, 6), at(-6, 6)])];
      for (let i = whole(1, 8); i > 0; i--) {
        paths.push(openPath([{ x: between(-6, 6), y: between(-6, 6), bulge: between(-1, 1) }, { x: between(-6, 6), y: between(-6, 6), bulge: between(-1, 1) }, { x: between(-6, 6), y: between(-6, 6), bulge: 0 }]));
      }
      const from = at(between(-5.9, 5.9), between(-5.9, 5.9));
      const found = room(paths, from, around(6));
      const distanceAt = (p: Point<'quilt'>) => Math.min(...paths.map((path) => distanceToPath(path, p)));
      if (!found) {
        expect(distanceAt(from)).toBeLessThan(1e-6);
        continue;
      }
      expect(Math.abs(distanceAt(found.at) - found.radius), `seed ${seed}`).toBeLessThan(1e-9);
      expect(found.radius, `seed ${seed}`).toBeGreaterThanOrEqual(distanceAt(from) - 1e-9);
      // A walk outward from the place by steps that stay inside the circles already known to be free.
      expect(found.radius, `seed ${seed}`).toBeGreaterThan(walkedRoom(from, distanceAt) - 1 / 64);
    }
  });
});

/** The most room met by walking over a 0.3 in grid, from circle to overlapping circle: a lower bound that shares no code. */
function walkedRoom(from: Point<'quilt'>, distanceAt: (p: Point<'quilt'>) => number): number {
  const step = 0.3;
  const seen = new Set<string>();
  const queue = [[0, 0]];
  let most = 0;
  while (queue.length > 0) {
    const [i, j] = queue.pop()!;
    const p = at(from.x + i! * step, from.y + j! * step);
    const here = distanceAt(p);
    most = Math.max(most, here);
    for (const [di, dj] of [[1, 0], [-1, 0], [0, 1], [0, -1]]) {
      const [ni, nj] = [i! + di!, j! + dj!];
      const q = at(from.x + ni * step, from.y + nj * step);
      if (seen.has(`${ni} ${nj}`) || Math.abs(q.x) > 6 || Math.abs(q.y) > 6 || here + distanceAt(q) < step) continue;
      seen.add(`${ni} ${nj}`);
      queue.push([ni, nj]);
    }
  }
  return most;
}
