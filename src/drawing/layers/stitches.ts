// The stitched lines: where the needle sews, every image of every pass of the chosen sheets.

import { type Bounds, boundsHold, boundsOf, boundsOfPoints, unionBounds } from '../../geometry/bounds.ts';
import { carry } from '../../geometry/pose.ts';
import { quiltPath } from '../../stitch/quilt-path.ts';
import type { StitchedLine } from '../../stitch/stitched-line.ts';
import type { Drawn } from '../display-list.ts';
import { remembered } from '../remember.ts';

/** A stitched line on the quilt. */
export const stitchesOf = remembered((line: StitchedLine): Drawn<'quilt'> => ({ kind: 'path', layer: 'needle', path: quiltPath(line), source: line.id }));

/**
 * The rectangle grown to hold the lines that leave it. Most lines lie well inside, which is told from the corners of the
 * bounds they share with the other images of their pass; only the others are measured.
 */
export function grownToHold(bounds: Bounds, lines: readonly StitchedLine[]): Bounds {
  return unionBounds([bounds, ...lines.filter((line) => !surelyWithin(bounds, line)).map((line) => boundsOf(quiltPath(line)))]);
}

function surelyWithin(bounds: Bounds, line: StitchedLine): boolean {
  const { minX, minY, maxX, maxY } = boundsOf(line.source);
  const { x, y } = line.needleOffset;
  const corners = [{ x: minX, y: minY }, { x: maxX, y: minY }, { x: maxX, y: maxY }, { x: minX, y: maxY }];
  const box = boundsOfPoints(corners.map((corner) => carry(line.to, corner)));
  return boundsHold(bounds, { x: box.minX + x, y: box.minY + y }) && boundsHold(bounds, { x: box.maxX + x, y: box.maxY + y });
}
