// From laid placements to stitched lines: every found pass, every image of it, on every area it is for.

import { type Pose, after, carryVec } from '../geometry/pose.ts';
import type { Area } from '../top/area.ts';
import type { LaidPlacement } from './laid-placement.ts';
import type { StitchedLine } from './stitched-line.ts';

const expandedBefore = new WeakMap<LaidPlacement, { readonly areas: readonly Area[]; readonly lines: readonly StitchedLine[] }>();

/** The stitched lines of a laid placement, area after area, image after image; nothing is carried to the quilt yet. */
export function expand(laid: LaidPlacement, areaById: ReadonlyMap<string, Area>): readonly StitchedLine[] {
  const areas = laid.areas.flatMap((id) => areaById.get(id) ?? []);
  const before = expandedBefore.get(laid);
  if (before && before.areas.every((area, i) => area === areas[i])) return before.lines;
  const lines = areas.flatMap((area) => laid.images.flatMap((image, index) => linesOf(laid, area, after(image, area.frame), index)));
  expandedBefore.set(laid, { areas, lines });
  return lines;
}

function linesOf(laid: LaidPlacement, area: Area, to: Pose<'area', 'quilt'>, image: number): readonly StitchedLine[] {
  const needleOffset = carryVec(area.frame, laid.needleOffset);
  return laid.passes.flatMap((pass) =>
    pass.kind === 'missing'
      ? []
      : [
          {
            id: `${area.id}/${laid.sheet}/${laid.placement}/${pass.pass}/${image}`,
            area: area.id,
            sheet: laid.sheet,
            placement: laid.placement,
            pass: pass.pass,
            image,
            source: pass.path,
            to,
            needleOffset,
            length: pass.length,
          },
        ],
  );
}
