// The built-in families, in the order in which they are offered: straight, round, pointed, waved.

import type { Family } from './family.ts';
import { arcBand } from './families/arc-band.ts';
import { cable } from './families/cable.ts';
import { circle } from './families/circle.ts';
import { clamshell } from './families/clamshell.ts';
import { crescent } from './families/crescent.ts';
import { diamond } from './families/diamond.ts';
import { halfFlower } from './families/half-flower.ts';
import { halfRound } from './families/half-round.ts';
import { hexagon } from './families/hexagon.ts';
import { hill } from './families/hill.ts';
import { hollowSquare } from './families/hollow-square.ts';
import { leaf } from './families/leaf.ts';
import { longRound } from './families/long-round.ts';
import { oval } from './families/oval.ts';
import { plume } from './families/plume.ts';
import { ring } from './families/ring.ts';
import { roundWindows } from './families/round-windows.ts';
import { sCurve } from './families/s-curve.ts';
import { scallop } from './families/scallop.ts';
import { square } from './families/square.ts';
import { straightEdge } from './families/straight-edge.ts';
import { teardrop } from './families/teardrop.ts';
import { wave } from './families/wave.ts';
import { wedge } from './families/wedge.ts';

export type { Family, UsefulSizes } from './family.ts';
export type { SizeRule } from './sizes.ts';

export const FAMILIES: readonly Family[] = [
  straightEdge,
  square,
  hollowSquare,
  wedge,
  diamond,
  hexagon,
  circle,
  ring,
  roundWindows,
  halfRound,
  oval,
  longRound,
  arcBand,
  crescent,
  leaf,
  teardrop,
  plume,
  clamshell,
  halfFlower,
  sCurve,
  hill,
  wave,
  scallop,
  cable,
];

const byId: ReadonlyMap<string, Family> = new Map(FAMILIES.map((family) => [family.id, family]));

/** The family of that id, if there is one. */
export function familyById(id: string): Family | undefined {
  return byId.get(id);
}
