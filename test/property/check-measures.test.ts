// What the checks measure, held against a plain search: the lines cut into thousands of points, every pair of ends tried.
// The search shares no code with the rules but the stitched lines themselves.

import { describe, expect, it } from 'vitest';
import type { CheckInput } from '../../src/check/input.ts';
import { endsApart } from '../../src/check/rules/ends-apart.ts';
import { keepOut } from '../../src/check/rules/keep-out.ts';
import { nearRawEdge } from '../../src/check/rules/near-raw-edge.ts';
import { nearSeam } from '../../src/check/rules/near-seam.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { nearestOnPath } from '../../src/geometry/nearest.ts';
import type { Point } from '../../src/geometry/point.ts';
import { BUILT_IN_KIT } from '../../src/model/kit/built-in.ts';
import type { Placement, Top } from '../../src/model/plan.ts';
import { type Random, random } from '../../src/num/random.ts';
import { JOIN, MEANT_TO_MEET } from '../../src/num/tolerances.ts';
import { quiltPath } from '../../src/stitch/quilt-path.ts';
import type { StitchedLine } from '../../src/stitch/stitched-line.ts';
import { inputOf, planOf, sheetOf } from '../support/slab-plan.ts';

/** How far the points may miss the line, and the least distance of them the least distance of the line. */
const CHORD = 1e-5;
/** Points along a straight stretch lie so near; the least distance to a circle may lie between two of them. */
const STEP = 0.02;
const RUNS = 20;

describe.each([5, 1905, 31337])('measures from seed %i', (seed) => {
  const rng = random(seed);
  const inputs = Array.from({ length: RUNS }, () => anyInput(rng));

  it('of the raw edge are the least of all points', () => {
    let fired = 0;
    for (const input of inputs) {
      const limit = input.plan.top.clearance.rawEdge;
      const { width, height } = input.top;
      const least = leastOf(input, ({ x, y }) => Math.min(x, y, width - x, height - y));
      const found = nearRawEdge(input);
      if (Math.abs(least - limit) > 2 * CHORD) expect(found.length > 0).toBe(least < limit);
      if (found.length === 0) continue;
      fired += 1;
      expect(Math.abs(Math.min(...found.map(({ measured }) => measured!)) - least)).toBeLessThan(2 * CHORD);
    }
    expect(fired).toBeGreaterThan(2);
    expect(fired).toBeLessThan(RUNS);
  });

  it('of seams are the true distance to the block, less than nothing outside it', () => {
    let fired = 0;
    for (const input of inputs) {
      const limit = input.plan.top.clearance.seam;
      // Blocks of the top are 12 in square, in a border of 2 in.
      const least = leastOf(input, ({ x, y }, line) => {
        const area = input.top.areas.find(({ id }) => id === line.area)!;
        const [dx, dy] = [Math.abs(x - area.frame.x), Math.abs(y - area.frame.y)];
        // Beside a corner, outside both sides, neither side is told.
        return dx > 6 && dy > 6 ? Infinity : 6 - Math.max(dx, dy);
      });
      const found = nearSeam(input);
      if (Math.abs(least - limit) > 2 * CHORD) expect(found.length > 0).toBe(least < limit);
      if (found.length === 0) continue;
      fired += 1;
      // Where a path leaves the strip beside a seam it may do so between two points.
      const measured = Math.min(...found.map((each) => each.measured!));
      expect(measured).toBeLessThan(least + 2 * CHORD);
      expect(measured).toBeGreaterThan(least - (measured > 0 ? 2 * CHORD : 2 * STEP));
    }
    expect(fired).toBeGreaterThan(2);
    expect(fired).toBeLessThan(RUNS);
  });

  it('of keep-outs are the least distance, and nothing inside goes unseen', () => {
    let entered = 0;
    let beside = 0;
    for (const input of inputs) {
      const circle = input.top.keepOuts[0]!;
      // Radius 1 about (5, 6).
      const least = leastOf(input, ({ x, y }) => Math.hypot(x - 5, y - 6) - 1);
      const found = keepOut(input);
      if (Math.abs(least - circle.clearance) > STEP * STEP && Math.abs(least) > STEP * STEP) {
        expect(found.some(({ code }) => code === 'in-keep-out')).toBe(least < 0);
        if (least >= 0) expect(found.length > 0).toBe(least < circle.clearance);
      }
      const near = found.filter(({ code }) => code === 'near-keep-out');
      if (found.length > near.length) entered += 1;
      else if (near.length > 0) {
        beside += 1;
        expect(Math.abs(Math.min(...near.map(({ measured }) => measured!)) - least)).toBeLessThan(STEP * STEP);
      }
    }
    expect(entered).toBeGreaterThan(0);
    expect(beside + entered).toBeLessThan(RUNS);
  });

  it('of ends name every end that meets nothing and lies near another', () => {
    let fired = 0;
    for (const input of inputs) {
      const told = new Set(endsApart(input).flatMap(({ where }) => where.lines ?? []));
      for (const [line, gap] of looseEnds(input)) {
        fired += 1;
        expect(told.has(line.id), `${line.id}, ${gap} in apart`).toBe(true);
      }
      for (const { measured } of endsApart(input)) {
        expect(measured).toBeGreaterThan(JOIN);
        expect(measured).toBeLessThan(MEANT_TO_MEET);
      }
    }
    expect(fired).toBeGreaterThan(0);
  });
});

