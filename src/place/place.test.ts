import { describe, expect, it } from 'vitest';
import { carryPath } from '../geometry/change.ts';
import { openPath, straight } from '../geometry/path.ts';
import { distance } from '../geometry/point.ts';
import { poseOf } from '../geometry/pose.ts';
import { nearestOnPath } from '../geometry/nearest.ts';
import { shapeOf } from '../model/kit/shape-of.ts';
import type { Placement, Registration } from '../model/plan.ts';
import { needleLines } from '../needle/needle-lines.ts';
import { type PlaceSetting, place } from './place.ts';

function settingOf(family: string, sizes: { readonly [size: string]: number }, more: Partial<PlaceSetting> = {}): PlaceSetting {
  const shape = shapeOf({ name: family, family, sizes, thickness: 0.25, grips: 'none' });
  if (!shape.ok) throw new Error(shape.problem.message);
  return { shape: shape.value, needle: needleLines(shape.value, 0.5), lines: [], stitched: new Map(), ...more };
}

const laid = (registrations: readonly Registration[], pose = { x: 0.4, y: -0.3, angle: 8 }): Placement => ({ template: 't', foot: 'f', flipped: false, pose, registrations, passes: {} });

describe('placing on what is sewn', () => {
  it('lays the inner line of a round template along an arc of its own radius: the middles meet', () => {
    // A circle of diameter 6 has its inner line at radius 2 3/4; the sewn arc is a sixth of such a circle about (1, 2).
    const third = Math.PI / 3;
    const at = (turn: number) => ({ x: 1 + 2.75 * Math.cos(turn), y: 2 + 2.75 * Math.sin(turn) });
    const arc = openPath<'area'>([{ ...at(0), bulge: Math.tan(third / 4) }, { ...at(third), bulge: 0 }]);
    const { pose, standing } = place(laid([{ put: 'etching:inner-line', on: 'stitched:a/b' }]), settingOf('circle', { diameter: 6 }, { stitched: new Map([['a/b', arc]]) }));
    expect(pose.x).toBeCloseTo(1, 8);
    expect(pose.y).toBeCloseTo(2, 8);
    expect(standing).toMatchObject({ kind: 'free', freedom: { kind: 'turn' } });
  });

  it('and at a distance to the right of it: on the same side of the arc, the middle goes as far', () => {
    const half = openPath<'area'>([{ x: 2.75, y: 0, bulge: 1 }, { x: -2.75, y: 0, bulge: 0 }]);
    // Clockwise, the right of the arc is its inside: a curve of radius 2 3/4 meets it nowhere else but can lie 1/4 inside along its middle.
    const setting = settingOf('circle', { diameter: 6.5 }, { stitched: new Map([['a/b', half]]) });
    const { pose, standing } = place(laid([{ put: 'etching:inner-line', on: 'stitched:a/b', distance: -0.25 }]), setting);
    // The inner line has radius 3, a quarter of an inch outside the sewn arc all along: the same middle.
    expect(standing.kind).toBe('free');
    expect(distance({ x: pose.x, y: pose.y }, { x: 0, y: 0 })).toBeLessThan(1e-8);
  });

  it('lays an etched line along a sewn line that is straight, and lets it slide', () => {
    const sewn = straight<'area'>({ x: -2, y: 1 }, { x: 2, y: 1 });
    const { pose, standing } = place(laid([{ put: 'etching:centre-across', on: 'stitched:a/b' }]), settingOf('leaf', { length: 6, width: 2.5 }, { stitched: new Map([['a/b', sewn]]) }));
    expect(pose.y).toBeCloseTo(1, 9);
    expect(pose.angle).toBeCloseTo(0, 9);
    expect(standing).toMatchObject({ kind: 'free', freedom: { kind: 'slide' } });
  });
});

describe('a foot whose needle is not in its middle', () => {
  it('puts where the needle falls, not the middle of the foot, through the place', () => {
    const needleOffset = { x: -1 / 32, y: 1 / 64 };
    const setting = settingOf('circle', { diameter: 6 }, { needleOffset });
    const { pose } = place(laid([{ put: 'needle-line', on: 'point:1,2' }]), setting);
    const path = carryPath(pose, setting.needle.lines[0]!.path);
    const sewn = carryPath(poseOf<'area', 'area'>(needleOffset.x, needleOffset.y), path);
    expect(nearestOnPath(sewn, { x: 1, y: 2 }).distance).toBeLessThan(1e-8);
    expect(nearestOnPath(path, { x: 1, y: 2 }).distance).toBeGreaterThan(1e-3);
  });
});

describe('what has become impossible', () => {
  it('keeps the pose it last had', () => {
    const far = laid([{ put: 'etching:cross', on: 'point:0,0' }, { put: 'tip:1', on: 'point:40,0' }]);
    const { pose, standing } = place(far, settingOf('leaf', { length: 6, width: 2.5 }));
    expect(pose).toMatchObject({ x: 0.4, y: -0.3 });
    expect(standing).toMatchObject({ kind: 'impossible', against: [0, 1] });
    // The tip lies 3 in from the cross: 37 in are missing, shared by both.
    expect(standing.kind === 'impossible' && standing.gap).toBeCloseTo(18.5, 3);
  });
});
