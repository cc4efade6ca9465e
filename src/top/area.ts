// What the layout of a top gives: areas with their own axes, boundaries, seams and reference lines.

import type { Path } from '../geometry/path.ts';
import type { Pose } from '../geometry/pose.ts';
import type { AreaKind, Side } from '../model/plan.ts';

export type Corner = 'top-left' | 'top-right' | 'bottom-right' | 'bottom-left';

/**
 * Own axes: a block on point is turned 45 degrees; a strip of sashing has x along it; a border side and a setting
 * triangle have x along the border or the long edge and -y outward; border corners and corner triangles are turned so
 * that the top's own corner lies to their upper left. The origin is the centre of the extent; of triangles, the middle
 * of the altitude on the long edge.
 */
export interface Area {
  /** Stable while the top keeps its counts: `block:r1c2`, `border:1:top`, `border:1:top-left` ... */
  readonly id: string;
  readonly kind: AreaKind;
  /** In plain words: "block, row 1, column 2". */
  readonly name: string;
  /** From the area's own axes (origin at its centre; on a border side x runs along it and -y points outward) to the quilt. */
  readonly frame: Pose<'area', 'quilt'>;
  /** Extent along the area's own axes; of a border side, its measured length and its width. */
  readonly width: number;
  readonly height: number;
  /** Closed. */
  readonly boundary: Path<'area'>;
  readonly seams: readonly Seam[];
  readonly referenceLines: readonly ReferenceLine[];
  /** Areas with the same shape key are alike in their own axes: boundary, seams and reference lines are the same objects. */
  readonly shape: string;
  readonly border?: number;
  readonly side?: Side;
  readonly corner?: Corner;
  /** Counted from 1; 1.5 for a block on point between the first row and the second. */
  readonly row?: number;
  readonly column?: number;
}

/** A side of an area: a seam between two pieces, or the raw outer edge of the top. */
export interface Seam {
  readonly id: string;
  readonly kind: 'seam' | 'raw';
  readonly path: Path<'area'>;
}

/**
 * A line of an area that people line up on; registrations and passes name it `line:` and its id. Centre lines and
 * diagonals run from left to right, upright ones from top to bottom; edges run clockwise round the area, so that its
 * inside lies on their right.
 */
export interface ReferenceLine {
  /** `vertical-centre`, `horizontal-centre`, `diagonal-down`, `diagonal-up`, `bias-down`, `bias-up` (at 45 degrees through the centre, where the diagonals are not), `edge-top` ..., `division-3`. */
  readonly id: string;
  readonly kind: 'centre' | 'diagonal' | 'edge' | 'division';
  /** In plain words: "vertical centre line". */
  readonly name: string;
  readonly path: Path<'area'>;
}

export interface LaidKeepOut {
  readonly id: string;
  readonly name: string;
  readonly outline: Path<'quilt'>;
  readonly clearance: number;
}

/** Something about the top that cannot be, and what was done instead. */
export interface TopProblem {
  /** Path of the field in the plan: `top.borders[1].width`. */
  readonly field: string;
  /** It cannot be and something else was laid, or it was laid as asked but looks like a slip of the tape. */
  readonly kind: 'cannot-be' | 'doubtful';
  readonly message: string;
  /** In inches, where the problem is a length. */
  readonly measured?: number;
  readonly limit?: number;
}

/** The whole top laid out; its upper left raw corner is the origin of quilt coordinates. */
export interface LaidTop {
  readonly width: number;
  readonly height: number;
  /** Pieced areas tile the top; drawn areas and the area `top` lie over them. */
  readonly areas: readonly Area[];
  readonly rawEdge: Path<'quilt'>;
  /** Every inner seam once, in quilt coordinates. */
  readonly seams: readonly Path<'quilt'>[];
  readonly keepOuts: readonly LaidKeepOut[];
  readonly problems: readonly TopProblem[];
}

export const SIDES: readonly Side[] = ['top', 'right', 'bottom', 'left'];
export const CORNERS: readonly Corner[] = ['top-left', 'top-right', 'bottom-right', 'bottom-left'];

/** How far what lies along a side is turned, so that its -y points outward; radians clockwise. */
export const SIDE_ANGLES: { readonly [side in Side]: number } = { top: 0, right: Math.PI / 2, bottom: Math.PI, left: -Math.PI / 2 };

/** How far what lies in a corner is turned, so that the top's own corner lies to its upper left; radians clockwise. */
export const CORNER_ANGLES: { readonly [corner in Corner]: number } = { 'top-left': 0, 'top-right': Math.PI / 2, 'bottom-right': Math.PI, 'bottom-left': -Math.PI / 2 };
