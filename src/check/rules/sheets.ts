// Sheets that sew nothing, and sheets that sew one area twice.

import type { Sheet } from '../../model/plan.ts';
import { areasFor, chosenSheets } from '../../stitch/sheet-areas.ts';
import type { Finding } from '../finding.ts';
import type { CheckInput } from '../input.ts';
import { finding } from '../report.ts';
import { areaName } from '../words.ts';

/** Findings about chosen sheets: empty ones, ones for no area, and each two that are for the same area. */
export function sheets(input: CheckInput): readonly Finding[] {
  const chosen = chosenSheets(input.plan).map(([id, sheet]) => ({ id, sheet, areas: areasFor(sheet.for, input.top.areas).map((area) => area.id) }));
  const found: Finding[] = [];
  for (const { id, sheet, areas } of chosen) {
    if (sewsNothing(sheet)) found.push(finding('empty-sheet', `${sheet.name} is empty. Pull a template up from the shelf, or put the sheet away.`, { sheet: id, field: `sheets.${id}.placements` }));
    if (areas.length === 0) found.push(finding('sheet-without-areas', `${sheet.name} is for ${kindInWords(sheet)}, and this top has none.`, { sheet: id, field: `sheets.${id}.for` }));
  }
  const holders = new Map<string, { readonly id: string; readonly sheet: Sheet }[]>();
  const together = new Map<string, { readonly a: string; readonly b: string; readonly areas: string[] }>();
  for (const { id, sheet, areas } of chosen) {
    for (const area of areas) {
      const before = holders.get(area) ?? [];
      for (const other of before) {
        const key = `${other.id}\n${id}`;
        const pair = together.get(key) ?? { a: other.id, b: id, areas: [] };
        pair.areas.push(area);
        together.set(key, pair);
      }
      holders.set(area, [...before, { id, sheet }]);
    }
  }
  for (const { a, b, areas } of together.values()) {
    const [first, second] = [input.plan.sheets[a]!.name, input.plan.sheets[b]!.name];
    const more = areas.length > 1 ? ` and ${areas.length - 1} more` : '';
    found.push(finding('two-sheets-one-area', `${first} and ${second} are both chosen for ${areaName(input, areas[0]!)}${more}. Both are sewn.`, { area: areas[0]!, sheet: b, other: { sheet: a }, field: `sheets.${b}.chosen` }));
  }
  return found;
}

function sewsNothing(sheet: Sheet): boolean {
  return Object.keys(sheet.fills).length === 0 && Object.values(sheet.placements).every((placement) => Object.keys(placement.passes).length === 0);
}

function kindInWords(sheet: Sheet): string {
  const { kind, border } = sheet.for;
  const plain = kind === 'top' ? 'the whole top' : kind === 'sashing' ? 'sashing' : kind === 'drawn' ? 'drawn areas' : `${kind.replace('-', ' ')}s`;
  return border === undefined ? plain : `${plain} of border ${border}`;
}
