// The two side lengths of a border rarely share a spacing. Which counts come nearest to sharing one, and what could take up the rest.

import { EYE, SAME_POINT } from '../../num/tolerances.ts';
import { countsFor } from './counts.ts';
import type { BorderSide, SetOutWish } from './wish.ts';

/** Counts for two sides of different length; lengths in inches. */
export interface CountPair {
  readonly counts: readonly [a: number, b: number];
  readonly spacings: readonly [a: number, b: number];
  /** Between the two spacings. */
  readonly difference: number;
  /** The same to the nearest sixteenth: so many sixteenths. */
  readonly sixteenths: number;
  /** The same as a part of the mean spacing, in per cent. */
  readonly percent: number;
  /** Whether a quilter would see it in one division beside the other. */
  readonly seen: boolean;
}

/** Every pair of counts that comes into question, the least difference in spacing first and among equals the nearest to the wished spacing. */
export function countPairs(a: BorderSide, b: BorderSide, wish: SetOutWish): readonly CountPair[] {
  const pairs = countsFor(a, wish).flatMap((m) => countsFor(b, wish).map((n) => pairOf(a.length, m, b.length, n)));
  const off = ({ spacings }: CountPair) => (wish.spacing === undefined ? -spacings[0] : Math.abs((spacings[0] + spacings[1]) / 2 - wish.spacing));
  return pairs.sort((p, q) => (Math.abs(p.difference - q.difference) > SAME_POINT ? p.difference - q.difference : off(p) - off(q)));
}

/** What two counts make of two lengths. */
export function pairOf(lengthA: number, countA: number, lengthB: number, countB: number): CountPair {
  const spacings = [lengthA / countA, lengthB / countB] as const;
  const difference = Math.abs(spacings[0] - spacings[1]);
  return {
    counts: [countA, countB],
    spacings,
    difference,
    sixteenths: Math.round(difference * 16),
    percent: (200 * difference) / (spacings[0] + spacings[1]),
    seen: difference > EYE,
  };
}

/** One spacing on both sides, and in the middle of one of them a gap for a motif of its own. */
export interface CentreSpacer {
  readonly spacing: number;
  readonly counts: readonly [a: number, b: number];
  /** Which side has the gap, and how long it is. */
  readonly on: 'a' | 'b';
  readonly gap: number;
}

/**
 * Ways to keep the spacing that one side has by itself on the other too, which gets an even count and a gap in the middle: the one with the least
 * gap for each count of the first, gaps up to `widest` divisions long. Nearest to the wished spacing first.
 */
export function centreSpacers(a: BorderSide, b: BorderSide, wish: SetOutWish, widest = 2): readonly CentreSpacer[] {
  const keep = (kept: BorderSide, other: BorderSide, on: 'a' | 'b') =>
    countsFor(kept, wish).flatMap((count): readonly CentreSpacer[] => {
      const spacing = kept.length / count;
      const even = 2 * Math.floor((other.length / spacing + SAME_POINT) / 2);
      const gap = Math.max(0, other.length - even * spacing);
      if (even < 2 || gap > widest * spacing) return [];
      return [{ spacing, counts: on === 'b' ? [count, even] : [even, count], on, gap }];
    });
  return [...keep(a, b, 'b'), ...keep(b, a, 'a')].sort(nearest(wish));
}

/** One spacing on both sides, and corner squares that reach farther along them than the border is wide. */
export interface CornerSquares {
  readonly spacing: number;
  readonly counts: readonly [a: number, b: number];
  /** How far each corner reaches into each side, and the side of the square that gives. */
  readonly reach: number;
  readonly square: number;
}

/** Corner squares that take up the rest evenly: (A - B) / (m - n) is the spacing, and half of A - m times it the reach, up to a whole width. */
export function cornerSquares(a: BorderSide, b: BorderSide, wish: SetOutWish): readonly CornerSquares[] {
  const found = countsFor(a, wish).flatMap((m) =>
    countsFor(b, wish).flatMap((n): readonly CornerSquares[] => {
      if (m === n) return [];
      const spacing = (a.length - b.length) / (m - n);
      const reach = (a.length - m * spacing) / 2;
      if (!(spacing > 0) || spacing < (wish.narrowest ?? 0) - SAME_POINT || reach < -SAME_POINT || reach > a.width) return [];
      return [{ spacing, counts: [m, n], reach: Math.max(0, reach), square: a.width + Math.max(0, reach) }];
    }),
  );
  return found.sort(nearest(wish));
}

function nearest({ spacing }: SetOutWish): (p: { readonly spacing: number }, q: { readonly spacing: number }) => number {
  return (p, q) => (spacing === undefined ? q.spacing - p.spacing : Math.abs(p.spacing - spacing) - Math.abs(q.spacing - spacing));
}
