// Which templates are seen on the table in Audition, and where the handle of the one picked out stands.

import { boundsOf } from '../../geometry/bounds.ts';
import { carry, carryVec, after } from '../../geometry/pose.ts';
import { angleOf } from '../../geometry/point.ts';
import type { LaidPlacement } from '../../stitch/laid-placement.ts';
import type { SessionState } from '../store.ts';
import { type ScreenPoint, onScreen } from '../view.ts';
import { middleOf } from './moves.ts';
import { type OnTable, axesOf, laidOn, onTable, pickedOn } from './on-table.ts';

export interface ShownTemplate {
  readonly laid: LaidPlacement;
  readonly isPicked: boolean;
}

/**
 * The templates seen on the table, the topmost first: those picked out, and those along which nothing is sewn yet, which would be
 * forgotten otherwise. Of the others only their lines are seen.
 */
export function shownTemplates(state: SessionState): readonly ShownTemplate[] {
  const on = onTable(state);
  if (!on?.sheet) return [];
  const picked = pickedOn(state.selection, on.sheet.id);
  const bare = Object.entries(on.sheet.sheet.placements).flatMap(([id, { passes }]) => (Object.keys(passes).length === 0 && !picked.includes(id) ? [id] : []));
  return [...picked.map((id) => ({ id, isPicked: true })), ...bare.reverse().map((id) => ({ id, isPicked: false }))].flatMap(({ id, isPicked }) => {
    const laid = laidOn(state, on, id);
    return laid ? [{ laid, isPicked }] : [];
  });
}

/** How far the handle stands off the template, in CSS pixels. */
const OFF = 40;
/** And from the edge of the table, at the least. */
const RIM = 28;

export interface Handle {
  readonly placement: string;
  readonly at: ScreenPoint;
  /** The middle it stands off from. */
  readonly middle: ScreenPoint;
}

/** The handle that turns the one template picked out: off the end of one of its own axes, the first that is in sight. */
export function handleOf(state: SessionState): Handle | undefined {
  const on = onTable(state);
  const [only, ...others] = pickedOn(state.selection, on?.sheet?.id);
  const laid = on && only !== undefined && others.length === 0 ? laidOn(state, on, only) : undefined;
  return on && laid ? handleFor(state, on, laid) : undefined;
}

function handleFor({ view, table }: SessionState, { area }: OnTable, laid: LaidPlacement): Handle {
  const pose = after(laid.pose, axesOf(laid, area));
  const { minX, maxX, minY, maxY } = boundsOf(laid.template.outline);
  const middle = onScreen(view, carry(pose, middleOf(laid.template)));
  const places = ([[1, 0], [-1, 0], [0, -1], [0, 1]] as const).map(([x, y]) => {
    const angle = angleOf(carryVec(pose, { x, y }));
    const far = ((x === 0 ? maxY - minY : maxX - minX) / 2) * view.scale + OFF;
    return { x: middle.x + far * Math.cos(angle), y: middle.y + far * Math.sin(angle) };
  });
  const inSight = places.find((place) => place.x >= RIM && place.y >= RIM && place.x <= table.width - RIM && place.y <= table.height - RIM);
  const [first] = places;
  const held = (value: number, whole: number) => Math.max(RIM, Math.min(value, whole - RIM));
  return { placement: laid.placement, middle, at: inSight ?? { x: held(first!.x, table.width), y: held(first!.y, table.height) } };
}
