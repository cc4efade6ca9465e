// Meetings of segments and of paths, checked against what does not depend on how they are found.

import { describe, expect, it } from 'vitest';
import { random } from '../../src/num/random.ts';
import { SAME_POINT } from '../../src/num/tolerances.ts';
import { carryPath, reversedPath, startingAt } from '../../src/geometry/change.ts';
import { whereIs } from '../../src/geometry/inside.ts';
import { pathLength, pointAlong } from '../../src/geometry/measure.ts';
import { type PathMeeting, meetItself, meetPaths } from '../../src/geometry/meet-paths.ts';
import { type SegmentMeeting, meetSegments } from '../../src/geometry/meet-segments.ts';
import { distanceToPath } from '../../src/geometry/nearest.ts';
import { type Path, pathOfSegments } from '../../src/geometry/path.ts';
import { type Frame, type Point, distance, moved, point, unit } from '../../src/geometry/point.ts';
import { type Segment, arcByBulge, lineFrom, nearestOnSegment, pointOnSegment, reversedSegment, segmentLength, tangentOnSegment } from '../../src/geometry/segment.ts';
import { gridOutline, gridPath, randomPath, randomPose, randomSegment } from './geometry-random.ts';

const SEEDS = [1, 2, 3];

type Met = SegmentMeeting<'area'>;

/** How far the worst of the meetings' places is from where its parts say it is. */
function worstPlace(a: Segment<'area'>, b: Segment<'area'>, meetings: readonly Met[]): number {
  const gaps = meetings.flatMap((m) =>
    m.kind === 'overlap'
      ? [0, 1].flatMap((end) => [
          distance(end ? m.to : m.from, pointOnSegment(a, m.partsA[end]!)),
          distance(end ? m.to : m.from, pointOnSegment(b, m.partsB[end]!)),
        ])
      : [distance(m.at, pointOnSegment(a, m.partA)), distance(m.at, pointOnSegment(b, m.partB))],
  );
  return Math.max(0, ...gaps);
}

const places = (meetings: readonly Met[]) =>
  meetings.flatMap((m) => (m.kind === 'overlap' ? [m.from, m.to] : [m.at])).sort((p, q) => p.x - q.x || p.y - q.y);

/** Two segments made to meet badly: end to end, tangent, nearly tangent, nearly the same. */
function awkwardPair(r: ReturnType<typeof random>): [Segment<'area'>, Segment<'area'>] {
  const a = randomSegment(r);
  const part = r.pick([0, 1, r.next()]);
  const at = pointOnSegment(a, part);
  const tangent = tangentOnSegment(a, part);
  const slip = r.pick([0, 1e-12, 1e-10, 3e-9, 1e-7, 1e-4]) * r.pick([-1, 1]);
  const start = moved(at, { x: -tangent.y, y: tangent.x }, slip);
  const length = 10 ** r.between(-2, 1);
  const ahead = moved(start, tangent, length);
  const b = r.pick([
    lineFrom(start, ahead),
    lineFrom(moved(start, tangent, -length), ahead),
    arcByBulge(start, ahead, r.between(-1, 1)),
    lineFrom(start, moved(start, unit({ x: r.between(-1, 1), y: r.between(-1, 1) }), length)),
    reversedSegment(a),
  ]);
  return [a, b];
}

/** The circle or line of a segment as a plain function that changes sign across it, and whether a place on it is on the segment: only schoolbook formulas. */
function plain(s: Segment<'area'>): { readonly side: (p: Point<'area'>) => number; readonly holds: (p: Point<'area'>) => boolean } {
  if (s.kind === 'line') {
    const [dx, dy] = [s.to.x - s.from.x, s.to.y - s.from.y];
    return {
      side: (p) => dx * (p.y - s.from.y) - dy * (p.x - s.from.x),
      holds: (p) => (p.x - s.from.x) * dx + (p.y - s.from.y) * dy >= 0 && (p.x - s.to.x) * dx + (p.y - s.to.y) * dy <= 0,
    };
  }
  return {
    side: (p) => Math.hypot(p.x - s.centre.x, p.y - s.centre.y) - s.radius,
    holds: (p) => {
      const turn = (Math.atan2(p.y - s.centre.y, p.x - s.centre.x) - s.start) * Math.sign(s.sweep);
      return (turn + 8 * Math.PI) % (2 * Math.PI) <= Math.abs(s.sweep);
    },
  };
}

/** Crossings found by walking along `a` and halving wherever the side of `b` changes. */
function crossingsByWalking(a: Segment<'area'>, b: Segment<'area'>): readonly Point<'area'>[] {
  const { side, holds } = plain(b);
  const steps = 600;
  const found: Point<'area'>[] = [];
  for (let i = 0; i < steps; i++) {
    let [low, high] = [i / steps, (i + 1) / steps];
    const before = Math.sign(side(pointOnSegment(a, low)));
    if (before === Math.sign(side(pointOnSegment(a, high)))) continue;
    for (let n = 0; n < 60; n++) {
      const middle = (low + high) / 2;
      if (Math.sign(side(pointOnSegment(a, middle))) === before) low = middle;
      else high = middle;
    }
    const at = pointOnSegment(a, high);
    if (holds(at)) found.push(at);
  }
  return found;
}

