// The picture of one tracing sheet on one area, whether it is sewn or not: for the stack, for sheets side by side, and for those
// that show through.

import type { Evaluation } from '../engine/evaluation.ts';
import { areasById } from '../space/lines-near.ts';
import { expand } from '../stitch/expand.ts';
import type { LaidPlacement } from '../stitch/laid-placement.ts';
import type { StitchedLine } from '../stitch/stitched-line.ts';
import type { Area } from '../top/area.ts';
import type { DisplayList, Layer } from './display-list.ts';
import { drawTop } from './draw.ts';
import { stitchesOf } from './layers/stitches.ts';

type Laid = Pick<Evaluation, 'plan' | 'top' | 'placements'>;

/** The sheet's own stitched lines on an area with the area's cloth, in quilt coordinates; an area that is not there gives an empty list. */
export function drawSheet(evaluation: Laid, sheet: string, area: string, layers: readonly Layer[] = ['ground', 'seam', 'raw-edge', 'needle']): DisplayList<'quilt'> {
  return drawTop({ ...evaluation, lines: linesOfSheet(evaluation, sheet, area) }, { area, layers, sheets: [sheet] });
}

/** A sheet's stitched lines on an area, or on all it is for. */
export function linesOfSheet({ top, placements }: Laid, sheet: string, area?: string): readonly StitchedLine[] {
  const byId = areasById(top.areas);
  return placements.flatMap((laid) => {
    if (laid.sheet !== sheet || (area !== undefined && !laid.areas.includes(area))) return [];
    return area === undefined ? expand(laid, byId) : linesHere(laid, byId, area);
  });
}

function linesHere(laid: LaidPlacement, byId: ReadonlyMap<string, Area>, area: string): readonly StitchedLine[] {
  return expand(laid, byId).filter((line) => line.area === area);
}

/** What a sheet sews, drawn without anything else: to be laid over another. */
export function stitchesOfSheet(evaluation: Laid, sheet: string) {
  return linesOfSheet(evaluation, sheet).map(stitchesOf);
}
