// A piece of the top before it becomes an area: a straight-sided outline in its own axes, and what each side of it is.

import type { Point } from '../geometry/point.ts';
import { type Pose, carry } from '../geometry/pose.ts';
import type { AreaKind, Side } from '../model/plan.ts';
import type { Corner } from './area.ts';

/** What lies in the middle of a top, or round it: pieces, and the width and height they take up together. */
export interface Laid {
  readonly width: number;
  readonly height: number;
  readonly pieces: readonly Piece[];
}

export type EdgeName = 'top' | 'right' | 'bottom' | 'left' | 'long';

/** One side of a piece. `open`: there is no seam, the cloth goes on into the next area. */
export interface PieceEdge {
  readonly name: EdgeName;
  readonly is: 'seam' | 'raw' | 'open';
}

export interface Piece {
  readonly id: string;
  readonly kind: AreaKind;
  readonly name: string;
  readonly frame: Pose<'area', 'quilt'>;
  /** Clockwise, in the piece's own axes. */
  readonly corners: readonly Point<'area'>[];
  /** Edge i runs from corner i to the next. */
  readonly edges: readonly PieceEdge[];
  /** A mitre seam runs from the first corner to the third. */
  readonly mitred?: boolean;
  /** What the piece is as an area, where the tape says something else than the layout. */
  readonly measured?: readonly Point<'area'>[];
  readonly border?: number;
  readonly side?: Side;
  readonly corner?: Corner;
  readonly row?: number;
  readonly column?: number;
}

/** The corners of an upright rectangle about the origin, clockwise from its upper left. */
export function rectangleCorners(width: number, height: number): readonly Point<'area'>[] {
  const x = width / 2;
  const y = height / 2;
  return [{ x: -x, y: -y }, { x, y: -y }, { x, y }, { x: -x, y }];
}

/** The sides of a rectangle in the order of its corners. */
export function rectangleEdges(top: PieceEdge['is'], right: PieceEdge['is'], bottom: PieceEdge['is'], left: PieceEdge['is']): readonly PieceEdge[] {
  return [{ name: 'top', is: top }, { name: 'right', is: right }, { name: 'bottom', is: bottom }, { name: 'left', is: left }];
}

/** The straight inner seams of a piece as it lies in the layout, in quilt coordinates. */
export function innerSeamsOf(piece: Piece): readonly { readonly from: Point<'quilt'>; readonly to: Point<'quilt'> }[] {
  const corners = piece.corners.map((corner) => carry(piece.frame, corner));
  const seams = piece.edges.flatMap((edge, i) => (edge.is === 'seam' ? [{ from: corners[i]!, to: corners[(i + 1) % corners.length]! }] : []));
  return piece.mitred ? [...seams, { from: corners[0]!, to: corners[2]! }] : seams;
}
