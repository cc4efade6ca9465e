// One way in which something can be set out: the sheets it comes to, and what is said of it.

import type { Sheet } from '../../model/plan.ts';

export interface Offer {
  /** Tells it from the others; the same again when the same is offered again. */
  readonly id: string;
  /** A few words: "8 repeats on top and bottom, 12 on the sides". */
  readonly title: string;
  /** Sentences with the measures a quilter decides by. */
  readonly about: readonly string[];
  /** The whole sheets as they would be; the first is laid on the table. */
  readonly sheets: readonly Sheet[];
}

export type Offers =
  | { readonly kind: 'offers'; readonly offers: readonly Offer[] }
  /** Nothing works; sentences saying why, and what would. */
  | { readonly kind: 'none'; readonly why: readonly string[] };
