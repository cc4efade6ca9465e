// Where the needle line of a laid template crosses a reference line.

import { carryPath } from '../geometry/change.ts';
import { meetPaths } from '../geometry/meet-paths.ts';
import type { Vec } from '../geometry/point.ts';
import { type Pose, after, poseOf } from '../geometry/pose.ts';
import type { NeedleLine } from '../needle/needle-line.ts';
import type { ReferenceLine } from '../top/area.ts';
import { extended } from '../top/extended.ts';

/** How a template lies, and how far the needle falls from the foot's centre. */
export interface LaidNeedle {
  readonly pose: Pose<'template', 'area'>;
  readonly needleOffset: Vec<'area'>;
}

/**
 * Where a needle line crosses (or touches) a reference line: inches along the needle line, in the order in which the
 * places come along the reference line. A straight reference line counts as going on beyond its ends.
 */
export function crossingsAlong(reference: Pick<ReferenceLine, 'path'>, line: NeedleLine, setting: LaidNeedle): readonly number[] {
  const { x, y } = setting.needleOffset;
  const path = carryPath(after(setting.pose, poseOf<'area', 'area'>(x, y)), line.path);
  const places = meetPaths(extended(reference.path), path).flatMap((meeting) =>
    meeting.kind === 'overlap'
      ? [{ reference: meeting.alongA[0], needle: meeting.alongB[0] }, { reference: meeting.alongA[1], needle: meeting.alongB[1] }]
      : [{ reference: meeting.alongA, needle: meeting.alongB }],
  );
  return places.sort((a, b) => a.reference - b.reference).map((place) => place.needle);
}
