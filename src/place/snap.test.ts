import { describe, expect, it } from 'vitest';
import { type Pose, carry, poseOf } from '../geometry/pose.ts';
import { straight } from '../geometry/path.ts';
import { shapeOf } from '../model/kit/shape-of.ts';
import { needleLines } from '../needle/needle-lines.ts';
import { layTop } from '../top/lay-top.ts';
import type { PlaceSetting } from './place.ts';
import { nearThings } from './near.ts';
import { snap } from './snap.ts';

const block = layTop({
  blocks: { setting: 'straight', rows: 1, columns: 1, size: [12, 12], sashing: 0, cornerstones: false },
  borders: [],
  drawnAreas: {},
  keepOuts: {},
  clearance: { rawEdge: 0.5, seam: 0.125 },
}).areas[0]!;

function setting(family: string, sizes: { readonly [size: string]: number }, stitched: PlaceSetting['stitched'] = new Map()): PlaceSetting {
  const shape = shapeOf({ name: family, family, sizes, thickness: 0.25, grips: 'none' });
  if (!shape.ok) throw new Error(shape.problem.message);
  return { shape: shape.value, needle: needleLines(shape.value, 0.5), lines: block.referenceLines, stitched };
}

const leaf = setting('leaf', { length: 6, width: 2.5 });
const laid = (x: number, y: number, degrees: number): Pose<'template', 'area'> => poseOf(x, y, (degrees * Math.PI) / 180);

/** Nothing of the leaf is within an eighth of an inch of anything. */
const OPEN = laid(1.5, -1.8, 10);

describe('what lies near', () => {
  it('is nothing in the open', () => {
    expect(nearThings(leaf, OPEN, 0.125)).toEqual([]);
  });

  it('is the cross and the crossing of the centre lines before the cross and either line', () => {
    const [first] = nearThings(leaf, laid(0.05, 0.04, 17), 0.125);
    expect(first?.registration).toEqual({ put: 'etching:cross', on: 'centre' });
    expect(first?.distance).toBeCloseTo(Math.hypot(0.05, 0.04), 12);
  });
});

describe('the pull', () => {
  it('brings the cross onto the centre and turns the centre line onto the diagonal, and then holds the template', () => {
    const { pose, made } = snap(leaf, [], laid(0.05, 0.04, 44), 0.125);
    expect(made.map((near) => near.registration)).toContainEqual({ put: 'etching:cross', on: 'centre' });
    expect(carry(pose, { x: 0, y: 0 })).toEqual({ x: expect.closeTo(0, 9) as number, y: expect.closeTo(0, 9) as number });
    expect(pose.angle).toBeCloseTo(Math.PI / 4, 9);
  });

  it('keeps what the template is held by, and slides it no other way', () => {
    const held = [{ put: 'etching:centre-across', on: 'line:diagonal-down' }];
    const { pose } = snap(leaf, held, laid(2.6, 2.2, 45), 0.01);
    expect(pose.x).toBeCloseTo(pose.y, 9);
    expect(pose.x).toBeCloseTo(2.4, 9);
  });

  it('pulls a tip onto the end of a stitched line', () => {
    const stitched = new Map([['a/b', straight<'area'>({ x: -5, y: -4 }, { x: -1, y: -2 })]]);
    const near = setting('leaf', { length: 6, width: 2.5 }, stitched);
    const { made } = snap(near, [], laid(2.05, -2.03, 1), 0.125);
    expect(made[0]?.registration.on).toBe('end:a/b/stop');
  });

  it('leaves the template where the hand has it when nothing is near', () => {
    const wished = OPEN;
    expect(snap(leaf, [], wished, 0.125)).toEqual({ pose: wished, made: [] });
  });

  it('moves it no farther than it reaches', () => {
    for (let i = 0; i < 60; i++) {
      const wished = laid(-3 + i * 0.1, 2.5 - i * 0.07, i * 3);
      const { pose } = snap(leaf, [], wished, 0.125);
      expect(Math.hypot(pose.x - wished.x, pose.y - wished.y)).toBeLessThanOrEqual(0.25 + 1e-9);
    }
  });
});
