// A plan of a wholecloth middle, 60 by 72, with a border of 6 in and a few ordinary templates, for tests.

import { PLAN_FORMAT, PLAN_VERSION, type Plan } from '../model/plan.ts';

export function borderPlan(): Plan {
  const template = (name: string, family: string, sizes: { readonly [size: string]: number }) => ({ name, family, sizes, thickness: 0.25, grips: 'none' }) as const;
  return {
    format: PLAN_FORMAT,
    version: PLAN_VERSION,
    name: 'Border',
    shownIn: 'in',
    kit: {
      feet: { round: { name: 'Half-inch round', diameter: 0.5, needleOffset: [0, 0], shank: 'high' } },
      templates: {
        arc: template('Arc 5', 'arc-band', { radius: 5, width: 2, sweep: 100 }),
        oval: template('Oval', 'oval', { length: 7, width: 4 }),
        leaf: template('Leaf', 'leaf', { length: 6, width: 2.5 }),
        small: template('Circle 1', 'circle', { diameter: 1 }),
      },
    },
    materials: {},
    machine: {},
    top: { panel: { size: [60, 72] }, borders: [{ width: 6, corners: 'squares' }], drawnAreas: {}, keepOuts: {}, clearance: { rawEdge: 0.5, seam: 0.125 } },
    sheets: {},
  };
}
