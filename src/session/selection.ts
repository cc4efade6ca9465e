// What the quilter has picked out: one thing of the plan or of its evaluation, by id.

export type Selection =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'area'; readonly area: string }
  | { readonly kind: 'sheet'; readonly sheet: string }
  /** A placement; `also`: others of the same sheet picked out with it; `pass`: one of its passes. */
  | { readonly kind: 'placement'; readonly sheet: string; readonly placement: string; readonly also?: readonly string[]; readonly pass?: string }
  | { readonly kind: 'line'; readonly line: string }
  /** A finding by its key, and which of its spots is looked at. */
  | { readonly kind: 'finding'; readonly finding: string; readonly spot: number };

export const NOTHING: Selection = { kind: 'nothing' };
