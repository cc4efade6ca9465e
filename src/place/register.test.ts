import { describe, expect, it } from 'vitest';
import { circle, polygon } from '../geometry/path.ts';
import { type Point, type Vec, between, distance, dot, heading, quarterTurned } from '../geometry/point.ts';
import { type Pose, carry, poseOf } from '../geometry/pose.ts';
import { random } from '../num/random.ts';
import { type Registered, register } from './register.ts';
import type { Requirement } from './requirement.ts';

type Laid = Pose<'template', 'area'>;

const outline = polygon<'template'>([{ x: -3, y: -1 }, { x: 3, y: -1 }, { x: 3, y: 1 }, { x: -3, y: 1 }]);
const mark = (x: number, y: number): Requirement['feature'] => ({ kind: 'point', at: { x, y }, name: 'mark' });
const spot = (x: number, y: number): Requirement['target'] => ({ kind: 'point', at: { x, y }, name: 'spot' });
const line = (at: Point<'area'>, way: Vec<'area'>): Requirement['target'] => ({ kind: 'line', at, way, name: 'line' });
const upright = line({ x: 0, y: 0 }, { x: 0, y: 1 });
const level = line({ x: 0, y: 0 }, { x: 1, y: 0 });
const diagonal = line({ x: 0, y: 0 }, { x: Math.SQRT1_2, y: Math.SQRT1_2 });
const roundLine: Requirement['feature'] = { kind: 'needle-line', paths: [circle<'template'>({ x: 0, y: 0 }, 2)], name: 'needle line' };
const askew: Laid = poseOf(0.3, 0.2, 0.1);

function solved(requirements: readonly Requirement[], from: Laid = askew, search: 'nearest' | 'all' = 'all'): Registered {
  return register(requirements, { from, outline, search });
}

// Closed forms by construction with ruler and compass; no published source is needed for them.
describe('registrations', () => {
  it('puts a cross on the centre and a tip on the diagonal: along it, either way round', () => {
    const result = solved([{ feature: mark(0, 0), target: spot(0, 0) }, { feature: mark(3, 0), target: diagonal }]);
    expect(result.kind).toBe('fixed');
    if (result.kind !== 'fixed') return;
    expect(result.poses.map((pose) => pose.angle)).toHaveLength(2);
    expect(result.poses[0]!.angle).toBeCloseTo(Math.PI / 4, 10);
    expect(result.poses[1]!.angle).toBeCloseTo(-(3 * Math.PI) / 4, 10);
  });

  it('brings a round needle line tangent to two lines square to each other, free to turn about its middle', () => {
    const result = solved([{ feature: roundLine, target: upright }, { feature: roundLine, target: level }]);
    expect(result.kind).toBe('free');
    if (result.kind !== 'free') return;
    expect(result.poses[0]!.x).toBeCloseTo(2, 9);
    expect(result.poses[0]!.y).toBeCloseTo(2, 9);
    expect(result.freedom.kind).toBe('turn');
  });

  it('takes a round needle line through two points: its middle on the bisector, sqrt(R^2 - c^2/4) away', () => {
    const result = solved([{ feature: roundLine, target: spot(0, 0) }, { feature: roundLine, target: spot(1, 0) }]);
    expect(result.kind).toBe('free');
    if (result.kind !== 'free') return;
    expect(result.poses[0]!.x).toBeCloseTo(0.5, 9);
    expect(Math.abs(result.poses[0]!.y)).toBeCloseTo(Math.sqrt(4 - 0.25), 9);
  });

  it('lays an etched line along a reference line at a distance to its right: it can still slide along it', () => {
    const etched: Requirement['feature'] = { kind: 'line', at: { x: 1, y: 0.5 }, way: { x: 1, y: 0 }, lever: 2, name: 'centre line' };
    const result = solved([{ feature: etched, target: level, distance: 0.25 }]);
    expect(result.kind).toBe('free');
    if (result.kind !== 'free') return;
    expect(result.freedom).toMatchObject({ kind: 'slide' });
    expect(carry(result.poses[0]!, { x: -2, y: 0.5 }).y).toBeCloseTo(0.25, 9);
    expect(carry(result.poses[0]!, { x: 2, y: 0.5 }).y).toBeCloseTo(0.25, 9);
  });

  it('turns an etched line to an angle and leaves its place free', () => {
    const etched: Requirement['feature'] = { kind: 'line', at: { x: 0, y: 0 }, way: { x: 1, y: 0 }, lever: 2, name: 'centre line' };
    const result = solved([{ feature: etched, target: level, angle: 30, direction: { x: 1, y: 0 } }]);
    expect(result.kind).toBe('free');
    if (result.kind !== 'free') return;
    expect(result.poses[0]!.angle).toBeCloseTo(Math.PI / 6, 10);
    expect(result.freedom.kind).toBe('slide-anyhow');
  });

  it('names what a mark on a point leaves free: a turn about it', () => {
    const result = solved([{ feature: mark(1, 1), target: spot(4, 5) }]);
    expect(result.kind).toBe('free');
    if (result.kind !== 'free' || result.freedom.kind !== 'turn') return expect.fail(`free to ${JSON.stringify(result)}`);
    expect(result.freedom.about.x).toBeCloseTo(4, 9);
    expect(result.freedom.about.y).toBeCloseTo(5, 9);
  });

  it('calls a third mark that agrees overfixed, and one that does not impossible, with the gap shared by both', () => {
    const two: readonly Requirement[] = [{ feature: mark(0, 0), target: spot(0, 0) }, { feature: mark(3, 0), target: spot(0, 3) }];
    expect(solved([...two, { feature: mark(0, 1), target: level }]).kind).toBe('overfixed');
    const result = solved([{ feature: mark(0, 0), target: spot(0, 0) }, { feature: mark(1, 0), target: upright }, { feature: mark(3, 0), target: spot(4, 0) }]);
    expect(result).toMatchObject({ kind: 'impossible', against: [0, 2] });
    if (result.kind === 'impossible') expect(result.gap).toBeCloseTo(0.5, 5);
  });

  it('ranks the poses by how far the template has to move', () => {
    const near = solved([{ feature: mark(0, 0), target: spot(0, 0) }, { feature: mark(3, 0), target: diagonal }], poseOf(0, 0, -2));
    expect(near.kind === 'fixed' && near.poses[0]!.angle).toBeCloseTo(-(3 * Math.PI) / 4, 10);
  });
});

