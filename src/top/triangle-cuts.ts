// The squares that setting triangles are cut from, so that the straight grain runs along the side of the quilt.
// Source: the charts of the trade for quarter-inch seams. Four side triangles come from a square cut twice on its
// diagonals, 1 1/4 in larger than the triangle's finished long edge; two corner triangles come from a square cut once,
// 7/8 in larger than its finished short edge. Exactly, the seams take (1 + sqrt 2) / 2 and (2 + sqrt 2) / 4 inches; the
// charts are a little generous, and so is rounding up.

import { SAME_POINT } from '../num/tolerances.ts';

const SIDE_ALLOWANCE = 1.25;
const CORNER_ALLOWANCE = 0.875;
const CHART_STEP = 1 / 8;

/** Side of the square to cut twice on the diagonal for four side triangles with this finished long edge; inches, rounded up to 1/8. */
export function sideTriangleSquare(finishedLongEdge: number): number {
  return roundedUp(finishedLongEdge + SIDE_ALLOWANCE);
}

/** Side of the square to cut once on the diagonal for two corner triangles with this finished short edge; inches, rounded up to 1/8. */
export function cornerTriangleSquare(finishedShortEdge: number): number {
  return roundedUp(finishedShortEdge + CORNER_ALLOWANCE);
}

function roundedUp(length: number): number {
  return Math.ceil((length - SAME_POINT) / CHART_STEP) * CHART_STEP;
}
