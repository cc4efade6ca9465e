// The middle of the top: pieced blocks, or one piece of cloth. Changing from one to the other keeps the size it comes to.

import type { Blocks, Place, Top } from '../../model/plan.ts';
import { changePlan } from '../change-plan.ts';
import { type as typeInto } from '../typing.ts';
import { type Session, planOf } from '../store.ts';

/** What a field of the blocks is called, for the list of what was done. */
const BLOCKS: Blocks = { setting: 'straight', rows: 1, columns: 1, size: [12, 12], sashing: 0, cornerstones: false };

/** The blocks of a top, or those it would begin with. */
export function blocksOf(top: Top): Blocks {
  return top.blocks ?? BLOCKS;
}

/** Makes the middle of blocks; as many 12-inch ones as the cloth it was holds. */
export function middleOfBlocks(session: Session): void {
  const { blocks, panel } = planOf(session.getState()).top;
  if (blocks) return;
  changePlan(session, 'Piece the middle of blocks', (plan) => {
    const [width, height] = panel?.size ?? [12, 12];
    const [across, down] = BLOCKS.size;
    plan.top.blocks = { ...BLOCKS, size: [across, down], columns: Math.max(1, Math.round(width / across)), rows: Math.max(1, Math.round(height / down)) };
    delete plan.top.panel;
  });
}

/** Makes the middle one piece of cloth of the size the blocks came to, in inches. */
export function middleOfCloth(session: Session, size: Place): void {
  if (planOf(session.getState()).top.panel && !planOf(session.getState()).top.blocks) return;
  changePlan(session, 'One piece of cloth in the middle', (plan) => {
    plan.top.panel = { size: [size[0], size[1]] };
    delete plan.top.blocks;
  });
}

/** Changes some of what the blocks are, at once. */
export function setBlocks(session: Session, label: string, change: Partial<Blocks>): void {
  changePlan(session, label, (plan) => {
    if (plan.top.blocks) Object.assign(plan.top.blocks, change);
  });
}

/** Changes some of what the blocks are while it is typed. Blocks on point are square, so their height goes with their width. */
export function typeBlocks(session: Session, label: string, change: Partial<Blocks>): void {
  typeInto(session, label, (plan) => {
    if (plan.top.blocks) Object.assign(plan.top.blocks, change);
  });
}

/** Sets blocks straight or on point; on point they are made square. */
export function setSetting(session: Session, setting: Blocks['setting']): void {
  const [width, height] = blocksOf(planOf(session.getState()).top).size;
  setBlocks(session, setting === 'on-point' ? 'Set the blocks on point' : 'Set the blocks straight', { setting, size: setting === 'on-point' ? [width, width] : [width, height] });
}

/** The cloth's size while it is typed, in inches. */
export function typeCloth(session: Session, size: Place): void {
  typeInto(session, 'Measure the cloth', (plan) => {
    plan.top.panel = { size: [size[0], size[1]] };
  });
}
