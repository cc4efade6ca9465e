// A plan for the journeys: 18 blocks on point with leaves, setting triangles, a border with a wave.
// Invented for these tests; nothing in it is a value to be checked.

import { readFileSync } from 'node:fs';
import { readPlan } from '../../src/model/codec.ts';
import { newPlan } from '../../src/model/new-plan.ts';
import type { Plan, Sheet } from '../../src/model/plan.ts';

export function fixturePlan(): Plan {
  const plan = newPlan('Low water');
  return {
    ...plan,
    top: {
      ...plan.top,
      blocks: { setting: 'on-point', rows: 4, columns: 3, size: [12, 12], sashing: 0, cornerstones: false },
      borders: [
        { width: 1.5, corners: 'butted' },
        { width: 5, corners: 'squares' },
      ],
    },
    sheets: {
      leaves: {
        name: 'Leaves to the corners',
        for: { kind: 'block' },
        chosen: true,
        placements: {
          leaf: {
            template: 'leaf-4',
            foot: 'half-round',
            flipped: false,
            pose: { x: 2.6, y: -2.6, angle: -45 },
            registrations: [],
            passes: { round: { start: { along: 0 }, stop: 'all-round', way: 'clockwise' } },
          },
        },
        repeat: [{ turn: 4 }],
        fills: {},
      },
      tide: {
        name: 'Tide',
        for: { kind: 'border-side', border: 2 },
        chosen: true,
        placements: {
          swell: {
            template: 'long-swell',
            foot: 'half-round',
            flipped: false,
            pose: { x: 0, y: 0, angle: 0 },
            registrations: [],
            passes: { swell: { start: { along: 1 }, stop: { along: 9 }, way: 'clockwise' } },
          },
        },
        repeat: [{ along: 'scallop', count: { top: 6, bottom: 6, left: 8, right: 8 } }],
        fills: {},
      },
    },
  };
}

/** One block with one circle in its middle, far from every seam: nothing to mend. */
export function plainPlan(): Plan {
  return {
    ...newPlan('One round'),
    sheets: {
      round: {
        name: 'Round',
        for: { kind: 'block' },
        chosen: true,
        placements: {
          p: { template: 'circle-6', foot: 'half-round', flipped: false, pose: { x: 0, y: 0, angle: 0 }, registrations: [], passes: { round: { start: { along: 0 }, stop: 'all-round', way: 'clockwise' } } },
        },
        repeat: [],
        fills: {},
      },
    },
  };
}

/** The practice block of the examples, with the templates that come with a new plan on its shelf as well. */
export function practiceBlock(): Plan {
  const read = readPlan(readFileSync(new URL('../../examples/practice-block.needlefall.json', import.meta.url), 'utf8'));
  if (!read.ok) throw new Error('the practice block cannot be read');
  const { kit } = newPlan('Kit');
  return { ...read.value, kit: { ...read.value.kit, templates: { ...read.value.kit.templates, ...kit.templates } } };
}

/** The same with three more sheets for its block, each with a part of what lies on the first. */
export function fourSheets(): Plan {
  const plan = practiceBlock();
  const { petals } = plan.sheets;
  const part = (name: string, ...wanted: readonly string[]): Sheet => ({
    ...petals!,
    name,
    chosen: false,
    placements: Object.fromEntries(Object.entries(petals!.placements).filter(([id]) => wanted.includes(id))),
  });
  return {
    ...plan,
    sheets: { ...plan.sheets, plain: part('Petals alone', 'petal'), double: part('Petals with a second one inside', 'petal', 'inner'), rounds: part('Rounds', 'middle', 'between') },
    sheetOrder: ['petals', 'plain', 'double', 'rounds'],
  };
}
