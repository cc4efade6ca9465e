// The clear stretches of an offset strung together into lines.
//
// Where the roller just fits between two sides, its offsets from both coincide and run opposite ways; such twins are
// taken out first and make open centre lines. What is left are loops. Where two loops touch in one place they are kept
// apart: each goes round what lies between the offsets without passing through the touch.

import { TURN, normalised } from '../../num/angle.ts';
import { JOINT, SLIVER, WELD } from '../../num/tolerances.ts';
import { type Frame, angleOf, between, distance } from '../point.ts';
import { type Segment, nearestOnSegment, pointOnSegment, reversedSegment, stretchOfSegment } from '../segment.ts';
import type { Arrangement, Stretch } from './arrange.ts';
import { pointAtChord } from './corner-turn.ts';
import { leadingRound, lengthOf, withoutSpecks } from './mend.ts';
import type { RawPiece, Side } from './raw-pieces.ts';

/** A stretch whose offset from the opposite side runs back along it. */
export interface TwinStretch {
  readonly there: Stretch;
  readonly back: Stretch;
}

export interface Traced {
  /** Each in order, the way the edge runs. */
  readonly loops: readonly (readonly Stretch[])[];
  /** Each in order, the way of the first of each twin. */
  readonly openLines: readonly (readonly TwinStretch[])[];
  /** What is too short to be part of a line, or runs along one within rounding slack, at the place where the line passes it. */
  readonly specks: readonly Stretch[];
}

/** Strings stretches together by the places where they end and start; those that lead nowhere are left out. */
export function trace<F extends Frame>(pieces: readonly RawPiece<F>[], arrangement: Arrangement, side: Side): Traced {
  const plain = plainLoops(arrangement.clear);
  if (plain) return { loops: plain, openLines: [], specks: [] };
  const { clear, nearlyClear, specks } = withoutSpecks(pieces, arrangement);
  const { twins, single } = pairTwins(pieces, clear);
  const kept = leadingRound(pieces, single, nearlyClear);
  const loops = loopsOf(pieces, kept, side);
  const used = new Set(loops.flat());
  const beside = kept.filter((s) => !used.has(s) && lengthOf(pieces, s) <= SLIVER);
  return { loops, openLines: openLinesOf(twins), specks: [...specks, ...beside] };
}

/**
 * The loops, where at every place one stretch arrives and one leaves; undefined where it is not so plain. Loops of two stretches may be
 * twins, and want a closer look.
 */
function plainLoops(stretches: readonly Stretch[]): readonly (readonly Stretch[])[] | undefined {
  const leaving = new Map<number, Stretch>();
  for (const s of stretches) leaving.set(s.from, s);
  if (leaving.size < stretches.length) return undefined;
  const loops: Stretch[][] = [];
  for (const first of stretches) {
    if (!leaving.has(first.from)) continue;
    const loop: Stretch[] = [];
    let at: Stretch | undefined = first;
    while (at) {
      loop.push(at);
      leaving.delete(at.from);
      const next = leaving.get(at.to);
      if (!next && at.to !== first.from) return undefined;
      at = next;
    }
    if (loop.length <= 2) return undefined;
    loops.push(loop);
  }
  return loops;
}

function pairTwins<F extends Frame>(pieces: readonly RawPiece<F>[], stretches: readonly Stretch[]): { twins: readonly TwinStretch[]; single: readonly Stretch[] } {
  const leaving = leavingFrom(stretches);
  const gone = new Set<Stretch>();
  const twins: TwinStretch[] = [];
  for (const there of stretches) {
    if (gone.has(there)) continue;
    const middle = pointOnSegment(pieces[there.piece]!.segment, (there.a + there.b) / 2);
    const back = leaving
      .get(there.to)
      ?.find((s) => s.to === there.from && !gone.has(s) && nearestOnSegment(pieces[s.piece]!.segment, middle).distance <= WELD);
    if (!back) continue;
    // Where more arrive than leave at one end, and the other way round at the other, only one of the two was left over by rounding.
    const surplusAtStart = surplusAt(stretches, gone, there.from);
    const isOneTooMany = surplusAtStart !== 0 && surplusAt(stretches, gone, there.to) === -surplusAtStart;
    if (!isOneTooMany) twins.push({ there, back });
    if (!isOneTooMany || surplusAtStart > 0) gone.add(back);
    if (!isOneTooMany || surplusAtStart < 0) gone.add(there);
  }
  return { twins, single: gone.size === 0 ? stretches : stretches.filter((s) => !gone.has(s)) };
}

