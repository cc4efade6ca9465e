// A template that balances beyond the edge of the top tips when the hand lets go of it, and drags under the foot.

import { centroid } from '../../geometry/centroid.ts';
import { type Pose, after, carry } from '../../geometry/pose.ts';
import { SAME_POINT } from '../../num/tolerances.ts';
import type { Finding } from '../finding.ts';
import type { CheckInput } from '../input.ts';
import { finding, placeOf } from '../report.ts';
import { chosenPlacements, linesOfImage } from '../stitched.ts';
import { soInPlaces, templateName, written } from '../words.ts';

/** One finding for each placement that balances beyond the edge of the top in some of its images; measured is the farthest beyond. */
export function nothingToRestOn(input: CheckInput): readonly Finding[] {
  const { plan, top } = input;
  const areaById = new Map(top.areas.map((area) => [area.id, area] as const));
  const worst = new Map<string, { finding: Finding; count: number; lines: string[] }>();
  for (const laid of chosenPlacements(input)) {
    const balance = centroid(laid.template.outline, laid.template.windows.map(({ path }) => path));
    if (!balance) continue;
    laid.images.forEach((image, i) => {
      const inArea: Pose<'template', 'area'> = after(laid.pose, image);
      for (const id of laid.areas) {
        const area = areaById.get(id);
        if (!area) continue;
        const at = carry(area.frame, carry(inArea, balance));
        const beyond = Math.max(-at.x, -at.y, at.x - top.width, at.y - top.height);
        if (beyond <= SAME_POINT) continue;
        const key = `${laid.sheet}\n${laid.placement}`;
        const before = worst.get(key);
        const lines = laid.passes.flatMap((pass) => linesOfImage(input, { ...laid, areas: [id] }, pass.pass, i).map((line) => line.id));
        const all = [...(before?.lines ?? []), ...lines];
        if (before && (before.finding.measured ?? 0) >= beyond) {
          worst.set(key, { ...before, count: before.count + 1, lines: all });
          continue;
        }
        const message = `${templateName(plan, laid.sheet, laid.placement)} balances ${written(plan, beyond)} beyond the edge of the top and has nothing to rest on. Lay something as thick as the quilt beside it, or sew from its other side.`;
        const where = { area: id, sheet: laid.sheet, placement: laid.placement, at: placeOf(at) };
        worst.set(key, { finding: finding('nothing-to-rest-on', message, where, { measured: beyond, limit: 0 }), count: (before?.count ?? 0) + 1, lines: all });
      }
    });
  }
  return [...worst.values()].map(({ finding: found, count, lines }) => ({ ...found, message: found.message + soInPlaces(count), where: { ...found.where, lines } }));
}
