// What of the picture is drawn by those who move it, and not with the settled rest.

import type { LaidPlacement } from '../../stitch/laid-placement.ts';
import { coveredPlacements } from '../../session/sheet/covered.ts';
import type { SessionState } from '../../session/store.ts';

/** The placements that lie otherwise than when the gesture under way began: those in the hand and all that follows from them. */
export function movedPlacements({ gesture, evaluation }: SessionState): readonly LaidPlacement[] {
  if (!gesture || gesture.settled === evaluation) return NONE;
  const before = new Set(gesture.settled.placements);
  return evaluation.placements.filter((laid) => !before.has(laid));
}

const NONE: readonly LaidPlacement[] = [];

/** The same as `sheet/placement`, each once and line by line, so that the text changes only when another placement moves. */
export function linesInHand(state: SessionState): string {
  const covered = state.room === 'audition' ? coveredPlacements(state) : [];
  return [...new Set([...movedPlacements(state), ...covered].map(({ sheet, placement }) => `${sheet}/${placement}`))].join('\n');
}
