// No line may enter a keep-out, nor come nearer to it than its clearance.

import { boundsMeet, boundsOf } from '../../geometry/bounds.ts';
import { splitPath } from '../../geometry/change.ts';
import { gapBetween } from '../../geometry/gap.ts';
import { whereIs } from '../../geometry/inside.ts';
import { pathLength, pointAlong } from '../../geometry/measure.ts';
import { meetPaths } from '../../geometry/meet-paths.ts';
import type { Path } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { SAME_POINT } from '../../num/tolerances.ts';
import { quiltPath } from '../../stitch/quilt-path.ts';
import type { LaidKeepOut } from '../../top/area.ts';
import type { Finding } from '../finding.ts';
import type { CheckInput } from '../input.ts';
import { type Hit, byPass, finding } from '../report.ts';
import { roughBounds } from '../stitched.ts';
import { soInPlaces, templateName, written, writtenBeside } from '../words.ts';

/**
 * One finding for each keep-out and each pass that enters it (measured: inches of one line inside, the most of any) and one
 * for each that comes nearer than its clearance (measured: the nearest it comes).
 */
export function keepOut(input: CheckInput): readonly Finding[] {
  const rough = input.lines.map(roughBounds);
  return input.top.keepOuts.flatMap((shape) => {
    const bounds = boundsOf(shape.outline);
    const near = input.lines.filter((_, i) => boundsMeet(rough[i]!, bounds, shape.clearance));
    return near.length === 0 ? [] : findingsAt(input, shape, near);
  });
}

function findingsAt(input: CheckInput, shape: LaidKeepOut, lines: CheckInput['lines']): readonly Finding[] {
  const { plan } = input;
  const entering: Hit[] = [];
  const beside: Hit[] = [];
  for (const line of lines) {
    const path = quiltPath(line);
    const inside = stretchInside(path, shape.outline);
    if (inside) {
      // The most inside is the worst, and the worst is the least.
      entering.push({ line, measured: -inside.length, at: () => inside.at });
      continue;
    }
    const gap = gapBetween(path, shape.outline, shape.clearance);
    if (gap && gap.distance < shape.clearance - SAME_POINT) beside.push({ line, measured: gap.distance, at: () => gap.onA });
  }
  const what = (where: Finding['where']) => `The needle line of ${templateName(plan, where.sheet!, where.placement!)}`;
  const field = `top.keepOuts.${shape.id}`;
  return [
    ...byPass(entering).map(({ worst, lines: ids, where }) =>
      finding('in-keep-out', `${what(where)} enters ${shape.name}: ${written(plan, -worst.measured)} of it lie inside.${soInPlaces(ids.length)}`, { ...where, field }, { measured: -worst.measured, limit: 0 }),
    ),
    ...byPass(beside).map(({ worst: { measured }, lines: ids, where }) =>
      finding(
        'near-keep-out',
        `${what(where)} comes to ${writtenBeside(plan, measured, shape.clearance)} from ${shape.name}. It asks for ${written(plan, shape.clearance)}.${soInPlaces(ids.length)}`,
        { ...where, field },
        { measured, limit: shape.clearance },
      ),
    ),
  ];
}

/** How much of a path lies inside an outline, and the middle of the longest piece that does; undefined when none does. */
function stretchInside(path: Path<'quilt'>, outline: Path<'quilt'>): { readonly length: number; readonly at: Point<'quilt'> } | undefined {
  const cuts = meetPaths(path, outline).flatMap((meeting) => (meeting.kind === 'overlap' ? meeting.alongA : [meeting.alongA]));
  let length = 0;
  let longest = { length: 0, at: { x: 0, y: 0 } };
  for (const piece of splitPath(path, cuts)) {
    const pieceLength = pathLength(piece);
    const middle = pointAlong(piece, pieceLength / 2).point;
    if (pieceLength <= SAME_POINT || whereIs(outline, middle) !== 'inside') continue;
    length += pieceLength;
    if (pieceLength > longest.length) longest = { length: pieceLength, at: middle };
  }
  return length > SAME_POINT ? { length, at: longest.at } : undefined;
}
