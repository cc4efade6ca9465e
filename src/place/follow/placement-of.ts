// What follows a line, as a placement of the plan with its one pass.

import { toDegrees } from '../../num/angle.ts';
import type { Placement } from '../../model/plan.ts';
import type { Following } from './following.ts';

/** The placement of a template and a foot (ids in the kit); in the axes the line was told in. It is held by its pose alone. */
export function placementOf({ pose, pass }: Following<'area'>, template: string, foot: string): Placement {
  const { edge, loop, start, stop, way } = pass;
  return {
    template,
    foot,
    flipped: pose.flipped,
    pose: { x: pose.x, y: pose.y, angle: toDegrees(pose.angle) },
    registrations: [],
    passes: {
      a: { ...(edge !== 'outline' && { edge }), ...(loop !== 0 && { loop }), start: { along: start }, stop: stop === 'all-round' ? stop : { along: stop }, way },
    },
  };
}
