import { describe, expect, it } from 'vitest';
import { polygon, straight } from '../../geometry/path.ts';
import { carry, poseOf } from '../../geometry/pose.ts';
import { random } from '../../num/random.ts';
import type { PlaceSetting } from '../../place/place.ts';
import { moveTo, turned } from './moves.ts';

const setting: PlaceSetting = {
  shape: { outline: polygon([{ x: 0, y: 0 }, { x: 6, y: 0 }, { x: 6, y: 1 }, { x: 0, y: 1 }]), windows: [], etchings: [] },
  needle: { lines: [], missed: [], collapsed: [] },
  lines: [{ id: 'level', kind: 'centre', name: 'level line', path: straight({ x: -6, y: 0 }, { x: 6, y: 0 }) }],
  stitched: new Map(),
};
const grip = { x: 3, y: 0.5 };

describe('a hand on a template that is held', () => {
  it('does not move one that is fixed, not even to the other pose that would do', () => {
    const fixed = [{ put: 'point:0,0', on: 'centre' }, { put: 'point:6,0', on: 'line:level' }];
    const from = poseOf<'template', 'area'>(0, 0, 0);
    for (const degrees of [5, 90, 170, 180]) {
      const { pose } = moveTo(setting, fixed, { pose: turned(from, { x: 0, y: 0 }, (degrees * Math.PI) / 180), from, grip, reach: 0, pull: Infinity });
      expect(pose).toEqual(from);
    }
  });

  it('moves one that is partly fixed only as it is free to, seed 5', () => {
    const { between } = random(5);
    for (let i = 0; i < 300; i++) {
      const from = poseOf<'template', 'area'>(between(-2, 2), 0, 0);
      const wished = poseOf<'template', 'area'>(between(-6, 6), between(-3, 3), between(-1, 1));
      const slides = moveTo(setting, [{ put: 'point:0,0', on: 'line:level' }, { put: 'point:6,0', on: 'line:level' }], { pose: wished, from, grip, reach: 0, pull: Infinity });
      expect([carry(slides.pose, { x: 0, y: 0 }).y, carry(slides.pose, { x: 6, y: 0 }).y].every((y) => Math.abs(y) < 1e-8)).toBe(true);
      const turns = moveTo(setting, [{ put: 'point:0,0', on: 'centre' }], { pose: wished, from: poseOf(0, 0, 0.3), grip, reach: 0, pull: Infinity });
      expect(Math.hypot(turns.pose.x, turns.pose.y)).toBeLessThan(1e-8);
    }
  });
});
