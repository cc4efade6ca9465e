// Which counts of a repeat come into question for a side.

import { SAME_NUMBER } from '../../num/tolerances.ts';
import type { BorderSide, SetOutWish } from './wish.ts';

/** From the wished counts or, without any, about the wished spacing: from two thirds of it to half as much again. Without that, divisions from half as long as the border is wide to three times. */
export function countsFor({ length, width }: BorderSide, { counts, spacing, narrowest = 0 }: SetOutWish): readonly number[] {
  const wished = spacing !== undefined && spacing > 0 ? ([spacing / 1.5, spacing * 1.5] as const) : ([width / 2, width * 3] as const);
  const from = counts ? counts.from : Math.max(1, Math.ceil(length / wished[1] - SAME_NUMBER));
  const last = counts ? counts.to : Math.max(from, Math.floor(length / wished[0] + SAME_NUMBER));
  const to = narrowest > 0 ? Math.min(last, Math.floor(length / narrowest + SAME_NUMBER)) : last;
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i);
}

/** The count whose spacing is nearest to a wished one and no less than the narrowest; undefined when not one fits. */
export function countNearest(length: number, spacing: number, narrowest = 0): number | undefined {
  const exact = length / spacing;
  const fits = [Math.floor(exact), Math.ceil(exact)].filter((count) => count >= 1 && length / count >= narrowest - SAME_NUMBER);
  return fits.sort((a, b) => Math.abs(length / a - spacing) - Math.abs(length / b - spacing))[0];
}
