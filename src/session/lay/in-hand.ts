// What the hand has while a template is moved or a pass is traced: what is pulled to what, what is only near, where the foot is.

import type { Near } from '../../place/near.ts';

export type HandDoes = 'slide' | 'turn' | 'twist' | 'trace' | 'nudge';

/** A place on a needle line of a placement: index into `needle.lines`, and inches along it. */
export interface FootPlace {
  readonly placement: string;
  readonly needleLine: number;
  readonly along: number;
  /** What the foot was pulled to there, in words: "the vertical centre line". */
  readonly at?: string;
}

export interface InHand {
  readonly does: HandDoes;
  readonly sheet: string;
  readonly placements: readonly string[];
  /** Registrations that letting go now makes. */
  readonly made: readonly Near[];
  /** Not pulled yet, but the next thing that would be. */
  readonly near: Near | undefined;
  /** Where the foot rides while a pass is traced. */
  readonly foot: FootPlace | undefined;
}
