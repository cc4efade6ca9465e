// What a sheet is for, in words: "all 20 blocks", "block, row 1, column 2 only".

import type { AreaKind, SheetFor } from '../../model/plan.ts';
import { areasFor } from '../../stitch/sheet-areas.ts';
import type { Area } from '../../top/area.ts';

const NOUNS: { readonly [kind in AreaKind]: readonly [one: string, more: string] } = {
  block: ['block', 'blocks'],
  sashing: ['strip of sashing', 'strips of sashing'],
  cornerstone: ['cornerstone', 'cornerstones'],
  'setting-triangle': ['setting triangle', 'setting triangles'],
  'corner-triangle': ['corner triangle', 'corner triangles'],
  panel: ['panel', 'panels'],
  'border-side': ['side', 'sides'],
  'border-corner': ['corner', 'corners'],
  drawn: ['drawn area', 'drawn areas'],
  top: ['whole top', 'whole tops'],
};

/** "block", "side of border 2": one area of a kind. */
export function oneArea({ kind, border }: Pick<SheetFor, 'kind' | 'border'>): string {
  return `${NOUNS[kind][0]}${ofBorder(kind, border)}`;
}

/** "blocks", "sides of border 2". */
export function moreAreas({ kind, border }: Pick<SheetFor, 'kind' | 'border'>): string {
  return `${NOUNS[kind][1]}${ofBorder(kind, border)}`;
}

/** "20 blocks", "1 panel". */
export function countedAreas(target: Pick<SheetFor, 'kind' | 'border'>, count: number): string {
  return `${count} ${count === 1 ? oneArea(target) : moreAreas(target)}`;
}

/** What a sheet is for, to follow "for" or "over": "all 20 blocks", "18 of 20 blocks", "the panel". */
export function sayAreas(target: SheetFor, areas: readonly Area[]): string {
  const all = areasFor(allOfKind(target), areas);
  const some = areasFor(target, areas);
  const [only] = some;
  if (!only) return `no ${oneArea(target)} of this top`;
  if (some.length === all.length) return all.length === 1 ? `the ${oneArea(target)}` : `all ${countedAreas(target, all.length)}`;
  return some.length === 1 ? `${only.name} only` : `${some.length} of ${countedAreas(target, all.length)}`;
}

/** The same kind of area without limits. */
export function allOfKind({ kind, border }: SheetFor): SheetFor {
  return { kind, ...(border !== undefined && { border }) };
}

function ofBorder(kind: AreaKind, border: number | undefined): string {
  if (kind !== 'border-side' && kind !== 'border-corner') return '';
  return border === undefined ? ' of all borders' : ` of border ${border}`;
}
