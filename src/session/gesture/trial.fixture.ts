// A block, a table and a hand for trying gestures without a browser: what the tests of this folder share.

import { newPlan } from '../../model/new-plan.ts';
import type { Placement, Plan } from '../../model/plan.ts';
import { laidHere } from '../lay/on-table.ts';
import { sizeTable, zoomToArea } from '../look.ts';
import { type Session, createSession, planOf } from '../store.ts';
import { onScreen } from '../view.ts';
import { auditioning } from './auditioning.ts';
import { type Gestures, type Hand, type Held, runGestures } from './node.ts';

export const NOTHING: Held = { shift: false, control: false, alt: false };

/** One 12-inch block; its middle lies in the middle of a table of 900 by 900 pixels, at 60 pixels to the inch. */
export function planWith(placements: { readonly [id: string]: Partial<Placement> }, repeat: Plan['sheets'][string]['repeat'] = []): Plan {
  const plan = newPlan('Trial');
  return {
    ...plan,
    top: { ...plan.top, borders: [], blocks: { setting: 'straight', rows: 1, columns: 1, size: [12, 12], sashing: 0, cornerstones: false } },
    kit: {
      feet: { foot: { name: 'Half-inch round', diameter: 0.5, needleOffset: [0, 0], shank: 'high' } },
      templates: {
        circle: { name: 'Circle 3', family: 'circle', sizes: { diameter: 3 }, thickness: 0.25, grips: 'none' },
        leaf: { name: 'Leaf 6', family: 'leaf', sizes: { length: 6, width: 2.5 }, thickness: 0.25, grips: 'none' },
        // Ten by one, square-cornered: its needle line is two straight lines and four quarter rounds of a quarter inch.
        bar: { name: 'Bar', outline: 'M -5 -0.5 H 5 V 0.5 H -5 Z', thickness: 0.25, grips: 'none' },
      },
    },
    sheets: {
      one: {
        name: 'One',
        for: { kind: 'block' },
        chosen: true,
        placements: Object.fromEntries(
          Object.entries(placements).map(([id, placement]) => [
            id,
            { template: 'circle', foot: 'foot', flipped: false, pose: { x: 0, y: 0, angle: 0 }, registrations: [], passes: {}, ...placement },
          ]),
        ),
        repeat,
        fills: {},
      },
    },
  };
}

export let session: Session;
export let hands: Gestures;
let clock: number;

export function lay(plan: Plan): void {
  session = createSession(plan, { kind: 'new' });
  sizeTable(session, { width: 900, height: 900 });
  zoomToArea(session, session.getState().evaluation.top.areas.find(({ kind }) => kind === 'block')!.id);
  session.setState({ view: { x: -1.5, y: -1.5, scale: 60 } });
  hands = runGestures(auditioning(session));
  clock = 0;
}

/** A place in the block's own axes, in inches from its middle, on the screen. */
export const at = (x: number, y: number) => onScreen(session.getState().view, { x: x + 6, y: y + 6 });

export interface With {
  readonly by?: Hand;
  readonly held?: Held;
  readonly pointer?: number;
}

export function down(x: number, y: number, { by = 'mouse', held = NOTHING, pointer = 1 }: With = {}): void {
  hands.send({ kind: 'down', pointer, at: at(x, y), by, time: (clock += 500), held });
}
export function move(x: number, y: number, { by = 'mouse', held = NOTHING, pointer = 1 }: With = {}): void {
  hands.send({ kind: 'move', pointer, at: at(x, y), by, time: (clock += 16), held });
}
export function up(x: number, y: number, pointer = 1): void {
  hands.send({ kind: 'up', pointer, at: at(x, y), time: (clock += 16) });
}
export function key(name: string, held: Partial<Held> = {}): void {
  hands.send({ kind: 'key', key: name, held: { ...NOTHING, ...held } });
}
export const keysUp = () => hands.send({ kind: 'keys-up' });

/** Press, go there in steps, let go. */
export function drag(from: readonly [number, number], to: readonly [number, number], how: With = {}, steps = 12): void {
  down(...from, how);
  for (let i = 1; i <= steps; i++) move(from[0] + ((to[0] - from[0]) * i) / steps, from[1] + ((to[1] - from[1]) * i) / steps, how);
  up(...to);
}

export const placement = (id = 'a') => planOf(session.getState()).sheets['one']!.placements[id]!;
export const laid = (id = 'a') => laidHere(session.getState(), id)!;
export const steps = () => session.getState().history.past.map(({ label }) => label);
export const pick = (id = 'a') => session.setState({ selection: { kind: 'placement', sheet: 'one', placement: id } });
export const ALT: With = { held: { ...NOTHING, alt: true } };
