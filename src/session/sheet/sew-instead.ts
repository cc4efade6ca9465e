// One sheet sewn in place of those that were sewn on the same areas.

import type { Draft } from 'immer';
import type { Plan, SheetFor } from '../../model/plan.ts';
import { areasFor } from '../../stitch/sheet-areas.ts';
import type { Area } from '../../top/area.ts';

/**
 * Has a sheet sewn. Others that were to be sewn on the same areas are left out; one that is for more areas than these goes on being
 * sewn on the rest.
 */
export function sewInstead(draft: Draft<Plan>, id: string, areas: readonly Area[]): void {
  const sheet = draft.sheets[id];
  if (!sheet) return;
  const mine = new Set(areasFor(sheet.for, areas).map((area) => area.id));
  sheet.chosen = true;
  for (const [otherId, other] of Object.entries(draft.sheets)) {
    if (otherId === id || !other.chosen) continue;
    const theirs = areasFor(other.for, areas).map((area) => area.id);
    const shared = theirs.filter((area) => mine.has(area));
    if (shared.length === 0) continue;
    if (shared.length === theirs.length) other.chosen = false;
    else other.for = without(other.for, shared) as Draft<SheetFor>;
  }
}

function without(target: SheetFor, ids: readonly string[]): SheetFor {
  if (target.only) return { ...target, only: target.only.filter((id) => !ids.includes(id)) };
  return { ...target, except: [...new Set([...(target.except ?? []), ...ids])] };
}