/** The least of a distance over all points of all lines. */
function leastOf(input: CheckInput, distance: (p: Point<'quilt'>, line: StitchedLine) => number): number {
  let least = Infinity;
  for (const line of input.lines) for (const p of pointsOf(line)) least = Math.min(least, distance(p, line));
  return least;
}

const known = new WeakMap<StitchedLine, readonly Point<'quilt'>[]>();

function pointsOf(line: StitchedLine): readonly Point<'quilt'>[] {
  const before = known.get(line);
  if (before) return before;
  const corners = flatten(quiltPath(line), CHORD);
  const points = corners.flatMap((p, i) => {
    const next = corners[i + 1];
    if (!next) return [p];
    const count = Math.ceil(Math.hypot(next.x - p.x, next.y - p.y) / STEP);
    return Array.from({ length: count }, (_, k) => ({ x: p.x + ((next.x - p.x) * k) / count, y: p.y + ((next.y - p.y) * k) / count }));
  });
  known.set(line, points);
  return points;
}

/** By trying every pair: lines with an end that meets no other end and no other line, and has an end of another line near. */
function looseEnds(input: CheckInput): readonly (readonly [StitchedLine, number])[] {
  const ends = input.lines.flatMap((line) => {
    const path = quiltPath(line);
    if (path.closed) return [];
    return [path.vertices[0]!, path.vertices[path.vertices.length - 1]!].map(({ x, y }) => ({ line, x, y }));
  });
  return ends.flatMap((end) => {
    const gaps = ends.filter((other) => other.line !== end.line).map((other) => Math.hypot(other.x - end.x, other.y - end.y));
    const own = ends.filter((other) => other !== end && other.line === end.line).map((other) => Math.hypot(other.x - end.x, other.y - end.y));
    if (own.some((gap) => gap < MEANT_TO_MEET)) return [];
    const least = Math.min(...gaps);
    if (least <= JOIN + 1e-6 || least >= MEANT_TO_MEET - 1e-6) return [];
    const lands = input.lines.some((other) => other !== end.line && nearestOnPath(quiltPath(other), { x: end.x, y: end.y }).distance <= JOIN + 1e-6);
    return lands ? [] : [[end.line, least] as const];
  });
}

function anyInput(rng: Random): CheckInput {
  const top: Top = {
    blocks: { setting: 'straight', rows: rng.whole(1, 2), columns: 1, size: [12, 12], sashing: 0, cornerstones: false },
    borders: [{ width: 2, corners: 'squares' }],
    drawnAreas: {},
    keepOuts: { k: { name: 'Bird', outline: 'M 4 6 A 1 1 0 0 1 6 6 A 1 1 0 0 1 4 6 Z', clearance: 0.5 } },
    clearance: { rawEdge: rng.between(0.5, 4), seam: rng.between(0.1, 1) },
  };
  const placements = { p: anyPlacement(rng), q: anyPlacement(rng) };
  return inputOf(planOf(top, { s: sheetOf(placements, { repeat: [rng.pick([{ turn: 2 }, { turn: 16 }, { mirror: 'line:vertical-centre' }, { mirrorAndTurn: 4 }])] }) }, { kit: BUILT_IN_KIT }));
}

function anyPlacement(rng: Random): Placement {
  const start = rng.between(0, 4);
  const length = rng.between(0.5, 3);
  return {
    template: rng.pick(['arc-4', 'leaf-4', 'shell-4', 'teardrop-5', 'circle-3', 'soft-square-5']),
    foot: rng.pick(['half-round', 'open-foot']),
    flipped: rng.next() < 0.5,
    pose: { x: rng.between(-4, 4), y: rng.between(-4, 4), angle: rng.between(0, 360) },
    registrations: [],
    passes: { a: { start: { along: start }, stop: { along: start + length }, way: rng.pick(['clockwise', 'counterclockwise'] as const) } },
  };
}
