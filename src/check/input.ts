// What the checks read: the plan, and what the stages before made of it.

import type { Plan } from '../model/plan.ts';
import type { LaidPlacement } from '../stitch/laid-placement.ts';
import type { StitchedLine } from '../stitch/stitched-line.ts';
import type { LaidTop } from '../top/area.ts';
import type { Finding } from './finding.ts';

export interface CheckInput {
  readonly plan: Plan;
  readonly top: LaidTop;
  /** Of all sheets. */
  readonly placements: readonly LaidPlacement[];
  /** Of the chosen sheets. */
  readonly lines: readonly StitchedLine[];
}

/** One check: pure, and of one thing. */
export type Rule = (input: CheckInput) => readonly Finding[];