/** How many more stretches arrive at a place than leave it. */
function surplusAt(stretches: readonly Stretch[], gone: ReadonlySet<Stretch>, place: number): number {
  let surplus = 0;
  for (const s of stretches) if (!gone.has(s)) surplus += Number(s.to === place) - Number(s.from === place);
  return surplus;
}

function leavingFrom(stretches: readonly Stretch[]): Map<number, Stretch[]> {
  const leaving = new Map<number, Stretch[]>();
  for (const s of stretches) {
    const others = leaving.get(s.from);
    if (others) others.push(s);
    else leaving.set(s.from, [s]);
  }
  return leaving;
}

function loopsOf<F extends Frame>(pieces: readonly RawPiece<F>[], stretches: readonly Stretch[], side: Side): readonly (readonly Stretch[])[] {
  const leaving = leavingFrom(stretches);
  const used = new Set<Stretch>();
  const loops: Stretch[][] = [];
  // The longest first, so that what rounding leaves over beside them cannot lead them astray.
  for (const first of longestFirst(pieces, stretches)) {
    if (used.has(first)) continue;
    const loop: Stretch[] = [];
    let at: Stretch | undefined = first;
    while (at && !used.has(at)) {
      used.add(at);
      loop.push(at);
      at = nextAfter(pieces, at, leaving.get(at.to)!, side);
    }
    // A start beside the loop that was found leads into it.
    const start = at ? loop.indexOf(at) : -1;
    if (start >= 0) loops.push(loop.slice(start));
  }
  return loops;
}

function longestFirst<F extends Frame>(pieces: readonly RawPiece<F>[], stretches: readonly Stretch[]): readonly Stretch[] {
  return stretches.map((s) => ({ s, length: lengthOf(pieces, s) })).sort((one, other) => other.length - one.length).map(({ s }) => s);
}

/** Of the stretches that leave where one arrives, the one that turns most sharply to the clear side. */
function nextAfter<F extends Frame>(pieces: readonly RawPiece<F>[], arrived: Stretch, choices: readonly Stretch[], side: Side): Stretch | undefined {
  if (choices.length === 1) return choices[0];
  const came = segmentOf(pieces, arrived);
  const ahead = choices.map((s) => segmentOf(pieces, s));
  const reach = Math.min(...[came, ...ahead].map((s) => distance(s.from, s.to))) / 2;
  const back = directionFrom(reversedSegment(came), reach);
  let best: Stretch | undefined;
  let sharpest = Infinity;
  ahead.forEach((s, i) => {
    // From the way back round over the clear side: counter-clockwise when that is to the right.
    const turn = normalised(side * (back - directionFrom(s, reach)));
    // Straight back, as in a gap that is next to nothing wider than the roller, is the sharpest turn, whichever side rounding puts it.
    const opening = turn > TURN - JOINT / reach ? turn - TURN : turn;
    if (opening >= sharpest) return;
    sharpest = opening;
    best = choices[i];
  });
  return best;
}

function segmentOf<F extends Frame>(pieces: readonly RawPiece<F>[], s: Stretch): Segment<F> {
  return stretchOfSegment(pieces[s.piece]!.segment, s.a, s.b);
}

function directionFrom<F extends Frame>(s: Segment<F>, reach: number): number {
  return angleOf(between(s.from, pointAtChord(s, reach, 'start')));
}

/** Twins chained end to end; where more than two meet, lines end. */
function openLinesOf(twins: readonly TwinStretch[]): readonly (readonly TwinStretch[])[] {
  const at = new Map<number, TwinStretch[]>();
  for (const twin of twins) {
    for (const place of [twin.there.from, twin.there.to]) at.set(place, [...(at.get(place) ?? []), twin]);
  }
  const used = new Set<TwinStretch>();
  const follow = (from: number, twin: TwinStretch | undefined): TwinStretch[] => {
    const line: TwinStretch[] = [];
    let place = from;
    while (twin && !used.has(twin)) {
      used.add(twin);
      const along: TwinStretch = twin.there.from === place ? twin : { there: twin.back, back: twin.there };
      line.push(along);
      place = along.there.to;
      const here = at.get(place)!;
      twin = here.length === 2 ? here.find((other) => !used.has(other)) : undefined;
    }
    return line;
  };
  const lines: TwinStretch[][] = [];
  for (const [place, here] of at) {
    if (here.length === 2) continue;
    for (const twin of here) if (!used.has(twin)) lines.push(follow(place, twin));
  }
  for (const twin of twins) if (!used.has(twin)) lines.push(follow(twin.there.from, twin));
  return lines;
}
