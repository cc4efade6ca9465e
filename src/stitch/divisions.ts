// The division lines of a border stand among its reference lines, so that other sheets, marks and people can use them.

import type { RepeatStep, Sheet } from '../model/plan.ts';
import type { Area, ReferenceLine } from '../top/area.ts';
import { areasFor } from './sheet-areas.ts';
import { countAlong, divisionLines } from './unit-lines.ts';

/** The areas, those a sheet repeats along with their division lines added; where sheets differ, the first sheet's count. */
export function withDivisions(areas: readonly Area[], sheets: readonly Sheet[]): readonly Area[] {
  const counts = new Map<string, number>();
  for (const sheet of sheets) {
    const repeats: readonly (readonly RepeatStep[])[] = [sheet.repeat, ...Object.values(sheet.placements).flatMap((p) => (p.repeat ? [p.repeat] : []))];
    for (const area of areasFor(sheet.for, areas)) {
      if (counts.has(area.id)) continue;
      const count = repeats.map((steps) => countAlong(steps, area.side)).find((found) => found !== undefined);
      if (count !== undefined) counts.set(area.id, count);
    }
  }
  if (counts.size === 0) return areas;
  const alike = new Map<string, readonly ReferenceLine[]>();
  return areas.map((area) => {
    const count = counts.get(area.id);
    if (count === undefined) return area;
    const shape = `${area.shape}/${count}`;
    const referenceLines = alike.get(shape) ?? [...area.referenceLines, ...divisionLines(area, count)];
    alike.set(shape, referenceLines);
    return { ...area, shape, referenceLines };
  });
}
