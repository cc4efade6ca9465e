// What comes out of the pipeline for one plan.

import type { Finding } from '../check/finding.ts';
import type { Plan } from '../model/plan.ts';
import type { StitchedLine } from '../stitch/stitched-line.ts';
import type { LaidTop } from '../top/area.ts';
import type { LaidPlacement } from '../stitch/laid-placement.ts';

export interface Evaluation {
  readonly plan: Plan;
  readonly top: LaidTop;
  /** Every placement of every sheet on every like area it is for, laid once for each different shape of area. */
  readonly placements: readonly LaidPlacement[];
  /** Lines of the chosen sheets. */
  readonly lines: readonly StitchedLine[];
  readonly findings: readonly Finding[];
}

