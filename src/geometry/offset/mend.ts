// What rounding leaves among the clear stretches of an offset, put right before they are strung together: specks too short
// to have a direction, ends left over where pieces cross at a shallow angle, gaps of next to nothing.

import { JOINT, SLIVER } from '../../num/tolerances.ts';
import { type Frame, distance } from '../point.ts';
import { pointOnSegment, segmentLength } from '../segment.ts';
import type { Arrangement, Stretch } from './arrange.ts';
import { makePlaces } from './places.ts';
import type { RawPiece } from './raw-pieces.ts';

/** Length of a stretch in inches. */
export function lengthOf<F extends Frame>(pieces: readonly RawPiece<F>[], s: Stretch): number {
  return (s.b - s.a) * segmentLength(pieces[s.piece]!.segment);
}

/** Stretches told apart from specks: those shorter than a joint, of which the two ends become one place. */
export function withoutSpecks<F extends Frame>(pieces: readonly RawPiece<F>[], { clear, nearlyClear }: Arrangement): Arrangement & { readonly specks: readonly Stretch[] } {
  const isSpeck = (s: Stretch) => lengthOf(pieces, s) <= JOINT;
  if (!clear.some(isSpeck)) return { clear, nearlyClear, specks: [] };
  const places = makePlaces();
  const most = [...clear, ...nearlyClear].reduce((last, s) => Math.max(last, s.from, s.to), 0);
  while (places.add() < most);
  for (const s of clear) if (isSpeck(s)) places.join(s.from, s.to);
  const merged = (s: Stretch): Stretch => ({ piece: s.piece, a: s.a, b: s.b, from: places.find(s.from), to: places.find(s.to) });
  return {
    clear: clear.filter((s) => !isSpeck(s)).map(merged),
    nearlyClear: nearlyClear.map(merged).filter((s) => s.from !== s.to),
    specks: clear.filter(isSpeck).map(merged),
  };
}

/**
 * The stretches that lead round. What rounding leaves over where pieces cross at a shallow angle ends in the open and is taken off from
 * the end back. If longer ones end in the open, first the nearly clear ones and then bridges over gaps of next to nothing lead them on; what
 * still leads nowhere is left out.
 */
export function leadingRound<F extends Frame>(pieces: readonly RawPiece<F>[], stretches: readonly Stretch[], nearlyClear: readonly Stretch[]): readonly Stretch[] {
  const isShort = (s: Stretch) => lengthOf(pieces, s) <= SLIVER;
  let kept = withoutDeadEnds(stretches, isShort);
  if (!endsInTheOpen(kept)) return kept;
  kept = withoutDeadEnds([...stretches, ...nearlyClear], isShort);
  return withoutDeadEnds(bridged(pieces, kept), () => true);
}

function endsInTheOpen(stretches: readonly Stretch[]): boolean {
  const { arriving, leaving } = balanceOf(stretches);
  return stretches.some((s) => leaving.get(s.to) === undefined || arriving.get(s.from) === undefined);
}

function withoutDeadEnds(stretches: readonly Stretch[], mayGo: (s: Stretch) => boolean): readonly Stretch[] {
  const balance = balanceOf(stretches);
  let kept = stretches;
  for (;;) {
    const dead = new Set(kept.filter((s) => (balance.arriving.get(s.from) === undefined || balance.leaving.get(s.to) === undefined) && mayGo(s)));
    if (dead.size === 0) return kept;
    kept = kept.filter((s) => !dead.has(s));
    Object.assign(balance, balanceOf(kept));
  }
}

/** How many stretches arrive at a place and leave it. */
function balanceOf(stretches: readonly Stretch[]): { arriving: Map<number, number>; leaving: Map<number, number> } {
  const arriving = new Map<number, number>();
  const leaving = new Map<number, number>();
  for (const s of stretches) {
    arriving.set(s.to, (arriving.get(s.to) ?? 0) + 1);
    leaving.set(s.from, (leaving.get(s.from) ?? 0) + 1);
  }
  return { arriving, leaving };
}

/** Stretches that end where none leaves go on to the nearest that starts where none arrives, if that is as good as there. */
function bridged<F extends Frame>(pieces: readonly RawPiece<F>[], stretches: readonly Stretch[]): readonly Stretch[] {
  const { arriving, leaving } = balanceOf(stretches);
  const ends = stretches.filter((s) => leaving.get(s.to) === undefined);
  if (ends.length === 0) return stretches;
  const starts = stretches.filter((s) => arriving.get(s.from) === undefined);
  const leadOn = new Map<number, number>();
  for (const end of ends) {
    const at = pointOnSegment(pieces[end.piece]!.segment, end.b);
    const gap = (s: Stretch) => distance(at, pointOnSegment(pieces[s.piece]!.segment, s.a));
    const next = starts.filter((s) => gap(s) <= JOINT).sort((a, b) => gap(a) - gap(b))[0];
    if (next) leadOn.set(end.to, next.from);
  }
  return stretches.map((s) => ({ ...s, to: leadOn.get(s.to) ?? s.to }));
}
