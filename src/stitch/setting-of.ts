// What a laid placement was laid among: its template and needle line, the lines it may be put on, the lines sewn before it.

import type { RepeatStep } from '../model/plan.ts';
import type { PlaceSetting } from '../place/place.ts';
import type { Area } from '../top/area.ts';
import { linesOf } from './lay.ts';
import type { LaidPlacement } from './laid-placement.ts';
import { countAlong, unitLines } from './unit-lines.ts';

/** The setting of a placement on an area it is laid on, with the steps of its repeat; `earlier` are those laid before it on the same sheet. */
export function settingOf(laid: LaidPlacement, steps: readonly RepeatStep[], area: Area, earlier: readonly LaidPlacement[]): PlaceSetting {
  return {
    shape: laid.template,
    needle: laid.needle,
    lines: unitLines(area, countAlong(steps, area.side)),
    stitched: linesOf(earlier.filter((other) => other.areas.includes(area.id))),
    needleOffset: laid.needleOffset,
  };
}