describe.each(SEEDS)('two segments, seed %i', (seed) => {
  it('meetings lie on both, at the parts told, and are the same the other way about', () => {
    const r = random(seed);
    for (let i = 0; i < 800; i++) {
      const [a, b] = r.next() < 0.4 ? [randomSegment(r), randomSegment(r)] : awkwardPair(r);
      const there = meetSegments(a, b);
      const back = meetSegments(b, a);
      expect(worstPlace(a, b, there)).toBeLessThan(3 * SAME_POINT);
      expect(back.map((m) => m.kind).sort()).toEqual(there.map((m) => m.kind).sort());
      const [one, other] = [places(there), places(back)];
      // Ends within rounding slack stand for each other; along a shallow contact the place itself is only that sure.
      const near = (p: Point<'area'>) => Math.min(...other.map((q) => distance(p, q)));
      expect(Math.max(0, ...one.map(near))).toBeLessThan(2e-4);
      for (const m of there) {
        const parts = m.kind === 'overlap' ? [...m.partsA, ...m.partsB] : [m.partA, m.partB];
        if (!parts.every((part) => part >= 0 && part <= 1)) expect(parts).toBe('within 0 and 1');
      }
      const reversed = meetSegments(reversedSegment(a), b);
      expect(reversed.map((m) => m.kind).sort()).toEqual(there.map((m) => m.kind).sort());
    }
  });

  it('crossings are all found, as walking along one and watching the side of the other finds them', () => {
    const r = random(seed + 50);
    let crossings = 0;
    for (let i = 0; i < 500; i++) {
      const [a, b] = [randomSegment(r), randomSegment(r)];
      const walked = crossingsByWalking(a, b);
      const told = meetSegments(a, b);
      const isSure = (p: Point<'area'>) => Math.min(...[a.from, a.to, b.from, b.to].map((end) => distance(p, end))) > 1e-3;
      for (const p of walked.filter(isSure)) {
        expect(Math.min(Infinity, ...places(told).map((q) => distance(p, q)))).toBeLessThan(1e-5);
        crossings++;
      }
      // Two crossings within one step of the walk escape it: those are only checked to lie on both.
      for (const m of told) if (m.kind === 'crossing') expect(nearestOnSegment(a, m.at).distance + nearestOnSegment(b, m.at).distance).toBeLessThan(1e-12);
    }
    expect(crossings).toBeGreaterThan(20);
  });

  it('a segment shares all of itself with itself, and with itself run backwards, and ends where it is cut', () => {
    const r = random(seed + 60);
    for (let i = 0; i < 200; i++) {
      const s = randomSegment(r);
      expect(meetSegments(s, s)).toMatchObject([{ kind: 'overlap', partsA: [0, 1], partsB: [0, 1] }]);
      expect(meetSegments(s, reversedSegment(s))).toMatchObject([{ kind: 'overlap', partsA: [0, 1], partsB: [1, 0] }]);
      const length = segmentLength(s);
      expect(length).toBeGreaterThan(0);
    }
  });
});

const summary = <F extends Frame>(meetings: readonly PathMeeting<F>[]) =>
  meetings.map((m) => (m.kind === 'overlap' ? `overlap ${m.length.toFixed(6)} ${m.crosses}` : m.kind)).sort();

