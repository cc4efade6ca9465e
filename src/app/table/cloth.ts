// Which cloth an area is cut from on the screen: a class name for its tint, which tells pieces apart and means nothing.

import type { DisplayItem } from '../../drawing/display-list.ts';
import type { Area, LaidTop } from '../../top/area.ts';

/** Gives the class of a thing on the ground layer by the area it stands for; nothing for other layers. */
export function clothFor(top: LaidTop): (item: DisplayItem<'quilt'>) => string {
  const byId = new Map(top.areas.map((area) => [area.id, area] as const));
  return (item) => {
    if (item.layer !== 'ground') return '';
    const area = byId.get(item.source);
    return area ? clothOf(area) : 'cloth-whole';
  };
}

function clothOf(area: Area): string {
  switch (area.kind) {
    case 'block':
      return ((area.row ?? 0) + (area.column ?? 0)) % 2 === 0 ? 'cloth-block' : 'cloth-block-other';
    case 'setting-triangle':
    case 'corner-triangle':
      return 'cloth-setting';
    case 'sashing':
    case 'cornerstone':
    case 'border-corner':
      return `cloth-${area.kind}`;
    case 'border-side':
      return `cloth-border-${Math.min(3, area.border ?? 1)}`;
    case 'panel':
    case 'drawn':
    case 'top':
      return 'cloth-whole';
  }
}
