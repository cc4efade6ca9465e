// What a corner, a frame or a motif in the middle is in a plan: a placement as it lies, held by its registrations, and its pass.

import { toDegrees } from '../../num/angle.ts';
import type { Pass, Placement, Registration } from '../../model/plan.ts';
import type { Laid } from './laid-line.ts';

/** The needle line all round. */
export const ALL_ROUND: Pass = { start: { along: 0 }, stop: 'all-round', way: 'clockwise' };

export interface FoundLaying {
  readonly pose: Laid;
  readonly registrations?: readonly Registration[];
  /** All round when left out. */
  readonly pass?: Pass;
}

/** The placement of a template (by its id in the kit) and a foot, laid as found; without registrations it is laid by eye. */
export function blockPlacement({ pose, registrations = [], pass = ALL_ROUND }: FoundLaying, template: string, foot: string): Placement {
  return { template, foot, flipped: pose.flipped, pose: { x: pose.x, y: pose.y, angle: toDegrees(pose.angle) }, registrations, passes: { motif: pass } };
}
