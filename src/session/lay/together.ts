// Templates that are moved together: the one the hand holds leads, the others keep their place beside it.

import { type Pose, after, inverse } from '../../geometry/pose.ts';
import type { Registration } from '../../model/plan.ts';
import { type Lie, withMade } from './edit.ts';
import { type Moved, keptIn } from './moves.ts';
import type { Laid } from './placed.ts';
import type { Laying } from './setting.ts';

/** A template as it lay when the hand took it. */
export interface Taken {
  readonly laying: Laying;
  readonly from: Laid;
}

/** How all that was taken lies once the first of it has moved. Registrations of the others stay as far as they still hold. */
export function liesTogether(taken: readonly Taken[], moved: Moved): ReadonlyMap<string, Lie> {
  const [lead, ...others] = taken;
  if (!lead) return new Map();
  const group = new Set(taken.map(({ laying }) => laying.id));
  const onQuilt = motionOnQuilt(lead, moved.pose);
  return new Map<string, Lie>([
    [lead.laying.id, { pose: moved.pose, registrations: withMade(moved.held, moved.made) }],
    ...others.map((other): [string, Lie] => {
      const { laying, from } = other;
      const pose = after(from, after(laying.axes, after(onQuilt, inverse(laying.axes))));
      const { registrations } = laying.placement;
      const kept = new Set(keptIn(laying.setting, registrations, pose));
      return [laying.id, { pose, registrations: registrations.filter((one) => kept.has(one) || leansOn(one, group)) }];
    }),
  ]);
}

/** The motion of the quilt's plane that carries the leading template from where it lay to where it lies. */
function motionOnQuilt({ laying, from }: Taken, to: Laid): Pose<'quilt', 'quilt'> {
  const motion = after(inverse(from), to);
  return after(inverse(laying.axes), after(motion, laying.axes));
}

/** True for a registration on a line of a template that moves along. */
function leansOn({ on }: Registration, group: ReadonlySet<string>): boolean {
  const named = /^(?:stitched|end):([^/]+)\//.exec(on)?.[1];
  return named !== undefined && group.has(named);
}
