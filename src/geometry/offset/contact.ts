// What an offset knows about itself: which stretch of the edge, or which corner, each piece of it was rolled from.

import type { Path } from '../path.ts';
import type { Frame } from '../point.ts';

/** A stretch of the edge, or a corner of it, that the roller touches. */
export interface Touch {
  readonly kind: 'edge' | 'corner';
  /** Index of the edge's line or arc the roller runs along, or of the vertex it turns about. */
  readonly edge: number;
  /** Inches along the edge where the contact begins and ends; the same for a corner. Against the edge's own direction, start is greater than end. */
  readonly edgeStart: number;
  readonly edgeEnd: number;
}

/** One piece of an offset and what the roller touches there. */
export interface Contact extends Touch {
  /**
   * Inches along the offset where this piece begins and ends. The same where the roller touches a whole stretch at once:
   * an inside arc of exactly its own radius.
   */
  readonly start: number;
  readonly end: number;
  /** What it touches on its other side too, in a slot exactly as wide as the roller. */
  readonly opposite?: Touch;
}

/** One line of an offset. */
export interface OffsetLoop<F extends Frame> {
  /** The path of the roller's centre: clockwise on the screen when closed, open in a slot exactly as wide as the roller. */
  readonly path: Path<F>;
  /** In inches. */
  readonly length: number;
  /** Enclosed, in square inches; 0 for an open line. */
  readonly area: number;
  /** In order along the path, without gaps. */
  readonly contacts: readonly Contact[];
}

/** A stretch of an edge in inches along it; one that runs over the edge's start has end < start. */
export interface EdgeStretch {
  readonly start: number;
  readonly end: number;
  readonly length: number;
}
