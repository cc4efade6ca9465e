// How large a foot may be in a plan.

/** No round foot is wider, in inches. */
export const GREATEST_DIAMETER = 4;
