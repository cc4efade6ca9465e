// What a placement is moved among: its template and needle line, the lines it may be put on, the lines sewn before it.

import { carryVec, inverse } from '../../geometry/pose.ts';
import type { Vec } from '../../geometry/point.ts';
import type { Pose } from '../../geometry/pose.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import type { Foot, Placement } from '../../model/plan.ts';
import { needleLines } from '../../needle/needle-lines.ts';
import type { PlaceSetting } from '../../place/place.ts';
import { linesOf } from '../../stitch/lay.ts';
import { repeatIn } from '../../stitch/repeat.ts';
import { countAlong, unitLines } from '../../stitch/unit-lines.ts';
import { type SessionState, planOf } from '../store.ts';
import { type OnTable, axesOf, onTable } from './on-table.ts';

export interface Laying {
  readonly sheet: string;
  readonly id: string;
  readonly placement: Placement;
  readonly foot: Foot;
  readonly setting: PlaceSetting;
  /** From the axes it is laid in to the quilt. */
  readonly axes: Pose<'area', 'quilt'>;
  /** From the foot's centre to the needle, in the axes it is laid in. */
  readonly needleOffset: Vec<'area'>;
}

/** What one placement of the sheet on the table is moved among; undefined when there is no such placement or its template has no good shape. */
export function layingOf(state: SessionState, id: string): Laying | undefined {
  const on = onTable(state);
  return on && layingOn(state, on, id);
}

function layingOn(state: SessionState, { sheet, area }: OnTable, id: string): Laying | undefined {
  const { kit } = planOf(state);
  const placement = sheet?.sheet.placements[id];
  const template = placement && kit.templates[placement.template];
  const foot = placement && kit.feet[placement.foot];
  if (!sheet || !placement || !template || !foot) return undefined;
  const shape = shapeOf(template);
  if (!shape.ok) return undefined;
  const steps = placement.repeat ?? sheet.sheet.repeat;
  // A placement may lean on the lines of those laid before it, and on no others.
  const order = Object.keys(sheet.sheet.placements);
  const before = new Set(order.slice(0, order.indexOf(id)));
  const earlier = state.evaluation.placements.filter((laid) => laid.sheet === sheet.id && before.has(laid.placement) && laid.areas.includes(area.id));
  const [x, y] = foot.needleOffset;
  return {
    sheet: sheet.id,
    id,
    placement,
    foot,
    setting: {
      shape: shape.value,
      needle: needleLines(shape.value, foot.diameter),
      lines: unitLines(area, countAlong(steps, area.side)),
      stitched: linesOf(earlier),
    },
    axes: axesOf(repeatIn(area, steps), area),
    needleOffset: carryVec(inverse(area.frame), { x, y }),
  };
}
