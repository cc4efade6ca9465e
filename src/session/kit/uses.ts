// Where things of the kit are used: the sheets, and the placements on them.

import type { Placement, Plan } from '../../model/plan.ts';
import { sheetIds } from '../../stitch/sheet-areas.ts';

export interface UseOnSheet {
  readonly sheet: string;
  readonly name: string;
  readonly chosen: boolean;
  readonly placements: readonly string[];
}

export function usesOfTemplate(plan: Plan, template: string): readonly UseOnSheet[] {
  return uses(plan, (placement) => placement.template === template);
}

export function usesOfFoot(plan: Plan, foot: string): readonly UseOnSheet[] {
  return uses(plan, (placement) => placement.foot === foot);
}

/** Placements of a template that are registered by one of its etchings. */
export function usesOfEtching(plan: Plan, template: string, etching: string): readonly UseOnSheet[] {
  return uses(plan, (placement) => placement.template === template && placement.registrations.some(({ put }) => put === `etching:${etching}`));
}

/** How many placements there are in all. */
export function countUses(found: readonly UseOnSheet[]): number {
  return found.reduce((sum, { placements }) => sum + placements.length, 0);
}

function uses(plan: Plan, isUse: (placement: Placement) => boolean): readonly UseOnSheet[] {
  return sheetIds(plan).flatMap((id) => {
    const sheet = plan.sheets[id]!;
    const placements = Object.keys(sheet.placements).filter((placement) => isUse(sheet.placements[placement]!));
    return placements.length === 0 ? [] : [{ sheet: id, name: sheet.name, chosen: sheet.chosen, placements }];
  });
}
