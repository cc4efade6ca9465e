// How good a set-out is: a sum of named terms, each 0 when nothing is to be wished and about 1 when it is as bad as one would take.

export interface ScoreTerms {
  /** How far the spacing is from the wished one, as a part of it. */
  readonly spacing: number;
  /** How much of the wished height the crest leaves empty or goes beyond, as a part of it. */
  readonly height: number;
  /** How sharply the line turns where images meet: the sharpest joint as a part of a quarter turn, and how unlike the joints are. */
  readonly joints: number;
  /** How far the template reaches beyond what can be sewn without moving the quilt, as a part of that. */
  readonly reach: number;
  /** Corners inside the unit, where the foot must stop and turn. */
  readonly corners: number;
  /** Roundings inside the unit so tight that they show as corners: those of the template's own corners, not its curve. */
  readonly roundings: number;
  /** How much the spacing differs from that of the other sides, as a part of it. */
  readonly sides: number;
  /** How far the line goes into a clearance, as a part of the wished height. */
  readonly room: number;
  /** How far the unit hangs over into its neighbours, as a part of the spacing. */
  readonly overhang: number;
}

/** What a term counts for beside the others. */
export type ScoreWeights = { readonly [term in keyof ScoreTerms]: number };

export const USUAL_WEIGHTS: ScoreWeights = { spacing: 2, height: 2, joints: 0.5, reach: 1, corners: 0.5, roundings: 1, sides: 8, room: 8, overhang: 1 };

/** The sum of the terms, each by its weight: the least is the best. */
export function scoreOf(terms: ScoreTerms, weights: ScoreWeights = USUAL_WEIGHTS): number {
  return (Object.keys(terms) as (keyof ScoreTerms)[]).reduce((sum, term) => sum + weights[term] * terms[term], 0);
}
