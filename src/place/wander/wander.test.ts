import { describe, expect, it } from 'vitest';
import { nearestOnPath } from '../../geometry/nearest.ts';
import { pathLength } from '../../geometry/measure.ts';
import { circle, polygon } from '../../geometry/path.ts';
import { type Point, type Vec, heading } from '../../geometry/point.ts';
import { type Pose, carry, inverse, poseOf } from '../../geometry/pose.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import type { TemplateShape } from '../../model/kit/shape.ts';
import type { NeedleLines } from '../../needle/needle-line.ts';
import { needleLines } from '../../needle/needle-lines.ts';
import { STEADY } from '../../num/tolerances.ts';
import { type Random, random } from '../../num/random.ts';
import { featureOf } from '../feature.ts';
import type { Requirement } from '../requirement.ts';
import { gapOfEnds } from './meeting.ts';
import { type Slack, USUAL_SLACK } from './slack.ts';
import { type Stray, type Wander, type WanderSetting, wander } from './wander.ts';

type Laid = Pose<'template', 'area'>;

const mark = (x: number, y: number): Requirement['feature'] => ({ kind: 'point', at: { x, y }, name: 'mark' });
const spot = (x: number, y: number): Requirement['target'] => ({ kind: 'point', at: { x, y }, name: 'spot' });
const line = (at: Point<'area'>, way: Vec<'area'>): Requirement['target'] => ({ kind: 'line', at, way, name: 'line' });
const level = line({ x: 0, y: 0 }, { x: 1, y: 0 });
const upright = line({ x: 0, y: 0 }, { x: 0, y: 1 });

const bar: TemplateShape = { outline: polygon([{ x: -6, y: -1 }, { x: 6, y: -1 }, { x: 6, y: 1 }, { x: -6, y: 1 }]), windows: [], etchings: [] };
const disc: TemplateShape = { outline: circle({ x: 0, y: 0 }, 3.75), windows: [], etchings: [] };

function setting(shape: TemplateShape, pose: Laid = poseOf(0, 0), from = 0, to?: number): WanderSetting {
  const { lines }: NeedleLines = needleLines(shape, 0.5);
  return { pose, shape, needle: lines, sewn: [{ line: lines[0]!, from, to: to ?? lines[0]!.length }] };
}

function held(result: Wander): Extract<Wander, { kind: 'held' }> {
  if (result.kind !== 'held') throw new Error('The needle line slips away.');
  return result;
}

const strays = (result: Wander): readonly Stray[] => held(result).bands.flat();
const noFoot: Slack = { mark: 1 / 32, foot: 0 };

