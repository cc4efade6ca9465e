// What a placement is moved among: its template and needle line, the lines it may be put on, the lines sewn before it.

import type { Evaluation } from '../../engine/evaluation.ts';
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
import type { StitchedHere } from '../../place/target.ts';
import type { LaidPlacement } from '../../stitch/laid-placement.ts';
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
  if (!on) return undefined;
  const known = layingsOf.get(state.evaluation) ?? new Map<string, Laying | undefined>();
  layingsOf.set(state.evaluation, known);
  const key = `${on.area.id} ${on.sheet?.id} ${id}`;
  if (!known.has(key)) known.set(key, layingOn(state, on, id));
  return known.get(key);
}

/** Asked for at every move of a pointer, and the same as long as the evaluation is. */
const layingsOf = new WeakMap<Evaluation, Map<string, Laying | undefined>>();

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
  const needleOffset = carryVec(inverse(area.frame), { x, y });
  return {
    sheet: sheet.id,
    id,
    placement,
    foot,
    setting: {
      shape: shape.value,
      needle: needleLines(shape.value, foot.diameter),
      lines: unitLines(area, countAlong(steps, area.side)),
      stitched: stitchedBy(earlier),
      needleOffset,
    },
    axes: axesOf(repeatIn(area, steps), area),
    needleOffset,
  };
}

/** The lines of placements laid before, kept as long as the last of them lies as it does. */
function stitchedBy(earlier: readonly LaidPlacement[]): StitchedHere {
  const last = earlier.at(-1);
  if (!last) return NOTHING_SEWN;
  const known = stitchedUpTo.get(last);
  if (known && known.earlier.length === earlier.length && known.earlier.every((laid, i) => laid === earlier[i])) return known.lines;
  const lines = linesOf(earlier);
  stitchedUpTo.set(last, { earlier, lines });
  return lines;
}

const NOTHING_SEWN: StitchedHere = new Map();
const stitchedUpTo = new WeakMap<LaidPlacement, { readonly earlier: readonly LaidPlacement[]; readonly lines: StitchedHere }>();
