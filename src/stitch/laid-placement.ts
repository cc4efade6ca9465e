// A placement laid on one shape of area: its pose there and what of its passes can be sewn.

import type { Path } from '../geometry/path.ts';
import type { Pose } from '../geometry/pose.ts';
import type { TemplateShape } from '../model/kit/shape.ts';
import type { NeedleLines } from '../needle/needle-line.ts';

export interface LaidPlacement {
  readonly sheet: string;
  readonly placement: string;
  /** Shape key of the areas it is laid on, and the ids of those areas. */
  readonly shape: string;
  readonly areas: readonly string[];
  readonly template: TemplateShape;
  readonly needle: NeedleLines;
  readonly pose: Pose<'template', 'area'>;
  readonly passes: readonly LaidPass[];
}

/** A pass found on the needle line, or why it could not be. */
export type LaidPass =
  | {
      readonly kind: 'found';
      readonly pass: string;
      /** Index into `needle.lines`, and the stretch of it in inches along it; stop < start when it runs over the needle line's own start. */
      readonly needleLine: number;
      readonly start: number;
      readonly stop: number;
      readonly way: 'clockwise' | 'counterclockwise';
      /** The foot-centre path as it is sewn, from start to stop. */
      readonly path: Path<'area'>;
      readonly length: number;
    }
  | {
      readonly kind: 'missing';
      readonly pass: string;
      /** What is not there: the edge, the reference line, the crossing, or the distance along. */
      readonly why: 'no-edge' | 'no-line' | 'no-crossing' | 'off-the-end';
      readonly end?: 'start' | 'stop';
      readonly detail: string;
    };
