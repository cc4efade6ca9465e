// The path of the needle on the quilt, made when somebody asks for it and kept for the next who does.

import { carryPath } from '../geometry/change.ts';
import type { Path } from '../geometry/path.ts';
import { after, poseOf } from '../geometry/pose.ts';
import type { StitchedLine } from './stitched-line.ts';

const paths = new WeakMap<StitchedLine, Path<'quilt'>>();

/** Where the needle sews, in quilt coordinates (inches): the foot's path carried to the quilt, then moved by the needle's own offset. */
export function quiltPath(line: StitchedLine): Path<'quilt'> {
  const known = paths.get(line);
  if (known) return known;
  const { x, y } = line.needleOffset;
  const pose = x === 0 && y === 0 ? line.to : after(line.to, poseOf<'quilt', 'quilt'>(x, y));
  const path = carryPath(pose, line.source);
  paths.set(line, path);
  return path;
}
