// What the quilter has picked out: one thing of the plan or of its evaluation, by id.

export type Selection =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'area'; readonly area: string }
  | { readonly kind: 'sheet'; readonly sheet: string }
  | { readonly kind: 'placement'; readonly sheet: string; readonly placement: string }
  | { readonly kind: 'line'; readonly line: string }
  /** A finding by its key, and which of its spots is looked at. */
  | { readonly kind: 'finding'; readonly finding: string; readonly spot: number };

export const NOTHING: Selection = { kind: 'nothing' };
