// A placement laid on one shape of area: its pose there and what of its passes can be sewn.

import type { Path } from '../geometry/path.ts';
import type { Vec } from '../geometry/point.ts';
import type { Pose } from '../geometry/pose.ts';
import type { TemplateShape } from '../model/kit/shape.ts';
import type { Standing } from '../place/place.ts';
import type { NeedleLines } from '../needle/needle-line.ts';

export interface LaidPlacement {
  readonly sheet: string;
  readonly placement: string;
  /** What the areas it is laid on have in common: their shape, and the count of a repeat along them. */
  readonly shape: string;
  readonly areas: readonly string[];
  readonly template: TemplateShape;
  readonly needle: NeedleLines;
  readonly pose: Pose<'template', 'area'>;
  /** How its registrations hold it. */
  readonly standing: Standing;
  /** From the foot's centre to the needle, in the area's own axes. */
  readonly needleOffset: Vec<'area'>;
  readonly passes: readonly LaidPass[];
  /** What each pass is multiplied into, in the area's own axes; the first is the pass as it was traced, unless nothing is sewn. */
  readonly images: readonly Pose<'area', 'area'>[];
  /** Steps of the repeat that could not be done, in words. */
  readonly repeatProblems: readonly RepeatProblem[];
}

/** A step of a repeat that could not be done, and was left out. */
export interface RepeatProblem {
  /** Index of the step. */
  readonly step: number;
  readonly why: 'no-line' | 'curved-line' | 'no-count';
  readonly detail: string;
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
      readonly why: 'no-edge' | 'no-line' | 'no-crossing' | 'off-the-end' | 'no-length';
      readonly end?: 'start' | 'stop';
      readonly detail: string;
    };
