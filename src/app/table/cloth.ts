// Which cloth an area is cut from on the screen: a class name for its tint, which tells pieces apart and means nothing.

import type { DisplayItem } from '../../drawing/display-list.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { Border } from '../../model/plan.ts';
import type { Area } from '../../top/area.ts';

/** Gives the class of a thing on the ground layer by the area it stands for; nothing for other layers. */
export function clothFor({ top, plan }: Pick<Evaluation, 'top' | 'plan'>): (item: DisplayItem<'quilt'>) => string {
  const byId = new Map(top.areas.map((area) => [area.id, area] as const));
  return (item) => {
    if (item.layer !== 'ground') return '';
    const area = byId.get(item.source);
    return area ? clothOf(area, plan.top.borders) : 'cloth-whole';
  };
}

function clothOf(area: Area, borders: readonly Border[]): string {
  switch (area.kind) {
    case 'block':
      return isOther(area) ? 'cloth-block-other' : 'cloth-block';
    case 'setting-triangle':
    case 'corner-triangle':
      return 'cloth-setting';
    case 'sashing':
    case 'cornerstone':
      return `cloth-${area.kind}`;
    case 'border-corner':
      // Only corner squares are cut from a cloth of their own.
      if (borders[(area.border ?? 1) - 1]?.corners === 'squares') return 'cloth-border-corner';
      return `cloth-border-${Math.min(3, area.border ?? 1)}`;
    case 'border-side':
      return `cloth-border-${Math.min(3, area.border ?? 1)}`;
    case 'panel':
    case 'drawn':
    case 'top':
      return 'cloth-whole';
  }
}

/** On point, the blocks between the rows, whose row is a half; set straight, all blocks are of one cloth. */
function isOther({ row = 0 }: Area): boolean {
  return !Number.isInteger(row);
}
