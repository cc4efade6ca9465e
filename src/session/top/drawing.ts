// A shape under way on the top.

import type { Point } from '../../geometry/point.ts';
import type { Outline } from './outlines.ts';

/** What a drawn shape is for: no stitching enters it, or it is an area of the quilter's own. */
export type ShapeUse = 'keepOuts' | 'drawnAreas';

/** What is being drawn. */
export interface Drawing {
  readonly use: ShapeUse;
  readonly kind: Outline['kind'];
  /** What there is of it so far. */
  readonly outline: Outline | undefined;
  /** Corners tapped so far of a shape of straight sides. */
  readonly corners: readonly Point<'quilt'>[];
}