// Closed forms of elementary geometry and of the propagation of error; no published source is needed for them.
describe('how far the needle line wanders', () => {
  it('two marks a length L apart, each off by e: their middle by e / sqrt 2, the turn by e sqrt 2 / L', () => {
    for (const lever of [2, 4, 8]) {
      const holds = [{ feature: mark(-lever / 2, 0), target: level }, { feature: mark(lever / 2, 0), target: level }, { feature: mark(0, 0), target: upright }];
      const e = noFoot.mark;
      for (const { at, away, byMarks } of strays(wander(holds, setting(bar), { slack: noFoot }))) {
        if (Math.abs(away.x) > 1e-9) continue;
        expect(byMarks).toBeCloseTo(Math.hypot(e / Math.SQRT2, (at.x * e * Math.SQRT2) / lever), 12);
      }
    }
  });

  it('an etched line along a line is the same as its two ends on it', () => {
    const ends = [{ feature: mark(-4, 0), target: level }, { feature: mark(4, 0), target: level }, { feature: mark(0, 0), target: upright }];
    const whole: Requirement[] = [{ feature: { kind: 'line', at: { x: 0, y: 0 }, way: { x: 1, y: 0 }, lever: 4, name: 'centre line' }, target: level }, ends[2]!];
    const short: Requirement[] = [{ feature: { kind: 'line', at: { x: 0, y: 0 }, way: { x: 1, y: 0 }, lever: 0.25, name: 'short line' }, target: level }, ends[2]!];
    const shortEnds = [{ feature: mark(-0.25, 0), target: level }, { feature: mark(0.25, 0), target: level }, ends[2]!];
    expect(strays(wander(whole, setting(bar))).map(({ wide }) => wide)).toEqual(strays(wander(ends, setting(bar))).map(({ wide }) => expect.closeTo(wide, 12) as number));
    expect(strays(wander(short, setting(bar))).map(({ wide }) => wide)).toEqual(strays(wander(shortEnds, setting(bar))).map(({ wide }) => expect.closeTo(wide, 12) as number));
  });

  it('strays the more the farther from the middle of the marks, and less on a longer lever', () => {
    const at = (lever: number) => {
      const holds = [{ feature: mark(-lever, 0), target: spot(-lever, 0) }, { feature: mark(lever, 0), target: level }];
      return strays(wander(holds, setting(bar), { slack: noFoot })).filter(({ away }) => away.y < -0.999).sort((a, b) => a.at.x - b.at.x);
    };
    const wide = at(1).filter(({ at: { x } }) => x >= 0).map(({ byMarks }) => byMarks);
    expect(wide.length).toBeGreaterThan(4);
    expect([...wide].sort((a, b) => a - b)).toEqual(wide);
    const ends = [1, 2, 4].map((lever) => at(lever).at(-1)!.byMarks);
    expect(ends[1]!).toBeLessThan(ends[0]!);
    expect(ends[2]!).toBeLessThan(ends[1]!);
  });

  it('a circle with its cross on a place strays by the mark and the foot alone, all round, though it may turn', () => {
    const around = strays(wander([{ feature: mark(0, 0), target: spot(0, 0) }], setting(disc)));
    for (const { wide } of around) expect(wide).toBeCloseTo(Math.hypot(1 / 32, 1 / 64), 12);
  });

  it('a needle line brought through two places keeps to them whatever the foot, and its crest moves by 1 - R / sqrt(R^2 - s^2 / 4)', () => {
    const radius = 4;
    const chord = 6;
    const inward = Math.sqrt(radius * radius - (chord * chord) / 4);
    const pose: Laid = poseOf(0, inward);
    const through: Requirement['feature'] = { kind: 'needle-line', paths: [], name: 'needle line' };
    const where = setting(disc, pose);
    const feature = { ...through, paths: [where.needle[0]!.path] };
    const holds = [{ feature, target: spot(-chord / 2, 0) }, { feature, target: spot(chord / 2, 0) }];
    const all = strays(wander(holds, where, { spacing: pathLength(where.needle[0]!.path) / 720 }));
    const crest = all.reduce((best, place) => (place.at.y < best.at.y ? place : best));
    const ends = all.reduce((best, place) => (Math.hypot(place.at.x + 3, place.at.y) < Math.hypot(best.at.x + 3, best.at.y) ? place : best));
    expect(crest.byFoot).toBeCloseTo((1 / 64) * (1 - radius / inward), 6);
    expect(Math.abs(ends.byFoot)).toBeLessThan(1e-4);
  });

  it('says when the needle line slips away: one mark on one line, a leaf that may turn about its cross', () => {
    expect(wander([{ feature: mark(0, 0), target: level }], setting(bar)).kind).toBe('free');
    expect(wander([{ feature: mark(0, 0), target: spot(0, 0) }], setting(bar)).kind).toBe('free');
    expect(wander([], setting(disc)).kind).toBe('free');
  });

  it('mirrored stretches that meet on their mirror: the foot moves both alike, the marks each for itself', () => {
    const laid = setting(bar, poseOf(-2, 1, 0.5));
    const one = { at: carry(laid.pose, { x: -3, y: 0 }), on: { x: 3, y: 0 } as Point<'template'> };
    const left = strays(wander([{ feature: mark(-3, 0), target: spot(one.at.x, one.at.y) }, { feature: mark(3, 0), target: line(carry(laid.pose, one.on), heading(0.5)) }], laid)).at(0)!;
    const mirrored = { ...left, away: { x: -left.away.x, y: left.away.y } };
    expect(Math.abs(left.away.y)).toBeGreaterThan(0.1);
    expect(left.byFoot).toBeCloseTo(1 / 64, 12);
    expect(gapOfEnds(left, mirrored, { x: 0, y: 1 })).toBeCloseTo((Math.SQRT2 * left.byMarks) / Math.abs(left.away.y), 12);
  });
});

// ---- sampling: the template is lined up again and again with marks that are off, by a search that shares no code with the solver ----

type Miss = (pose: Laid) => number;

/** A normal random number: Box and Muller, "A note on the generation of random normal deviates", 1958. */
function normal(chance: Random): number {
  return Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());
}

/** The pose that makes the sum of squares least, by Gauss and Newton with derivatives taken by differences and Cramer's rule. */
function linedUp(misses: readonly Miss[], from: Laid): Laid {
  let pose = from;
  for (let round = 0; round < 4; round++) {
    const h = 1e-6;
    const value = misses.map((miss) => miss(pose));
    const slope = (['x', 'y', 'angle'] as const).map((key) => misses.map((miss, i) => (miss({ ...pose, [key]: pose[key] + h }) - value[i]!) / h));
    const a = slope.map((p) => slope.map((q) => p.reduce((sum, v, i) => sum + v * q[i]!, 0)));
    const b = slope.map((p) => -p.reduce((sum, v, i) => sum + v * value[i]!, 0));
    const det = (m: readonly (readonly number[])[]) =>
      m[0]![0]! * (m[1]![1]! * m[2]![2]! - m[1]![2]! * m[2]![1]!) - m[0]![1]! * (m[1]![0]! * m[2]![2]! - m[1]![2]! * m[2]![0]!) + m[0]![2]! * (m[1]![0]! * m[2]![1]! - m[1]![1]! * m[2]![0]!);
    const whole = det(a);
    const [x, y, angle] = [0, 1, 2].map((column) => det(a.map((row, i) => row.map((v, j) => (j === column ? b[i]! : v)))) / whole);
    pose = { ...pose, x: pose.x + x!, y: pose.y + y!, angle: pose.angle + angle! };
  }
  return pose;
}

