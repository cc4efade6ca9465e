// The built-in families, in the order in which they are offered.

import type { Family } from './family.ts';
import { arcBand } from './families/arc-band.ts';
import { circle } from './families/circle.ts';
import { leaf } from './families/leaf.ts';
import { sCurve } from './families/s-curve.ts';
import { straightEdge } from './families/straight-edge.ts';

export type { Family, UsefulSizes } from './family.ts';
export type { SizeRule } from './sizes.ts';

export const FAMILIES: readonly Family[] = [straightEdge, arcBand, circle, leaf, sCurve];

const byId: ReadonlyMap<string, Family> = new Map(FAMILIES.map((family) => [family.id, family]));

/** The family of that id, if there is one. */
export function familyById(id: string): Family | undefined {
  return byId.get(id);
}
