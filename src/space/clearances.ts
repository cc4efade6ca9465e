// What a quilter measures by hand beside a line: how far it is to the nearest seam, and to the nearest other line.

import { boundsMeet, boundsOf } from '../geometry/bounds.ts';
import { gapBetween } from '../geometry/gap.ts';
import { type Inward, leastInward } from '../geometry/inward.ts';
import { type Path, endOf, startOf } from '../geometry/path.ts';
import type { Point } from '../geometry/point.ts';
import { quiltPath } from '../stitch/quilt-path.ts';
import type { StitchedLine } from '../stitch/stitched-line.ts';
import type { Area, Seam } from '../top/area.ts';

export interface ToSeam {
  readonly seam: Seam;
  /** Inches inward from the seam; less than 0 beyond it. */
  readonly distance: number;
  readonly at: Point<'area'>;
}

/**
 * The seam or raw edge of an area that some paths come nearest to, or go farthest beyond. A mitre lies within the area and is
 * crossed freely, so it is left out; undefined when the area has no seam of its own beside the paths.
 */
export function nearestSeam(paths: readonly Path<'area'>[], { seams }: Pick<Area, 'seams'>): ToSeam | undefined {
  let best: ToSeam | undefined;
  for (const seam of seams) {
    const from = startOf(seam.path);
    const to = endOf(seam.path);
    if (seam.id === 'mitre' || !from || !to) continue;
    for (const path of paths) {
      const inward: Inward<'area'> | undefined = leastInward(path, from, to);
      if (inward && (!best || inward.distance < best.distance)) best = { seam, ...inward };
    }
  }
  return best;
}

export interface ToLine {
  readonly line: StitchedLine;
  /** In inches; 0 where they meet. */
  readonly distance: number;
  /** The two places between which it is measured. */
  readonly from: Point<'quilt'>;
  readonly to: Point<'quilt'>;
}

/** The stitched line that comes nearest to some paths on the quilt, if one comes within so many inches. */
export function nearestLine(paths: readonly Path<'quilt'>[], others: readonly StitchedLine[], within: number): ToLine | undefined {
  let best: ToLine | undefined;
  let reach = within;
  for (const line of others) {
    const other = quiltPath(line);
    for (const path of paths) {
      if (!boundsMeet(boundsOf(path), boundsOf(other), reach)) continue;
      const gap = gapBetween(path, other, reach);
      if (!gap || (best && gap.distance >= best.distance)) continue;
      best = { line, distance: gap.distance, from: gap.onA, to: gap.onB };
      reach = gap.distance;
      if (reach === 0) return best;
    }
  }
  return best;
}
