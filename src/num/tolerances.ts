// Every tolerance of the project, named by what it means. Lengths are inches unless the name says otherwise.
// Rounding slack is never used as a workshop allowance, nor a workshop allowance as rounding slack.

/** Rounding slack of a length: two points nearer than this are the same point. */
export const SAME_POINT = 1e-9;

/** Rounding slack of an angle in radians: two directions nearer than this are the same direction. */
export const SAME_ANGLE = 1e-9;

/** Rounding slack of a pure number (a parameter, a ratio). */
export const SAME_NUMBER = 1e-12;

/** How far a fitted chain of arcs may stray from the curve it stands for. */
export const FIT = 0.0005;

/** Two ends this near count as meeting. */
export const JOIN = 1 / 64;

/** Two ends farther apart than this were never meant to meet. */
export const MEANT_TO_MEET = 1 / 4;

/** What a quilter would see. */
export const EYE = 1 / 32;
