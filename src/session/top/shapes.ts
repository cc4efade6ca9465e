// Keep-outs and areas of the quilter's own: drawn on the top, named, measured, taken away.

import { changePlan } from '../change-plan.ts';
import { freeId } from '../free-id.ts';
import { type as typeInto } from '../typing.ts';
import { type Session, planOf } from '../store.ts';
import type { ShapeUse } from './drawing.ts';
import { type Outline, outlineData } from './outlines.ts';

const BASE: { readonly [use in ShapeUse]: readonly [id: string, name: string] } = {
  keepOuts: ['keep-out', 'Keep-out'],
  drawnAreas: ['own-area', 'Own area'],
};

/** Adds a shape; its id, for picking it out. */
export function addShape(session: Session, use: ShapeUse, outline: Outline): string {
  const taken = planOf(session.getState()).top[use];
  const [base, name] = BASE[use];
  const id = freeId(taken, base);
  const number = Object.keys(taken).length + 1;
  changePlan(session, `Draw ${use === 'keepOuts' ? 'a keep-out' : 'an area'}`, (plan) => {
    plan.top[use][id] = { name: `${name} ${number}`, outline: outlineData(outline) };
  });
  return id;
}

/** Takes a shape away. Sheets for an area of one's own are kept. */
export function removeShape(session: Session, use: ShapeUse, id: string): void {
  const shape = planOf(session.getState()).top[use][id];
  if (!shape) return;
  changePlan(session, `Take away ${shape.name}`, (plan) => {
    delete plan.top[use][id];
  });
}

/** Names a shape; a name of nothing but spaces is not taken. */
export function nameShape(session: Session, use: ShapeUse, id: string, name: string): void {
  const trimmed = name.trim();
  if (trimmed === '') return;
  changePlan(session, 'Name a shape', (plan) => {
    const shape = plan.top[use][id];
    if (shape) shape.name = trimmed;
  });
}

/** A shape's outline while its measures are typed. */
export function typeOutline(session: Session, use: ShapeUse, id: string, outline: Outline): void {
  typeInto(session, `Measure ${planOf(session.getState()).top[use][id]?.name ?? 'a shape'}`, (plan) => {
    const shape = plan.top[use][id];
    if (shape) shape.outline = outlineData(outline);
  });
}

/** How far stitching stays from a keep-out while it is typed, in inches; 0 for none. */
export function typeKeepOutClearance(session: Session, id: string, clearance: number): void {
  typeInto(session, 'Clearance to a keep-out', (plan) => {
    const keepOut = plan.top.keepOuts[id];
    if (!keepOut) return;
    if (clearance > 0) keepOut.clearance = clearance;
    else delete keepOut.clearance;
  });
}
