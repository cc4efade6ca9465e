// A placement's pose as the plan writes it and as the hand moves it.

import type { Draft } from 'immer';
import { fromDegrees, toDegrees } from '../../num/angle.ts';
import { type Pose, poseOf } from '../../geometry/pose.ts';
import type { Placement } from '../../model/plan.ts';

/** From template coordinates to the axes the placement is laid in; inches and radians. */
export type Laid = Pose<'template', 'area'>;

/** Where a placement was last laid. */
export function poseIn({ pose, flipped }: Placement): Laid {
  return poseOf(pose.x, pose.y, fromDegrees(pose.angle), flipped);
}

/** Decimals of an inch and of a degree that are written: far finer than any hand, and short to read. */
const WRITTEN = 5;

/** Writes a pose into a draft of a placement. */
export function writePose(placement: Draft<Placement>, pose: Laid): void {
  placement.pose = { x: rounded(pose.x), y: rounded(pose.y), angle: rounded(toDegrees(pose.angle)) };
  placement.flipped = pose.flipped;
}

function rounded(value: number): number {
  const short = Number(value.toFixed(WRITTEN));
  return short === 0 ? 0 : short;
}
