// What is known and what is wished of a border that is set out. All lengths are inches.

import type { TemplateShape } from '../../model/kit/shape.ts';
import type { Frieze } from '../../model/plan.ts';
import type { NeedleLines } from '../../needle/needle-line.ts';
import type { ScoreWeights } from './score.ts';

/** One side: its measured length, its width, and how far stitching stays from its outer and inner seam. */
export interface BorderSide {
  readonly length: number;
  readonly width: number;
  readonly outerClearance: number;
  readonly innerClearance: number;
}

/** A template with a foot: its shape and where the needle falls. */
export interface Ruler {
  readonly shape: TemplateShape;
  readonly needle: NeedleLines;
}

export interface SetOutWish {
  readonly pattern: Frieze;
  /** About how long a division should be. */
  readonly spacing?: number;
  /** The counts to try, both included. */
  readonly counts?: { readonly from: number; readonly to: number };
  /** No division is shorter than this, such as a motif that must fit in it. */
  readonly narrowest?: number;
  /** The line the unit starts on: so far outward from the centre line (0 when left out), or so that the motif lies midway between the clearances. */
  readonly base?: number | 'middle';
  /** How high the crest should stand over that line; all the room there is when left out. */
  readonly height?: number;
  /** Which way the crest points; outward when left out. */
  readonly crest?: 'outward' | 'inward';
  /** Whether a unit may hang over into its neighbours; not when left out. */
  readonly overhang?: boolean;
  /** How much of the quilt, across the border, can be reached without moving it. */
  readonly reach?: number;
  readonly weights?: ScoreWeights;
}
