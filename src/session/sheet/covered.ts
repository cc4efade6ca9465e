// Which lines of sheets that are sewn lie under the sheet on the table: they would be sewn where another is only tried, so that they
// are lifted off while it is looked at, and show through as strongly as their sheet is wished to.

import type { LaidPlacement } from '../../stitch/laid-placement.ts';
import { onTable } from '../lay/on-table.ts';
import { type SessionState, planOf } from '../store.ts';

/** The placements of sewn sheets, other than the one on the table, that are for an area it is for. */
export function coveredPlacements(state: SessionState): readonly LaidPlacement[] {
  const on = onTable(state);
  const { sheets } = planOf(state);
  if (!on?.sheet || on.sheet.sheet.chosen) return NONE;
  const mine = new Set(on.areas.map(({ id }) => id));
  return state.evaluation.placements.filter((laid) => laid.sheet !== on.sheet!.id && sheets[laid.sheet]?.chosen === true && laid.areas.some((id) => mine.has(id)));
}

const NONE: readonly LaidPlacement[] = [];