describe('the wander agrees with seeded sampling to 5 per cent, at a sharp point to 12', () => {
  const leaf = shapeOf({ family: 'leaf', sizes: { length: 8, width: 3.5 }, name: 'Leaf', thickness: 0.25, grips: 'none' });
  if (!leaf.ok) throw new Error('The leaf has no shape.');
  const shape = leaf.value;
  const needle = needleLines(shape, 0.5);
  const outer = needle.lines[0]!;

  it.each([11, 12, 13, 14])('seed %i: marks on lines at random, 4000 layings each', (seed) => {
    const chance = random(seed);
    const pose: Laid = poseOf(chance.between(-5, 5), chance.between(-5, 5), chance.between(-3, 3), chance.next() < 0.5);
    // Three to five marks anywhere on the face, each on a line through it in any direction.
    const tried = () => Array.from({ length: chance.whole(3, 5) }, () => ({ at: { x: chance.between(-3.5, 3.5), y: chance.between(-1, 1) }, way: heading<'area'>(chance.between(0, Math.PI)) }));
    const held = (all: ReturnType<typeof tried>) => all.map(({ at, way }): Requirement => ({ feature: mark(at.x, at.y), target: line(carry(pose, at), way) }));
    // Marks that hardly hold turn the template so far that no first-order formula follows; they are not counted as held steadily either.
    let marks = tried();
    for (let result = wander(held(marks), about(pose)); result.kind === 'free' || result.worst > STEADY; result = wander(held(marks), about(pose))) marks = tried();
    const holds = held(marks);
    compare(chance, pose, holds, (error) =>
      marks.map(({ at, way }, i): Miss => {
        const q = carry(pose, at);
        return (tried) => {
          const p = carry(tried, at);
          return -way.y * (p.x - q.x) + way.x * (p.y - q.y) - error[i]!;
        };
      }),
    );
  });

  it('seed 15: a centre line along a line and the needle line through a place', () => {
    const chance = random(15);
    const pose: Laid = poseOf(1, 2, 0.6, true);
    const etched = featureOf('etching:centre-across', shape, needle);
    if (!etched.ok || etched.value.kind !== 'line') throw new Error('No centre line.');
    const { at, way, lever } = etched.value;
    const ends = [-lever, lever].map((t): Point<'template'> => ({ x: at.x + t * way.x, y: at.y + t * way.y }));
    const [p, q] = ends.map((end) => carry(pose, end));
    const along: Vec<'area'> = { x: (q!.x - p!.x) / (2 * lever), y: (q!.y - p!.y) / (2 * lever) };
    const dot = carry(pose, outer.path.vertices[0]!);
    const holds: Requirement[] = [
      { feature: etched.value, target: line(p!, along) },
      { feature: { kind: 'needle-line', paths: [outer.path], name: 'needle line' }, target: spot(dot.x, dot.y) },
    ];
    compare(chance, pose, holds, (error, foot) => [
      ...ends.map((end, i): Miss => (tried) => {
        const now = carry(tried, end);
        return -along.y * (now.x - p!.x) + along.x * (now.y - p!.y) - error[i]!;
      }),
      (tried) => {
        const near = nearestOnPath(outer.path, carry(inverse(tried), dot));
        return signed(carry(inverse(tried), dot), near.point) - foot - error[2]!;
      },
    ]);
  });

  /** Distance from the leaf's needle line, outside it positive; the leaf lies about its own origin, so outside is farther from there. */
  function signed(p: Point<'template'>, near: Point<'template'>): number {
    return Math.sign(Math.hypot(p.x, p.y) - Math.hypot(near.x, near.y)) * Math.hypot(p.x - near.x, p.y - near.y);
  }

  function about(pose: Laid): WanderSetting {
    return { pose, shape, needle: needle.lines, sewn: [{ line: outer, from: 0, to: outer.length * 0.4 }] };
  }

  function compare(chance: Random, pose: Laid, holds: readonly Requirement[], missesOf: (error: readonly number[], foot: number) => readonly Miss[]): void {
    const told = wander(holds, about(pose), { spacing: 100 });
    const places = strays(told);
    const layings = 4000;
    const squares = places.map(() => 0);
    for (let n = 0; n < layings; n++) {
      const error = Array.from({ length: 5 }, () => (normal(chance) * USUAL_SLACK.mark) / 1.96);
      const foot = (normal(chance) * USUAL_SLACK.foot) / 1.96;
      const laid = linedUp(missesOf(error, foot), pose);
      places.forEach(({ at }, i) => {
        const p = carry(inverse(laid), at);
        const off = foot - signed(p, nearestOnPath(outer.path, p).point);
        squares[i]! += off * off;
      });
    }
    expect(places.length).toBeGreaterThan(8);
    places.forEach(({ wide, along }, i) => {
      const sampled = 1.96 * Math.sqrt(squares[i]! / layings);
      // Round the point of the leaf the needle line turns on a radius of 5/16, which bends away from its tangent within the wander itself.
      const atPoint = Math.min(along, Math.abs(outer.length / 2 - along)) < 0.5;
      expect(Math.abs(sampled / wide - 1)).toBeLessThan(atPoint ? 0.12 : 0.05);
    });
  }
});
