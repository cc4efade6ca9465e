// All the ways a placement's registrations let it lie: what else it could be than the pose it has.

import { distance } from '../geometry/point.ts';
import { type Pose, carry } from '../geometry/pose.ts';
import { boundsOf } from '../geometry/bounds.ts';
import { NOT_LEFT } from '../num/tolerances.ts';
import type { Registration } from '../model/plan.ts';
import { type PlaceSetting, requirementOf } from './place.ts';
import { register } from './register.ts';

type Laid = Pose<'template', 'area'>;

/**
 * Every other pose, on either face, that keeps all of some registrations, the nearest to the present one first (inches, radians).
 * Where a slide or turn is left free, one pose stands for all it leads to. None where the registrations cannot be met or read.
 */
export function otherPoses(registrations: readonly Registration[], setting: PlaceSetting, pose: Laid): readonly Laid[] {
  const read = registrations.map((registration) => requirementOf(registration, setting));
  if (read.length === 0 || !read.every((one) => one.ok)) return [];
  const { outline } = setting.shape;
  const found = register(read.map(({ value }) => value), { from: pose, outline, search: 'all', faces: 'either' });
  if (found.kind === 'impossible') return [];
  const { minX, minY, maxX, maxY } = boundsOf(outline);
  const ends = [{ x: minX, y: minY }, { x: maxX, y: maxY }];
  return found.poses.filter((other) => other.flipped !== pose.flipped || ends.some((end) => distance(carry(other, end), carry(pose, end)) > NOT_LEFT));
}
