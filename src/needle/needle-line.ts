// The needle line of a template and a foot, with its contact map: which stretch of edge, or which corner, the foot
// touches at every point of it.

import type { Path } from '../geometry/path.ts';

/** The edge a needle line comes from. */
export type EdgeName = 'outline' | `window:${string}`;

export interface NeedleLine {
  readonly from: EdgeName;
  /** 0 for the longest of the loops that one edge gives. */
  readonly loop: number;
  /**
   * The path of the foot's centre, clockwise as seen on the etched face, starting where the foot touches the edge
   * nearest after the edge's own start. Closed, except in a slot exactly a foot wide, where it is the open centre line.
   */
  readonly path: Path<'template'>;
  readonly length: number;
  /** Enclosed, in square inches; 0 for an open line. */
  readonly area: number;
  /** In order along the needle line, without gaps. */
  readonly contacts: readonly Contact[];
}

/** One piece of the needle line and what the foot touches there. */
export interface Contact {
  readonly kind: 'edge' | 'corner';
  /** Index of the edge's line or arc the foot rolls along, or of the vertex it turns about. */
  readonly edge: number;
  /** Inches along the edge where the contact begins and ends; the same for a corner. Against the edge's own direction, start is greater than end. */
  readonly edgeStart: number;
  readonly edgeEnd: number;
  /** Inches along the needle line where this piece begins and ends. */
  readonly start: number;
  readonly end: number;
}

/** A stretch of edge the foot cannot touch, in inches along the edge; a stretch over the edge's start has end < start. */
export interface MissedEdge {
  readonly from: EdgeName;
  readonly start: number;
  readonly end: number;
  readonly length: number;
}

/** All needle lines of one template with one foot. */
export interface NeedleLines {
  readonly lines: readonly NeedleLine[];
  readonly missed: readonly MissedEdge[];
  /** Edges the foot cannot enter at all, such as a window narrower than the foot. */
  readonly collapsed: readonly EdgeName[];
}
