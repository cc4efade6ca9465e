// Plans small enough to reckon with in the head: one block, and a template whose needle line above its long edge is a
// straight line, so that every check has an exact value to find.

import type { CheckInput } from '../../src/check/input.ts';
import { setOut } from '../../src/engine/evaluate.ts';
import type { Foot, Placement, Plan, Sheet, Template, Top } from '../../src/model/plan.ts';

export const FOOT: Foot = { name: 'Half-inch round', diameter: 0.5, needleOffset: [0, 0], shank: 'high' };

/** Six inches by one; its upper left corner is the template's origin, so that the needle line above it is y = -1/4 for x from 0 to 6. */
export const SLAB: Template = { name: 'Slab', outline: 'M 0 0 L 6 0 L 6 1 L 0 1 Z', thickness: 0.25, grips: 'none' };

/** The needle line starts where the foot begins to turn about the slab's upper left corner: a quarter turn before the long edge. */
export const QUARTER_ROUND = Math.PI / 8;

/** A slab laid in an area with its origin there, sewn above its long edge from one distance along it to another. */
export function slabAt(x: number, y: number, from: number, to: number, more: Partial<Placement> & { angle?: number } = {}): Placement {
  const { angle = 0, ...rest } = more;
  return {
    template: 'slab',
    foot: 'round',
    flipped: false,
    pose: { x, y, angle },
    registrations: [],
    passes: { a: { start: { along: QUARTER_ROUND + from }, stop: { along: QUARTER_ROUND + to }, way: 'clockwise' } },
    ...rest,
  };
}

export function sheetOf(placements: { readonly [id: string]: Placement }, more: Partial<Sheet> = {}): Sheet {
  return { name: 'Lines', for: { kind: 'block' }, chosen: true, placements, repeat: [], fills: {}, ...more };
}

/** One 12-inch block, raw all round: on the quilt its centre lies at (6, 6). */
export const ONE_BLOCK: Top = {
  blocks: { setting: 'straight', rows: 1, columns: 1, size: [12, 12], sashing: 0, cornerstones: false },
  borders: [],
  drawnAreas: {},
  keepOuts: {},
  clearance: { rawEdge: 0.5, seam: 0.125 },
};

/** The same block in a two-inch border: its centre lies at (8, 8), and it has seams all round. */
export const BORDERED: Top = { ...ONE_BLOCK, borders: [{ width: 2, corners: 'squares' }] };

export function planOf(top: Top, sheets: Plan['sheets'], more: Partial<Plan> = {}): Plan {
  return {
    format: 'needlefall-plan',
    version: 1,
    name: 'Slabs',
    shownIn: 'in',
    kit: { feet: { round: FOOT }, templates: { slab: SLAB } },
    materials: {},
    machine: {},
    top,
    sheets,
    ...more,
  };
}

/** What the checks read of a plan. */
export function inputOf(plan: Plan): CheckInput {
  return setOut(plan);
}

/** What the checks read of one sheet of slabs on a top. */
export function slabs(top: Top, placements: { readonly [id: string]: Placement }, more: Partial<Sheet> = {}): CheckInput {
  return inputOf(planOf(top, { s: sheetOf(placements, more) }));
}
