// The needle line of a template and a foot, with its contact map: which stretch of edge, or which corner, the foot
// touches at every point of it.

import type { Contact, EdgeStretch } from '../geometry/offset/contact.ts';
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
export type { Contact, Touch } from '../geometry/offset/contact.ts';

/** A stretch of edge the foot cannot touch, in inches along the edge; a stretch over the edge's start has end < start. */
export interface MissedEdge extends EdgeStretch {
  readonly from: EdgeName;
}

/** All needle lines of one template with one foot. */
export interface NeedleLines {
  readonly lines: readonly NeedleLine[];
  readonly missed: readonly MissedEdge[];
  /** Edges the foot cannot enter at all, such as a window narrower than the foot. */
  readonly collapsed: readonly EdgeName[];
}
