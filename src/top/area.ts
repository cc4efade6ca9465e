// What the layout of a top gives: areas with their own axes, boundaries, seams and reference lines.

import type { Path } from '../geometry/path.ts';
import type { Pose } from '../geometry/pose.ts';
import type { AreaKind, Side } from '../model/plan.ts';

export type Corner = 'top-left' | 'top-right' | 'bottom-right' | 'bottom-left';

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
  readonly row?: number;
  readonly column?: number;
}

/** A side of an area: a seam between two pieces, or the raw outer edge of the top. */
export interface Seam {
  readonly id: string;
  readonly kind: 'seam' | 'raw';
  readonly path: Path<'area'>;
}

/** A line of an area that people line up on; registrations and passes name it `line:` and its id. */
export interface ReferenceLine {
  /** `vertical-centre`, `horizontal-centre`, `diagonal-down`, `diagonal-up`, `edge-top` ..., `division-3`. */
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
  readonly message: string;
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
