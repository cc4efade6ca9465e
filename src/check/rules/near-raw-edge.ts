// Nothing may be sewn in the allowance along the raw edge, where seam and binding will lie.

import { type Bounds, boundsOf } from '../../geometry/bounds.ts';
import { vec } from '../../geometry/point.ts';
import { SAME_POINT } from '../../num/tolerances.ts';
import { quiltPath } from '../../stitch/quilt-path.ts';
import { SIDES } from '../../top/area.ts';
import type { Side } from '../../model/plan.ts';
import type { Finding } from '../finding.ts';
import type { CheckInput } from '../input.ts';
import { type Hit, byPass, finding } from '../report.ts';
import { farthest, roughBounds, soundClearance } from '../stitched.ts';
import { soInPlaces, templateName, written, writtenBeside } from '../words.ts';

const OUTWARD = { top: vec<'quilt'>(0, -1), right: vec<'quilt'>(1, 0), bottom: vec<'quilt'>(0, 1), left: vec<'quilt'>(-1, 0) };

/** One finding for each pass that comes nearer to the raw edge than its clearance; measured is the nearest it comes, less than 0 beyond the edge. */
export function nearRawEdge(input: CheckInput): readonly Finding[] {
  const { plan, top } = input;
  const limit = soundClearance(plan.top.clearance.rawEdge);
  const hits: Hit[] = [];
  for (const line of input.lines) {
    if (nearestSide(roughBounds(line), top).distance >= limit) continue;
    const { side, distance } = nearestSide(boundsOf(quiltPath(line)), top);
    if (distance >= limit - SAME_POINT) continue;
    hits.push({ line, measured: distance, at: () => farthest(quiltPath(line), OUTWARD[side]) ?? { x: 0, y: 0 } });
  }
  return byPass(hits).map(({ worst: { measured }, lines, where }) => {
    const what = `The needle line of ${templateName(plan, where.sheet!, where.placement!)}`;
    const how =
      measured < -SAME_POINT
        ? `${what} runs ${written(plan, -measured)} over the raw edge.`
        : `${what} comes to ${writtenBeside(plan, Math.max(0, measured), limit)} from the raw edge. The allowance is ${written(plan, limit)}.`;
    return finding('near-raw-edge', how + soInPlaces(lines.length), { ...where, lines }, { measured, limit });
  });
}

function nearestSide({ minX, minY, maxX, maxY }: Bounds, { width, height }: { readonly width: number; readonly height: number }): { readonly side: Side; readonly distance: number } {
  const distances: { readonly [side in Side]: number } = { top: minY, right: width - maxX, bottom: height - maxY, left: minX };
  return SIDES.map((side) => ({ side, distance: distances[side] })).reduce((a, b) => (b.distance < a.distance ? b : a));
}
