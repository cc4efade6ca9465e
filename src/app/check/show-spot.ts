// Bringing what was found up on the table.

import type { Point } from '../../geometry/point.ts';
import { select, zoomToPlace, zoomToStretch } from '../../session/look.ts';
import { type NumberedFinding, type Spot, spotsOf } from '../../session/numbered-findings.ts';
import type { Session } from '../../session/store.ts';

/** A finding is shown on the table with so much quilt round it, in inches. */
const SHOWN_ACROSS = 10;

/** Picks a finding and brings one of its spots up on the table; one that has no place on the quilt is picked only. */
export function showSpot(session: Session, { key, finding }: NumberedFinding, at: number): void {
  select(session, { kind: 'finding', finding: key, spot: at });
  const spot = spotsOf(session.getState().evaluation, finding)[at];
  if (spot?.kind === 'place') zoomToPlace(session, spot.at, SHOWN_ACROSS);
  else if (spot) zoomToStretch(session, spot.stretch);
}

/** The place in the middle of a spot. */
export function middleOf(spot: Spot): Point<'quilt'> {
  if (spot.kind === 'place') return spot.at;
  const { x, y, width, height } = spot.stretch;
  return { x: x + width / 2, y: y + height / 2 };
}

/** How much of the quilt a loupe shows of a spot, in inches: enough to see what was measured in its surroundings. */
export function acrossFor(spot: Spot, measured: number | undefined): number {
  if (spot.kind === 'line') return Math.max(spot.stretch.width, spot.stretch.height) * 1.25;
  return Math.min(6, Math.max(1.5, 6 * Math.abs(measured ?? 0.25)));
}
