// The right-angled triangles of a top: half a square along a side, a quarter of one in a corner. Each is turned with
// its side or corner, so that one motif serves all four.

import type { Point } from '../geometry/point.ts';
import { type Pose, carryVec, poseOf } from '../geometry/pose.ts';
import type { Side } from '../model/plan.ts';
import { type Corner, CORNER_ANGLES, SIDE_ANGLES } from './area.ts';
import type { PieceEdge } from './piece.ts';

type Triangle = {
  readonly frame: Pose<'area', 'quilt'>;
  readonly corners: readonly Point<'area'>[];
  readonly edges: readonly PieceEdge[];
};

/**
 * Half a square of side `leg` inches, its long edge on a side of the layout with its middle at a place, its right angle
 * pointing into the layout. Long edge: leg times the square root of two.
 */
export function sideTriangle(leg: number, side: Side, middleOfLongEdge: Point<'quilt'>, outside: PieceEdge['is']): Triangle {
  const halfLong = leg / Math.SQRT2;
  const halfAltitude = halfLong / 2;
  const angle = SIDE_ANGLES[side];
  const inward = carryVec(poseOf<'area', 'quilt'>(0, 0, angle), { x: 0, y: halfAltitude });
  return {
    frame: poseOf(middleOfLongEdge.x + inward.x, middleOfLongEdge.y + inward.y, angle),
    corners: [{ x: -halfLong, y: -halfAltitude }, { x: halfLong, y: -halfAltitude }, { x: 0, y: halfAltitude }],
    edges: [{ name: 'top', is: outside }, { name: 'right', is: 'seam' }, { name: 'left', is: 'seam' }],
  };
}

/** A quarter of a square of side `longEdge` inches, its right angle in a corner of the layout. Legs: long edge over the square root of two. */
export function cornerTriangle(longEdge: number, corner: Corner, rightAngle: Point<'quilt'>, outside: PieceEdge['is']): Triangle {
  const leg = longEdge / Math.SQRT2;
  // The middle of the altitude lies a quarter of a leg from both legs.
  const quarter = leg / 4;
  const angle = CORNER_ANGLES[corner];
  const inward = carryVec(poseOf<'area', 'quilt'>(0, 0, angle), { x: quarter, y: quarter });
  return {
    frame: poseOf(rightAngle.x + inward.x, rightAngle.y + inward.y, angle),
    corners: [{ x: -quarter, y: -quarter }, { x: 3 * quarter, y: -quarter }, { x: -quarter, y: 3 * quarter }],
    edges: [{ name: 'top', is: outside }, { name: 'long', is: 'seam' }, { name: 'left', is: outside }],
  };
}
