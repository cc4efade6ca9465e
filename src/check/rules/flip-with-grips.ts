// A template with grips on one face lies on its bare face when it is turned over. Mirror images turn it over, unless the
// template is its own mirror image: then the same line is sewn face up with the template turned.

import { shapeOf } from '../../model/kit/shape-of.ts';
import type { LaidPlacement } from '../../stitch/laid-placement.ts';
import type { Finding } from '../finding.ts';
import type { CheckInput } from '../input.ts';
import { isOwnMirrorImage } from '../own-mirror-image.ts';
import { finding, placeOf } from '../report.ts';
import { chosenPlacements, linesOfImage, startOnQuilt } from '../stitched.ts';
import { templateName } from '../words.ts';

/** One finding for each placement of a template with grips on one face that has to be sewn face down in some of its images. */
export function flipWithGrips(input: CheckInput): readonly Finding[] {
  const { plan } = input;
  const bySheetAndPlacement = new Map<string, LaidPlacement[]>();
  for (const laid of chosenPlacements(input)) {
    const key = `${laid.sheet}\n${laid.placement}`;
    bySheetAndPlacement.set(key, [...(bySheetAndPlacement.get(key) ?? []), laid]);
  }
  return [...bySheetAndPlacement.values()].flatMap((alike) => {
    const { sheet, placement } = alike[0]!;
    const template = plan.kit.templates[plan.sheets[sheet]?.placements[placement]?.template ?? ''];
    if (template?.grips !== 'one-face') return [];
    const shape = shapeOf(template);
    if (!shape.ok || isOwnMirrorImage(shape.value)) return [];
    const faceDown = alike.flatMap((laid) =>
      laid.images.flatMap((image, i) => (image.flipped === laid.pose.flipped ? [] : laid.passes.flatMap((pass) => linesOfImage(input, laid, pass.pass, i)))),
    );
    const first = faceDown[0];
    if (!first) return [];
    const count = faceDown.length === 1 ? 'One pass needs' : `${faceDown.length} passes need`;
    const message = `${count} ${templateName(plan, sheet, placement)} face down, and its grips are on one face only. Hold it well, or put grips on both.`;
    const at = startOnQuilt(first);
    const where = { area: first.area, sheet, placement, lines: faceDown.map(({ id }) => id) };
    return [finding('flip-with-grips', message, at ? { ...where, at: placeOf(at) } : where)];
  });
}
