// What a check reports.

import type { Place } from '../model/plan.ts';

/** `error`: mend before sewing. `warning`: look at it and decide. `note`: good to know. */
export type Severity = 'error' | 'warning' | 'note';

/** Where a finding is: in the plan by ids, on the quilt by a place in quilt coordinates, or in the file by a field's path. */
export interface Where {
  readonly area?: string;
  readonly sheet?: string;
  readonly placement?: string;
  readonly pass?: string;
  /** The other of two, where a finding is about two sheets or two passes. */
  readonly other?: { readonly sheet: string; readonly placement?: string; readonly pass?: string };
  /** Ids of the stitched lines concerned. */
  readonly lines?: readonly string[];
  readonly at?: Place;
  readonly field?: string;
}

export interface Finding {
  /** One of the codes in `codes.ts`, such as `near-seam`. */
  readonly code: string;
  readonly severity: Severity;
  /** One or two short sentences to one person: the thing, then the measure. */
  readonly message: string;
  readonly where: Where;
  /** In inches, unless the code says otherwise. */
  readonly measured?: number;
  readonly limit?: number;
  /** Why the quilter leaves it so, where the plan says that she does. */
  readonly accepted?: string;
}
