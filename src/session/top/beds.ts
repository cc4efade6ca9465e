// Common beds, and the top that covers one. Mattress sizes of the United States trade, in inches: crib 28 x 52, twin 39 x 75,
// full 54 x 75, queen 60 x 80, king 76 x 80. A quilt is as wide as the mattress and twice the drop, as long as it and one drop
// (common practice: the top end lies under the pillows).

import type { Top } from '../../model/plan.ts';
import { changePlan } from '../change-plan.ts';
import type { Session } from '../store.ts';

export interface Bed {
  readonly id: string;
  readonly name: string;
  readonly width: number;
  readonly length: number;
}

export const BEDS: readonly Bed[] = [
  { id: 'crib', name: 'Crib', width: 28, length: 52 },
  { id: 'twin', name: 'Twin', width: 39, length: 75 },
  { id: 'full', name: 'Full', width: 54, length: 75 },
  { id: 'queen', name: 'Queen', width: 60, length: 80 },
  { id: 'king', name: 'King', width: 76, length: 80 },
];

/** The size a quilt for a bed comes to, in inches, with a drop at the sides and the foot. */
export function quiltFor(bed: Bed, drop: number): { readonly width: number; readonly height: number } {
  return { width: bed.width + 2 * drop, height: bed.length + drop };
}

/**
 * The top grown or shrunk to come nearest to a size in inches: cloth is cut to it; blocks keep their size and become more or
 * fewer, never none. Borders and sashing stay as they are.
 */
export function topNear(top: Top, size: { readonly width: number; readonly height: number }): Top {
  const borders = 2 * top.borders.reduce((sum, { width }) => sum + width, 0);
  const across = size.width - borders;
  const down = size.height - borders;
  if (!top.blocks) return { ...top, panel: { size: [Math.max(1, across), Math.max(1, down)] } };
  const { setting, size: block, sashing, sashedRound } = top.blocks;
  const stretch = setting === 'on-point' ? Math.SQRT2 : 1;
  const strips = sashing > 0 ? (sashedRound ? sashing : -sashing) : 0;
  const count = (room: number, one: number) => Math.min(200, Math.max(1, Math.round((room - strips * stretch) / ((one + sashing) * stretch))));
  return { ...top, blocks: { ...top.blocks, columns: count(across, block[0]), rows: count(down, block[1]) } };
}

/** Makes the top as near as its blocks allow to a quilt for a bed, with a drop in inches. */
export function coverBed(session: Session, bed: Bed, drop: number): void {
  changePlan(session, `A top for a ${bed.name.toLowerCase()} bed`, (plan) => {
    const near = topNear(plan.top, quiltFor(bed, drop));
    if (near.blocks && plan.top.blocks) Object.assign(plan.top.blocks, { rows: near.blocks.rows, columns: near.blocks.columns });
    else if (near.panel) plan.top.panel = { size: [near.panel.size[0], near.panel.size[1]] };
  });
}
