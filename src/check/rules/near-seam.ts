// A line that belongs to a piece of the top stays away from the piece's own seams. Seams that lie within the area are
// crossed freely: by lines of drawn areas and of the whole top, and the mitre by those of a border corner.

import { type Bounds, boundsOf } from '../../geometry/bounds.ts';
import { startOf, endOf } from '../../geometry/path.ts';
import { carry } from '../../geometry/pose.ts';
import { SAME_POINT } from '../../num/tolerances.ts';
import type { LaidPlacement } from '../../stitch/laid-placement.ts';
import type { Area } from '../../top/area.ts';
import type { Finding } from '../finding.ts';
import type { CheckInput } from '../input.ts';
import { type Inward, leastInward } from '../../geometry/inward.ts';
import { type Hit, byPass, finding } from '../report.ts';
import { chosenPlacements, laidImages, linesOfImage, soundClearance } from '../stitched.ts';
import { soInPlaces, templateName, written, writtenBeside } from '../words.ts';

/** One finding for each pass that comes nearer to a seam of its own area than the clearance; measured is the nearest it comes, less than 0 over the seam. */
export function nearSeam(input: CheckInput): readonly Finding[] {
  const { plan, top } = input;
  const limit = soundClearance(plan.top.clearance.seam);
  const areaById = new Map(top.areas.map((area) => [area.id, area] as const));
  const hits = chosenPlacements(input).flatMap((laid) => hitsOf(input, laid, areaById, limit));
  return byPass(hits).map(({ worst: { measured }, lines, where }) => {
    const what = `The needle line of ${templateName(plan, where.sheet!, where.placement!)}`;
    const area = areaById.get(where.area ?? '')?.name ?? 'its area';
    const how =
      measured < -SAME_POINT
        ? `${what} runs ${written(plan, -measured)} over the seam of ${area}.`
        : `${what} comes to ${writtenBeside(plan, Math.max(0, measured), limit)} from the seam of ${area}. You asked for ${written(plan, limit)}.`;
    return finding('near-seam', how + soInPlaces(lines.length), where, { measured, limit });
  });
}

/** Worked out once in the axes of like areas, then told for every line that is such an image. */
function hitsOf(input: CheckInput, laid: LaidPlacement, areaById: ReadonlyMap<string, Area>, limit: number): readonly Hit[] {
  const area = areaById.get(laid.areas[0] ?? '');
  if (!area) return [];
  const seams = seamsRound(area);
  if (seams.length === 0) return [];
  return laidImages(laid).flatMap(({ pass, image, path }) => {
    if (staysInside(boundsOf(path), seams, limit)) return [];
    const nearest = seams.flatMap(({ from, to }) => leastInward(path, from, to) ?? []).reduce<Inward<'area'> | undefined>((a, b) => (a && a.distance <= b.distance ? a : b), undefined);
    if (!nearest || nearest.distance >= limit - SAME_POINT) return [];
    return linesOfImage(input, laid, pass.pass, image).map((line): Hit => {
      const frame = areaById.get(line.area)?.frame ?? area.frame;
      return { line, measured: nearest.distance, at: () => carry(frame, nearest.at) };
    });
  });
}

interface StraightSeam {
  readonly from: { readonly x: number; readonly y: number };
  readonly to: { readonly x: number; readonly y: number };
}

function seamsRound(area: Area): readonly StraightSeam[] {
  if (area.kind === 'drawn' || area.kind === 'top') return [];
  return area.seams.flatMap(({ kind, id, path }) => {
    const from = startOf(path);
    const to = endOf(path);
    return kind === 'seam' && id !== 'mitre' && from && to ? [{ from, to }] : [];
  });
}

/** Whether all four corners of the extent lie farther inside every seam than the limit: then so does what it holds. */
function staysInside({ minX, minY, maxX, maxY }: Bounds, seams: readonly StraightSeam[], limit: number): boolean {
  return seams.every(({ from, to }) => {
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const length = Math.hypot(dx, dy);
    // The corner of the extent that lies farthest out.
    const x = dy > 0 ? maxX : minX;
    const y = dx > 0 ? minY : maxY;
    return (dx * (y - from.y) - dy * (x - from.x)) / length >= limit;
  });
}
