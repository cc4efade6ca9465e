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

/** Rounding slack along an offset: two meetings on one piece nearer than this are one place, and a piece shorter than this is a point. */
export const WELD = 1e-8;

/** Rounding slack of an offset's joints: pieces that follow each other are joined over gaps less than this, which crossed tangents leave. */
export const JOINT = 1e-7;

/**
 * In radians: at a corner nearer to a half turn than this, which way the path turned is read off its two sides, not its tangents. Sides
 * that do not cross by more than rounding slack may still have tangents crossed by so much.
 */
export const CUSP = 1e-3;

/** An offset shorter than this is what rounding leaves where two pieces run side by side, not a line. */
export const SLIVER = 1e-4;

/** A stretch of edge shorter than this counts as touched when its neighbours are. */
export const TOUCHED = 1e-6;

/** Two stretches whose directions differ by less than this, in radians, join smoothly: no corner a maker would see or round. */
export const SMOOTH_JOINT = 1e-6;

/** An outline that turns outward by at least this much, in radians, has a tip there. */
export const TIP_TURN = Math.PI / 4;

/** A turn of the needle line with a radius up to this is seen as a rounded corner, not as a curve, in inches: a tip's rounding and a usual foot. */
export const TIGHT_TURN = 5 / 8;

/** A rounding with a radius up to this stands for a tip, not for a curve, in inches. */
export const TIP_RADIUS = 3 / 8;

/** When a foot is measured on four sides, opposite sides whose sums differ by more than this were not measured against a template that lay still, in inches. */
export const TEMPLATE_LAY_STILL = 1 / 32;

/** A registration whose gap is no more than this is met, in inches. */
export const MET = 1e-9;

/** A registration this nearly met has not been left, in inches: what writing a pose to a few decimals may cost on a long template. */
export const NOT_LEFT = 1e-3;

/** A place on a needle line no farther than this from where the foot stands is under the foot, in inches: what writing it to a few decimals may cost. */
export const UNDER_FOOT = 1e-4;

/** A way of moving that opens a registration by less than this part of itself is no hindrance: the placement is free to go there. */
export const FREE_WAY = 1e-7;

/** Two directions this near, in radians, are meant to be one when a hand lays a template: two degrees. */
export const NEAR_ANGLE = Math.PI / 90;

/** A largest circle is found when no step makes it larger by more than this, in inches. */
export const ROOM_FOUND = 1e-7;

/** Another circle in the same space is looked for only where it could be larger by more than this, in inches: no ruler would tell. */
export const ROOM_MISSED = 1 / 128;

/**
 * How far off a mark lies that was lined up by eye, in inches: in 95 of 100 cases no more than this either way. Common practice: what a
 * quilter would see is what she would put right.
 */
export const MARK_SLACK = 1 / 32;

/** How far the needle runs nearer to the edge or farther from it than the foot says, in inches: in 95 of 100 cases no more than this. */
export const FOOT_SLACK = 1 / 64;

/** Two marks nearer than this are drawn as one, in inches: a pencil line is no narrower. */
export const SAME_MARK = 1 / 64;

/** A placement is held steadily when marks off by their slack let its needle line stray by no more than this, in inches. */
export const STEADY = 1 / 8;

/** Another choice of marks is worth telling when the needle line strays less by at least this, in inches. */
export const STEADIER = 1 / 64;

/** The sine of the angle at which a needle line meets a line that runs nearly along it: where the two meet is then anybody's guess. */
export const SHALLOW_MEETING = 0.1;

/** Two fits of a template to a line that differ by less than this, in inches, are equally good as far as a first look can tell. */
export const SAME_FIT = 1e-7;

/** Where one placement takes over from another the needle line keeps this near to the line both follow, in inches, so that their ends meet. */
export const TAKE_OVER = 1 / 2048;
