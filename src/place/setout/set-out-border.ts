// All four sides of a border together: what works on both side lengths, ranked by how nearly alike the sides come out.

import { EYE } from '../../num/tolerances.ts';
import type { Side } from '../../model/plan.ts';
import { type CentreSpacer, type CornerSquares, type CountPair, centreSpacers, cornerSquares, pairOf } from './count-pairs.ts';
import type { SetOutResult } from './result.ts';
import { USUAL_WEIGHTS } from './score.ts';
import { type SideSetOut, setOutSide } from './set-out-side.ts';
import { type CornerTurn, turnCorners } from './turn-corners.ts';
import type { BorderSide, Ruler, SetOutWish } from './wish.ts';

/** A border as it was measured: the length of each side along its inner seam. */
export interface BorderMeasure extends Omit<BorderSide, 'length'> {
  readonly lengths: { readonly [side in Side]: number };
}

export interface BorderResult {
  /** Of the top and the bottom, and of the left and the right side. */
  readonly across: SetOutResult;
  readonly down: SetOutResult;
  readonly counts: { readonly [side in Side]: number };
  /** Every side's own spacing: opposite sides have one count, and rarely measure quite the same. */
  readonly spacings: { readonly [side in Side]: number };
  readonly pair: CountPair;
  /** Whether one pose serves all four sides, as nearly as an eye can tell. */
  readonly onePose: boolean;
  readonly corners: readonly CornerTurn[];
  readonly fits: boolean;
  /** The mean of both sides' scores, with the difference between them counted in. */
  readonly score: number;
}

export type BorderSetOut =
  | { readonly kind: 'set-out'; readonly results: readonly BorderResult[]; readonly spacers: readonly CentreSpacer[]; readonly cornerSquares: readonly CornerSquares[]; readonly across: SideSetOut; readonly down: SideSetOut }
  | { readonly kind: 'impossible'; readonly across: SideSetOut; readonly down: SideSetOut };

/**
 * The pairs of side set-outs that go together, the best first; of each pair of counts the best. Opposite sides share a count and are set out at
 * their mean length. Lengths in inches; impossible when either length has no set-out, with the reasons of each.
 */
export function setOutBorder(border: BorderMeasure, ruler: Ruler, wish: SetOutWish): BorderSetOut {
  const [sideAcross, sideDown] = bothSides(border);
  const across = setOutSide(sideAcross, ruler, wish);
  const down = sideAcross.length === sideDown.length ? across : setOutSide(sideDown, ruler, wish);
  if (across.kind === 'impossible' || down.kind === 'impossible') return { kind: 'impossible', across, down };
  return {
    kind: 'set-out',
    results: pairs(border, sideAcross, across.results, down.results, wish),
    spacers: centreSpacers(sideAcross, sideDown, wish),
    cornerSquares: cornerSquares(sideAcross, sideDown, wish),
    across,
    down,
  };
}

/** The two kinds of side: across the top and bottom, and down the left and right, each at the mean of its two lengths. */
export function bothSides({ lengths, width, outerClearance, innerClearance }: BorderMeasure): readonly [BorderSide, BorderSide] {
  const side = (length: number): BorderSide => ({ length, width, outerClearance, innerClearance });
  return [side((lengths.top + lengths.bottom) / 2), side((lengths.left + lengths.right) / 2)];
}

function pairs(border: BorderMeasure, side: BorderSide, across: readonly SetOutResult[], down: readonly SetOutResult[], wish: SetOutWish): readonly BorderResult[] {
  const best = new Map<string, { readonly across: SetOutResult; readonly down: SetOutResult; readonly score: number; readonly fits: boolean }>();
  const likely = bestOfEachCount(down);
  for (const a of bestOfEachCount(across)) {
    for (const d of likely) {
      if (a.edge !== d.edge || a.loop !== d.loop || a.unit.pose.flipped !== d.unit.pose.flipped) continue;
      const score = togetherScore(a, d, wish);
      const fits = a.fits && d.fits;
      const key = `${a.count}/${d.count}`;
      const before = best.get(key);
      if (!before || Number(fits) - Number(before.fits) > 0 || (fits === before.fits && score < before.score)) best.set(key, { across: a, down: d, score, fits });
    }
  }
  return [...best.values()]
    .sort((p, q) => Number(q.fits) - Number(p.fits) || p.score - q.score)
    .map(({ across: a, down: d, score, fits }) => {
      const counts = { top: a.count, bottom: a.count, left: d.count, right: d.count };
      const { lengths } = border;
      return {
        across: a,
        down: d,
        counts,
        spacings: { top: lengths.top / a.count, bottom: lengths.bottom / a.count, left: lengths.left / d.count, right: lengths.right / d.count },
        pair: pairOf(a.spacing * a.count, a.count, d.spacing * d.count, d.count),
        onePose: onePose(a, d),
        corners: turnCorners(a, side),
        fits,
        score,
      };
    });
}

/** Of each count the best few: a pose far down the list is in no best pair. They come sorted. */
function bestOfEachCount(results: readonly SetOutResult[]): readonly SetOutResult[] {
  const taken = new Map<number, number>();
  return results.filter(({ count }) => {
    const before = taken.get(count) ?? 0;
    taken.set(count, before + 1);
    return before < TRIED_TOGETHER;
  });
}

const TRIED_TOGETHER = 8;

function togetherScore(a: SetOutResult, d: SetOutResult, wish: SetOutWish): number {
  const apart = Math.abs(a.spacing - d.spacing) / ((a.spacing + d.spacing) / 2);
  // Crests that differ show as much as spacings that do.
  const unlike = Math.abs(a.height - d.height) / Math.max(a.height, d.height, EYE);
  return (a.score + d.score) / 2 + (wish.weights ?? USUAL_WEIGHTS).sides * (apart + unlike);
}

/** The same pose but for so little that no eye sees it, told at the ends of the unit and at its crest. */
function onePose(a: SetOutResult, d: SetOutResult): boolean {
  const ends = Math.max(Math.abs(a.unit.start.along - d.unit.start.along), Math.abs(a.unit.stop.along - d.unit.stop.along));
  return Math.abs(a.spacing - d.spacing) <= EYE && Math.abs(a.height - d.height) <= EYE && (ends <= EYE || (a.slide > 0 && d.slide > 0));
}
