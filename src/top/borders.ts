// Borders round the middle of a top, from the inside out. However its corners are sewn, each border gives four sides
// (the inner edge's length by the border's width) and four corners (squares); what differs is where the seams run:
// squares have seams on both inner sides of a corner, a mitre runs across the corner, and with butted corners the sides
// that run through take the corners with them.

import { poseOf } from '../geometry/pose.ts';
import type { Border, Side } from '../model/plan.ts';
import { CORNERS, CORNER_ANGLES, type Corner, SIDES, SIDE_ANGLES } from './area.ts';
import { type Piece, type PieceEdge, rectangleCorners, rectangleEdges } from './piece.ts';

/** The rectangle a border goes round, in quilt coordinates. */
export interface Inner {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/**
 * The eight pieces of one border. A side with a measured length is that long as an area, its middle where the layout has
 * it.
 */
export function borderPieces(border: Border, number: number, inner: Inner, outside: 'seam' | 'raw'): readonly Piece[] {
  return [...SIDES.map((side) => sidePiece(border, number, inner, outside, side)), ...CORNERS.map((corner) => cornerPiece(border, number, inner, outside, corner))];
}

/** The rectangle with the border round it. */
export function withBorder(inner: Inner, width: number): Inner {
  return { left: inner.left - width, top: inner.top - width, width: inner.width + 2 * width, height: inner.height + 2 * width };
}

function sidePiece(border: Border, number: number, inner: Inner, outside: 'seam' | 'raw', side: Side): Piece {
  const { width } = border;
  const length = side === 'top' || side === 'bottom' ? inner.width : inner.height;
  const measured = border.measured?.[side];
  const ends = seamBetween(border, side);
  return {
    id: `border:${number}:${side}`,
    kind: 'border-side',
    name: `border ${number}, ${side}`,
    frame: poseOf(
      inner.left + (side === 'left' ? -width / 2 : side === 'right' ? inner.width + width / 2 : inner.width / 2),
      inner.top + (side === 'top' ? -width / 2 : side === 'bottom' ? inner.height + width / 2 : inner.height / 2),
      SIDE_ANGLES[side],
    ),
    corners: rectangleCorners(length, width),
    ...(measured !== undefined && { measured: rectangleCorners(measured, width) }),
    edges: rectangleEdges(outside, ends, 'seam', ends),
    border: number,
    side,
  };
}

function cornerPiece(border: Border, number: number, inner: Inner, outside: 'seam' | 'raw', corner: Corner): Piece {
  const { width } = border;
  const { before, after } = SIDES_AT[corner];
  const atLeft = before === 'left' || after === 'left';
  const atTop = before === 'top' || after === 'top';
  return {
    id: `border:${number}:${corner}`,
    kind: 'border-corner',
    name: `border ${number}, ${corner.replace('-', ' ')} corner`,
    frame: poseOf(
      inner.left + (atLeft ? -width / 2 : inner.width + width / 2),
      inner.top + (atTop ? -width / 2 : inner.height + width / 2),
      CORNER_ANGLES[corner],
    ),
    corners: rectangleCorners(width, width),
    edges: rectangleEdges(outside, seamBetween(border, after), seamBetween(border, before), outside),
    ...(border.corners === 'mitred' && { mitred: true }),
    border: number,
    corner,
  };
}

/** The sides of the border before and after a corner, going clockwise. In a corner's own axes the one after it lies to the right, the one before it below. */
const SIDES_AT: { readonly [corner in Corner]: { readonly before: Side; readonly after: Side } } = {
  'top-left': { before: 'left', after: 'top' },
  'top-right': { before: 'top', after: 'right' },
  'bottom-right': { before: 'right', after: 'bottom' },
  'bottom-left': { before: 'bottom', after: 'left' },
};

/** Whether a side ends in a seam at its corners, or its cloth runs on into them. */
function seamBetween(border: Border, side: Side): PieceEdge['is'] {
  if (border.corners === 'squares') return 'seam';
  if (border.corners === 'mitred') return 'open';
  const through = border.through ?? 'top-and-bottom';
  const runsThrough = (through === 'top-and-bottom') === (side === 'top' || side === 'bottom');
  return runsThrough ? 'open' : 'seam';
}
