// What somebody starts with: the built-in kit, and one 12-inch block to try things on.

import { BUILT_IN_KIT } from './kit/built-in.ts';
import { PLAN_FORMAT, PLAN_VERSION, type Plan } from './plan.ts';

/** A plan with the built-in kit, a single 12-inch block, and nothing on it yet. */
export function newPlan(name: string): Plan {
  return {
    format: PLAN_FORMAT,
    version: PLAN_VERSION,
    name,
    shownIn: 'in',
    kit: BUILT_IN_KIT,
    materials: {},
    machine: {},
    top: {
      blocks: { setting: 'straight', rows: 1, columns: 1, size: [12, 12], sashing: 0, cornerstones: false },
      borders: [],
      drawnAreas: {},
      keepOuts: {},
      clearance: { rawEdge: 0.5, seam: 0.125 },
    },
    sheets: {},
  };
}
