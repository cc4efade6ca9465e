// What the tape measure lies between.

import type { Point } from '../../geometry/point.ts';

/** An end of the tape: on a thing by its id, or on a bare place of the quilt. */
export type TapeEnd = { readonly on: string } | { readonly at: Point<'quilt'> };

export interface Measuring {
  readonly from: TapeEnd | undefined;
  readonly to: TapeEnd | undefined;
}
