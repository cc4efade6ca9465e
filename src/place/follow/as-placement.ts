// A following made into what the plan keeps: a placement laid by eye with its pass.

import { toDegrees } from '../../num/angle.ts';
import type { Frame } from '../../geometry/point.ts';
import type { Pass, Placement } from '../../model/plan.ts';
import type { Following } from './following.ts';

/** The placement, with its one pass under the id `a`, of a following whose frame is the area's own axes; lengths in inches, the angle in degrees. */
export function asPlacement<F extends Frame>(following: Following<F>, template: string, foot: string): Placement {
  const { pose, pass } = following;
  const kept: Pass = {
    ...(pass.edge !== 'outline' && { edge: pass.edge }),
    ...(pass.loop > 0 && { loop: pass.loop }),
    start: { along: pass.start },
    stop: pass.stop === 'all-round' ? 'all-round' : { along: pass.stop },
    way: pass.way,
  };
  return {
    template,
    foot,
    flipped: pose.flipped,
    pose: { x: pose.x, y: pose.y, angle: toDegrees(pose.angle) },
    registrations: [],
    passes: { a: kept },
  };
}
