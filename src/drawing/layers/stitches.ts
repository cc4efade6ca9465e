// The stitched lines: where the needle sews, every image of every pass of the chosen sheets.

import { type Bounds, boundsOf, unionBounds } from '../../geometry/bounds.ts';
import type { Path } from '../../geometry/path.ts';
import { carry } from '../../geometry/pose.ts';
import { quiltPath } from '../../stitch/quilt-path.ts';
import type { StitchedLine } from '../../stitch/stitched-line.ts';
import type { Drawn } from '../display-list.ts';
import { remembered } from '../remember.ts';

/** A stitched line on the quilt. */
export const stitchesOf = remembered((line: StitchedLine): Drawn<'quilt'> => ({ kind: 'path', layer: 'needle', path: quiltPath(line), source: line.id }));

/**
 * The rectangle grown to hold the lines that leave it. Most lines lie well inside, which is told from the circle round the
 * bounds they share with the other images of their pass; only the others are measured.
 */
export function grownToHold(bounds: Bounds, lines: readonly StitchedLine[]): Bounds {
  const reaching = lines.filter((line) => !surelyWithin(bounds, line));
  return reaching.length === 0 ? bounds : unionBounds([bounds, ...reaching.map((line) => boundsOf(quiltPath(line)))]);
}

function surelyWithin(bounds: Bounds, { source, to, needleOffset }: StitchedLine): boolean {
  const { x, y, radius } = circleRound(source);
  const middle = carry(to, { x, y });
  const roundX = middle.x + needleOffset.x;
  const roundY = middle.y + needleOffset.y;
  return roundX - radius >= bounds.minX && roundX + radius <= bounds.maxX && roundY - radius >= bounds.minY && roundY + radius <= bounds.maxY;
}

/** A circle that holds the path. */
const circleRound = remembered((path: Path<'area'>) => {
  const { minX, minY, maxX, maxY } = boundsOf(path);
  return { x: (minX + maxX) / 2, y: (minY + maxY) / 2, radius: Math.hypot(maxX - minX, maxY - minY) / 2 };
});
