// Sheets whose areas are not on the top any more. They are kept as they are, and come back when the top does.

import type { Evaluation } from '../../engine/evaluation.ts';
import { areasFor, sheetIds } from '../../stitch/sheet-areas.ts';

export interface LeftOut {
  readonly sheet: string;
  readonly name: string;
  /** All of its areas are gone, or these of the ones it names. */
  readonly lost: 'all' | readonly string[];
}

/** Sheets that have lost areas, in the order of the pile; a sheet that never named any but has none counts as having lost all. */
export function sheetsLeftOut({ plan, top }: Pick<Evaluation, 'plan' | 'top'>): readonly LeftOut[] {
  const there = new Set(top.areas.map(({ id }) => id));
  return sheetIds(plan).flatMap((id): readonly LeftOut[] => {
    const sheet = plan.sheets[id]!;
    if (areasFor(sheet.for, top.areas).length === 0) return [{ sheet: id, name: sheet.name, lost: 'all' }];
    const lost = (sheet.for.only ?? []).filter((area) => !there.has(area));
    return lost.length > 0 ? [{ sheet: id, name: sheet.name, lost }] : [];
  });
}
