// How good a following is, as a sum of named terms: less is better. Ranking is by the sum; each term can be shown.

import type { Frame } from '../../geometry/point.ts';
import type { Following } from './following.ts';

export interface ScoreTerm {
  readonly name: 'left-out' | 'deviation' | 'face-down';
  readonly value: number;
}

/** Being off by the whole tolerance weighs as much as leaving out a tenth of the line. */
export const DEVIATION_WEIGHT = 0.1;
/** Only a tie is decided by the face. */
const FACE_DOWN = 0.001;

/**
 * The terms: the part of the line left out (0 to 1), the greatest deviation as a part of the tolerance, weighed by a tenth, and a trifle for a template that lies
 * face down. `length` is the line's, in inches.
 */
export function scoreOf<F extends Frame>({ from, to, deviation, pose }: Following<F>, length: number, tolerance: number): readonly ScoreTerm[] {
  return [
    { name: 'left-out', value: Math.max(0, 1 - (to - from) / length) },
    { name: 'deviation', value: (DEVIATION_WEIGHT * deviation.greatest) / tolerance },
    { name: 'face-down', value: pose.flipped ? FACE_DOWN : 0 },
  ];
}

export function total(terms: readonly ScoreTerm[]): number {
  return terms.reduce((sum, { value }) => sum + value, 0);
}