describe.each(SEEDS)('two paths, seed %i', (seed) => {
  it('on a grid, where vertices and stretches fall on each other: the same meetings either way about, from any start, in any pose', () => {
    const r = random(seed + 100);
    const kinds = new Map<string, number>();
    for (let i = 0; i < 200; i++) {
      const a = gridPath(r, r.next() < 0.6);
      const b = gridPath(r, r.next() < 0.6);
      if (doublesBack(a) || doublesBack(b)) continue;
      const told = meetPaths(a, b);
      for (const m of told) kinds.set(m.kind, (kinds.get(m.kind) ?? 0) + 1);
      const same = summary(told);
      const pose = randomPose(r);
      const whole = r.whole(0, 20);
      const images = {
        about: summary(meetPaths(b, a)),
        reversedA: summary(meetPaths(reversedPath(a), b)),
        reversedB: summary(meetPaths(a, reversedPath(b))),
        shifted: summary(meetPaths(startingAt(a, whole), startingAt(b, r.between(0, 9)))),
        carried: summary(meetPaths(carryPath(pose, a), carryPath(pose, b))),
      };
      expect({ a, b, ...images }).toEqual({ a, b, about: same, reversedA: same, reversedB: same, shifted: same, carried: same });
      const gaps = told.flatMap((m) =>
        m.kind === 'overlap'
          ? [0, 1].flatMap((end) => [distance(end ? m.to : m.from, pointAlong(a, m.alongA[end]!).point), distance(end ? m.to : m.from, pointAlong(b, m.alongB[end]!).point)])
          : [distance(m.at, pointAlong(a, m.alongA).point), distance(m.at, pointAlong(b, m.alongB).point)],
      );
      expect(Math.max(0, ...gaps)).toBeLessThan(3 * SAME_POINT);
    }
    expect([...kinds.keys()].sort()).toEqual(['crossing', 'overlap', 'touching']);
    expect(Math.min(...kinds.values())).toBeGreaterThan(10);
  });

  it('going along a path, an outline is entered and left at crossings and nowhere else', () => {
    const r = random(seed + 200);
    let checked = 0;
    for (let i = 0; i < 3000 && checked < 200; i++) {
      const outline = gridOutline(r);
      const path = gridPath(r, false);
      if (!outline || doublesBack(path)) continue;
      checked++;
      const told = meetPaths(path, outline);
      // What is shared runs between events, too, so every stretch between events is wholly in, out or on.
      const events = told.flatMap((m) => (m.kind === 'overlap' ? m.alongA.map((along, end) => ({ along, flips: end === 1 && m.crosses })) : [{ along: m.alongA, flips: m.kind === 'crossing' }]));
      const cuts = [...new Set([0, pathLength(path), ...events.map((e) => e.along)])].sort((x, y) => x - y).filter((d, j, all) => j === 0 || d - all[j - 1]! > 4 * SAME_POINT);
      const stretches = cuts.slice(1).map((to, j) => ({ from: cuts[j]!, to, where: whereIs(outline, pointAlong(path, (cuts[j]! + to) / 2).point) }));
      let last: string | undefined;
      let from = 0;
      for (const s of stretches) {
        if (s.where === 'on') continue;
        if (last !== undefined) {
          const flips = events.filter((e) => e.flips && e.along > from - 4 * SAME_POINT && e.along < s.from + 4 * SAME_POINT).length;
          expect({ outline, path, at: s.from, changes: last !== s.where }).toEqual({ outline, path, at: s.from, changes: flips % 2 === 1 });
        }
        last = s.where;
        from = s.to;
      }
    }
    expect(checked).toBe(200);
  });

  it('two closed paths cross an even number of times', () => {
    const r = random(seed + 300);
    for (let i = 0; i < 120; i++) {
      const [a, b] = [randomPath(r, true), randomPath(r, true)];
      const crossings = meetPaths(a, b).filter((m) => m.kind === 'crossing' || (m.kind === 'overlap' && m.crosses)).length;
      expect(crossings % 2).toBe(0);
    }
  });

  it('long paths, by way of the index, meet as their segments do', () => {
    const r = random(seed + 400);
    const long = (): Path<'area'> => ({ closed: false, vertices: Array.from({ length: 120 }, (_, i) => ({ x: i / 10 + r.between(-0.3, 0.3), y: r.between(-1, 1), bulge: r.between(-0.4, 0.4) })) });
    for (let i = 0; i < 10; i++) {
      const [a, b] = [long(), long()];
      const told = meetPaths(a, b);
      const reference = a.vertices.slice(0, -1).flatMap((_, j) => meetPaths(piece(a, j), b));
      expect(told.length).toBe(reference.length);
      for (const m of told) if (m.kind !== 'overlap') expect(distanceToPath(a, m.at) + distanceToPath(b, m.at)).toBeLessThan(1e-12);
    }
  });

  it('a path meets itself where its parts meet each other', () => {
    const r = random(seed + 500);
    for (let i = 0; i < 80; i++) {
      const path = randomPath(r, false);
      const told = meetItself(path).filter((m) => m.kind === 'crossing').length;
      let reference = 0;
      for (let j = 0; j < path.vertices.length - 1; j++) {
        for (let k = j + 1; k < path.vertices.length - 1; k++) reference += meetPaths(piece(path, j), piece(path, k)).filter((m) => m.kind === 'crossing').length;
      }
      expect(told).toBe(reference);
    }
  });
});

/** Of a path that doubles back on itself neither side is a side. */
function doublesBack(path: Path<'area'>): boolean {
  return meetItself(path).some((m) => m.kind === 'overlap');
}

function piece(path: Path<'area'>, i: number): Path<'area'> {
  const [a, b] = [path.vertices[i]!, path.vertices[i + 1]!];
  return pathOfSegments([a.bulge === 0 ? lineFrom(point(a.x, a.y), point(b.x, b.y)) : arcByBulge(point(a.x, a.y), point(b.x, b.y), a.bulge)], false);
}
