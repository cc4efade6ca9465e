// What a set-out comes to: one count and one pose that work, with all that tells them apart from the others.

import type { Frieze } from '../../model/plan.ts';
import type { NeedleLine } from '../../needle/needle-line.ts';
import type { Chord } from './chord.ts';
import type { Kinks } from './pattern.ts';
import type { ScoreTerms } from './score.ts';
import type { Unit } from './unit.ts';

/** How a pose was found among all that fit the spacing. */
export type Found =
  /** It leaves its start as it arrives at its stop. */
  | 'symmetric'
  /** It arrives in the direction in which it left. */
  | 'parallel'
  /** From a trough to a crest, level at both. */
  | 'rise'
  /** To a crest of the wished height. */
  | 'crest'
  /** To a crest whose height the spacing settles, on a round or straight edge. */
  | 'only-crest'
  /** To the crest nearest to the wished height. */
  | 'nearest-crest';

export interface SetOutResult {
  readonly pattern: Frieze;
  readonly count: number;
  /** Length of a division. */
  readonly spacing: number;
  /** The needle line it is sewn along. */
  readonly edge: NeedleLine['from'];
  readonly loop: number;
  readonly found: Found;
  readonly unit: Unit;
  /** Inches of needle line over which the unit may start elsewhere and sew the same. */
  readonly slide: number;
  /** How far outward from the centre line the line lies on which the unit starts. */
  readonly base: number;
  /** Of the crest over that line or, of a rise, over the trough. */
  readonly height: number;
  /** From the stitching of all images to the seams. */
  readonly clearance: { readonly outer: number; readonly inner: number };
  /** Whether both clearances are kept. */
  readonly fits: boolean;
  /** Radians by which the line turns where images meet. */
  readonly kinks: Kinks;
  /** How far the unit hangs over into its neighbours. */
  readonly overhang: number;
  /** Corners inside the unit, where the foot must stop and turn. */
  readonly corners: number;
  /** How much of the quilt lies under the template, across the border. */
  readonly depth: number;
  readonly withinReach: boolean;
  readonly forgiveness: Forgiveness;
  readonly terms: ScoreTerms;
  /** The sum of the terms, each by its weight; the least is the best. */
  readonly score: number;
}

/** A unit with the chord it was made of. */
export interface FoundUnit {
  readonly chord: Chord;
  readonly found: Found;
  readonly unit: Unit;
}

export interface Forgiveness {
  /** Inches of crest for each inch of spacing; infinite where the spacing is as wide as the line can be. */
  readonly heightPerSpacing: number;
  /** Inches by which the crest moves when the side comes out a sixteenth longer, spread over all divisions. */
  readonly heightPerSixteenth: number;
}

/** Results that keep the clearances first, and then by their score. */
export function better(a: SetOutResult, b: SetOutResult): number {
  return Number(b.fits) - Number(a.fits) || a.score - b.score;
}
