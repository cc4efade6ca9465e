// Which areas a sheet is for, gathered by what makes a placement lie the same way on them.

import type { Foot, Plan, RepeatStep, Sheet, SheetFor } from '../model/plan.ts';
import type { Area } from '../top/area.ts';
import { countAlong, runsAlong } from './unit-lines.ts';

/** The areas of the top a sheet is for, in the order of the top. */
export function areasFor(target: SheetFor, areas: readonly Area[]): readonly Area[] {
  return areas.filter(
    (area) =>
      area.kind === target.kind &&
      (target.border === undefined || area.border === target.border) &&
      (target.only === undefined || target.only.includes(area.id)) &&
      !target.except?.includes(area.id),
  );
}

/** Areas on which a placement lies the same way, told apart by a key. */
export interface LikeAreas {
  readonly key: string;
  readonly areas: readonly Area[];
}

/**
 * Areas gathered so that within a group everything laid in their own axes is the same: their shape, the count of a
 * repeat along them and, where the needle is not in the middle of the foot, the way they are turned on the quilt.
 */
export function likeAreas(areas: readonly Area[], steps: readonly RepeatStep[], foot: Foot | undefined): readonly LikeAreas[] {
  const offCentre = foot !== undefined && (foot.needleOffset[0] !== 0 || foot.needleOffset[1] !== 0);
  const along = runsAlong(steps);
  const groups = new Map<string, Area[]>();
  for (const area of areas) {
    const count = along ? `|${countAlong(steps, area.side) ?? 'none'}` : '';
    const turned = offCentre ? `|${area.frame.angle.toFixed(9)}${area.frame.flipped ? 'f' : ''}` : '';
    const key = `${area.shape}${count}${turned}`;
    const group = groups.get(key);
    if (group) group.push(area);
    else groups.set(key, [area]);
  }
  return [...groups].map(([key, members]) => ({ key, areas: members }));
}

/** Sheet ids from the bottom of the pile to the top: those with a place in the order first, the rest as the map has them. */
export function sheetIds(plan: Plan): readonly string[] {
  const placed = (plan.sheetOrder ?? []).filter((id) => id in plan.sheets);
  return [...new Set([...placed, ...Object.keys(plan.sheets)])];
}

/** The sheets that are sewn, in order. */
export function chosenSheets(plan: Plan): readonly (readonly [id: string, sheet: Sheet])[] {
  return sheetIds(plan).flatMap((id) => {
    const sheet = plan.sheets[id];
    return sheet?.chosen ? [[id, sheet] as const] : [];
  });
}