describe('10,000 registrations that can be met, seed 20261125', () => {
  it('are met to a billionth of an inch', () => {
    const { between: pick, next, whole } = random(20261125);
    let worst = 0;
    for (let i = 0; i < 10_000; i++) {
      const truth = poseOf<'template', 'area'>(pick(-10, 10), pick(-10, 10), pick(-Math.PI, Math.PI), next() < 0.5);
      const from = { ...truth, x: truth.x + pick(-0.5, 0.5), y: truth.y + pick(-0.5, 0.5), angle: truth.angle + pick(-0.2, 0.2) };
      const marks = [mark(pick(-3, 0), pick(-1, 1)), mark(pick(1, 3), pick(-1, 1)), mark(pick(-3, 3), pick(-1, 1))] as const;
      const place = (feature: Requirement['feature']) => carry(truth, (feature as { at: Point<'template'> }).at);
      const anyLine = (feature: Requirement['feature']) => line(place(feature), heading(pick(-Math.PI, Math.PI)));
      const requirements: readonly Requirement[] =
        whole(0, 1) === 0
          ? [{ feature: marks[0], target: spot(place(marks[0]).x, place(marks[0]).y) }, { feature: marks[1], target: anyLine(marks[1]) }]
          : marks.map((feature) => ({ feature, target: anyLine(feature) }));
      const result = solved(requirements, from, 'nearest');
      expect(result.kind, `case ${i}`).not.toBe('impossible');
      if (result.kind === 'impossible') continue;
      for (const { feature, target } of requirements) {
        const at = carry(result.poses[0]!, (feature as { at: Point<'template'> }).at);
        const gap = target.kind === 'point' ? distance(at, target.at) : Math.abs(dot(quarterTurned((target as { way: Vec<'area'> }).way), between((target as { at: Point<'area'> }).at, at)));
        worst = Math.max(worst, gap);
      }
    }
    expect(worst).toBeLessThan(2e-9);
  });
});
