// What the hand has while a template is moved or a pass is traced: what is pulled to what, and what is only near; and where the foot is.

import type { Near } from '../../place/near.ts';

export type HandDoes = 'slide' | 'turn' | 'twist' | 'trace' | 'nudge';

/** Where the foot stands: index into `needle.lines` of a placement, and inches along it. */
export interface FootPlace {
  readonly placement: string;
  readonly needleLine: number;
  readonly along: number;
  /** What it was pulled to there, in words: "the vertical centre line". */
  readonly at: string | undefined;
}

export interface InHand {
  readonly does: HandDoes;
  readonly sheet: string;
  readonly placements: readonly string[];
  /** Registrations that letting go now makes. */
  readonly made: readonly Near[];
  /** Not pulled yet, but the next thing that would be. */
  readonly near: Near | undefined;
}
