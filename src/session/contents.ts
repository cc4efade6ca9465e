// What lies on the table, put in order for a list: areas by kind, lines by area, templates by sheet.

import type { Evaluation } from '../engine/evaluation.ts';
import type { AreaKind, Plan, Sheet } from '../model/plan.ts';
import { sheetIds } from '../stitch/sheet-areas.ts';
import type { StitchedLine } from '../stitch/stitched-line.ts';
import type { Area, LaidTop } from '../top/area.ts';

export interface AreaGroup {
  readonly id: string;
  /** "Blocks", "Border 2, sides". */
  readonly name: string;
  readonly areas: readonly Area[];
}

const GROUP_NAMES: { readonly [kind in AreaKind]: string } = {
  block: 'Blocks',
  sashing: 'Sashing',
  cornerstone: 'Cornerstones',
  'setting-triangle': 'Setting triangles',
  'corner-triangle': 'Corner triangles',
  panel: 'Panel',
  'border-side': 'sides',
  'border-corner': 'corners',
  drawn: 'Drawn areas',
  top: 'Whole top',
};

/** The areas of a top, gathered by kind and border, in the order in which the top gives them. */
export function areaGroups(top: LaidTop): readonly AreaGroup[] {
  const groups = new Map<string, { name: string; areas: Area[] }>();
  for (const area of top.areas) {
    const id = area.border === undefined ? area.kind : `${area.kind}:${area.border}`;
    const name = area.border === undefined ? GROUP_NAMES[area.kind] : `Border ${area.border}, ${GROUP_NAMES[area.kind]}`;
    const group = groups.get(id);
    if (group) group.areas.push(area);
    else groups.set(id, { name, areas: [area] });
  }
  return [...groups].map(([id, group]) => ({ id, ...group }));
}

const linesIn = new WeakMap<readonly StitchedLine[], ReadonlyMap<string, readonly StitchedLine[]>>();

/** Stitched lines by the id of their area. */
export function linesByArea({ lines }: Evaluation): ReadonlyMap<string, readonly StitchedLine[]> {
  const known = linesIn.get(lines);
  if (known) return known;
  const byArea = new Map<string, StitchedLine[]>();
  for (const line of lines) {
    const list = byArea.get(line.area);
    if (list) list.push(line);
    else byArea.set(line.area, [line]);
  }
  linesIn.set(lines, byArea);
  return byArea;
}

/** The sheets from the bottom of the pile to the top. */
export function sheetsInOrder(plan: Plan): readonly (readonly [id: string, sheet: Sheet])[] {
  return sheetIds(plan).map((id) => [id, plan.sheets[id]!] as const);
}

/** Length of all stitched lines, in inches. */
export function sewnLength({ lines }: Evaluation): number {
  return lines.reduce((sum, line) => sum + line.length, 0);
}
