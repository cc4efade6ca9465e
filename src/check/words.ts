// How findings speak: short sentences, names of the plan, lengths in the unit people chose.

import { styleOf } from '../model/length-style.ts';
import type { Plan } from '../model/plan.ts';
import { type LengthStyle, writeLength } from '../num/inches.ts';
import type { CheckInput } from './input.ts';

/**
 * A measured length beside the limit it breaks. Where both would read the same, it is written finer, so that no finding
 * says that 1/2 in is less than 1/2 in.
 */
export function writtenBeside(plan: Plan, measured: number, limit: number): string {
  const style = styleOf(plan);
  const first = writeLength(measured, style);
  if (first !== writeLength(limit, style)) return first;
  for (const decimals of [3, 4, 6, 9]) {
    const finer: LengthStyle = plan.shownIn === 'cm' ? { unit: 'cm', decimals } : { unit: 'in', decimals };
    const text = writeLength(measured, finer);
    if (text !== writeLength(limit, finer)) return text;
  }
  return first;
}

/** A length in the plan's unit. */
export function written(plan: Plan, length: number): string {
  return writeLength(length, styleOf(plan));
}

/** "It is so in 12 places." after the first; nothing for one. */
export function soInPlaces(count: number): string {
  return count > 1 ? ` It is so in ${count} places.` : '';
}

/** The name of the template a placement lays, or what the plan calls it. */
export function templateName(plan: Plan, sheet: string, placement: string): string {
  const id = plan.sheets[sheet]?.placements[placement]?.template ?? placement;
  return plan.kit.templates[id]?.name ?? id;
}

/** The name of a sheet. */
export function sheetName(plan: Plan, sheet: string): string {
  return plan.sheets[sheet]?.name ?? sheet;
}

/** The name of an area, as in "block, row 1, column 2". */
export function areaName(input: CheckInput, id: string): string {
  return input.top.areas.find((area) => area.id === id)?.name ?? id;
}
