// Borders, from the inside out: added, measured, taken off.

import type { Border, Clearance, Side } from '../../model/plan.ts';
import { changePlan } from '../change-plan.ts';
import { type as typeInto } from '../typing.ts';
import type { Session } from '../store.ts';

const USUAL: Border = { width: 5, corners: 'mitred' };

/** Sews one more border round the outside, like the one that was outermost. */
export function addBorder(session: Session): void {
  changePlan(session, 'Add a border', (plan) => {
    const outermost = plan.top.borders.at(-1);
    plan.top.borders.push(outermost ? { width: outermost.width, corners: outermost.corners } : { ...USUAL });
  });
}

/** Takes a border off; index 0 is the innermost. Sheets for it are kept. */
export function removeBorder(session: Session, index: number): void {
  changePlan(session, `Take off border ${index + 1}`, (plan) => {
    plan.top.borders.splice(index, 1);
  });
}

/** How a border's corners are sewn and, when butted, which sides run through. */
export function setCorners(session: Session, index: number, corners: Border['corners'], through?: Border['through']): void {
  changePlan(session, `Corners of border ${index + 1}`, (plan) => {
    const border = plan.top.borders[index];
    if (!border) return;
    border.corners = corners;
    if (corners === 'butted' && through) border.through = through;
    else delete border.through;
  });
}

/** A border's width while it is typed, in inches. */
export function typeWidth(session: Session, index: number, width: number): void {
  typeInto(session, `Width of border ${index + 1}`, (plan) => {
    const border = plan.top.borders[index];
    if (border) border.width = width;
  });
}

/** What the tape says of one side, in inches; undefined when it was not measured. */
export function typeMeasured(session: Session, index: number, side: Side, length: number | undefined): void {
  typeInto(session, `Measure the ${side} of border ${index + 1}`, (plan) => {
    const border = plan.top.borders[index];
    if (!border) return;
    const measured = { ...border.measured };
    if (length === undefined) delete measured[side];
    else measured[side] = length;
    if (Object.keys(measured).length > 0) border.measured = measured;
    else delete border.measured;
  });
}

/** How far stitching stays from the raw edge or from seams while it is typed, in inches. */
export function typeClearance(session: Session, from: keyof Clearance, length: number): void {
  typeInto(session, from === 'rawEdge' ? 'Clearance to the raw edge' : 'Clearance to seams', (plan) => {
    plan.top.clearance[from] = length;
  });
}
