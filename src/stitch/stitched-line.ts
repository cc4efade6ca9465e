// A stitched line: one image of a pass on the quilt, with where it came from. The points are carried to the quilt
// only when somebody asks for them, so that a top with many thousand lines is set out at once.

import type { Path } from '../geometry/path.ts';
import type { Pose } from '../geometry/pose.ts';
import type { Vec } from '../geometry/point.ts';

export interface StitchedLine {
  /** `area/sheet/placement/pass/image`. */
  readonly id: string;
  readonly area: string;
  readonly sheet: string;
  readonly placement: string;
  readonly pass: string;
  /** 0 for the pass as it was traced, then in the order of the repeat. */
  readonly image: number;
  /** The path of the foot's centre, shared by all images of the pass. */
  readonly source: Path<'area'>;
  readonly to: Pose<'area', 'quilt'>;
  /** From the foot's centre to the needle, the same for every image because it belongs to the machine. */
  readonly needleOffset: Vec<'quilt'>;
  readonly length: number;
}
