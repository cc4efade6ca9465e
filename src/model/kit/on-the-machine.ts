// The foot that is on the machine: the one new placements are laid for, and whose needle line the kit shows.

import type { Foot, Kit } from '../plan.ts';

/** Id and foot; the kit's first where none is named, or the one named is no longer there. Undefined for a kit without feet. */
export function footOnTheMachine(kit: Kit): { readonly id: string; readonly foot: Foot } | undefined {
  const named = kit.onTheMachine;
  const id = named !== undefined && Object.hasOwn(kit.feet, named) ? named : Object.keys(kit.feet)[0];
  const foot = id === undefined ? undefined : kit.feet[id];
  return id === undefined || !foot ? undefined : { id, foot };
}
