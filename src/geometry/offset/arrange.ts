// The raw pieces of an offset cut where they meet, and what is left of them: the stretches clear of the edge.
// Between two meetings a stretch is either clear of the edge all along or too near all along, so its middle decides.

import type Flatbush from 'flatbush';
import { JOINT, SAME_POINT, SLIVER, WELD } from '../../num/tolerances.ts';
import { boundsMeet, boundsOfSegment, type Bounds } from '../bounds.ts';
import { meetSegments } from '../meet-segments.ts';
import { type Frame, distance } from '../point.ts';
import { nearestOnSegment, pointOnSegment, segmentLength } from '../segment.ts';
import { indexOf } from '../segment-index.ts';
import type { IsClear } from './clearance.ts';
import { type Places, makePlaces } from './places.ts';
import type { RawPiece } from './raw-pieces.ts';

/** A part of a raw piece between two places where it meets others. */
export interface Stretch {
  /** Index of the raw piece. */
  readonly piece: number;
  /** Where on the piece it starts and ends, 0 <= a < b <= 1. */
  readonly a: number;
  readonly b: number;
  /** The places (by number) it leads from and to. */
  readonly from: number;
  readonly to: number;
}

export interface Arrangement {
  readonly clear: readonly Stretch[];
  /** Short ones that are too near by next to nothing: what may be missing where the rest does not join up. */
  readonly nearlyClear: readonly Stretch[];
}

/**
 * Cuts the raw pieces at a distance `away` from an edge where they meet, and keeps the stretches that are clear of the edge by as much, to
 * rounding slack or nearly.
 */
export function arrange<F extends Frame>(pieces: readonly RawPiece<F>[], away: number, isClear: IsClear<F>): Arrangement {
  const places = makePlaces();
  const ends = pieces.map(() => ({ start: places.add(), end: places.add() }));
  pieces.forEach((piece, i) => {
    const next = i + 1 < pieces.length ? i + 1 : 0;
    if (piece.isPoint) places.join(ends[i]!.start, ends[i]!.end);
    if (distance(piece.segment.to, pieces[next]!.segment.from) <= JOINT) places.join(ends[i]!.end, ends[next]!.start);
  });
  const cuts = cutsOf(pieces, ends, places);
  const clear: Stretch[] = [];
  const nearlyClear: Stretch[] = [];
  pieces.forEach(({ segment, isPoint }, i) => {
    if (isPoint) return;
    const length = segmentLength(segment);
    const keep = (a: number, b: number, from: number, to: number) => {
      const middle = pointOnSegment(segment, (a + b) / 2);
      const isShort = (b - a) * length <= SLIVER;
      if (isClear(middle, away - SAME_POINT)) clear.push({ piece: i, a, b, from, to });
      else if (isShort && isClear(middle, away - WELD)) nearlyClear.push({ piece: i, a, b, from, to });
    };
    let a = 0;
    let from = places.find(ends[i]!.start);
    for (const { part, place } of cuts.get(i) ?? []) {
      const to = places.find(place);
      if (to === from) continue;
      keep(a, part, from, to);
      a = part;
      from = to;
    }
    const to = places.find(ends[i]!.end);
    if (to !== from) keep(a, 1, from, to);
  });
  return { clear, nearlyClear };
}

/** Where each piece that meets others is cut, in order along it. Cuts within rounding slack of each other, or of an end, become one place. */
function cutsOf<F extends Frame>(pieces: readonly RawPiece<F>[], ends: readonly { readonly start: number; readonly end: number }[], places: Places): ReadonlyMap<number, readonly Cut[]> {
  const cuts = new Map<number, Cut[]>();
  const cut = (piece: number, part: number, place: number) => {
    const own = cuts.get(piece);
    if (own) own.push({ part, place });
    else cuts.set(piece, [{ part, place }]);
  };
  const passPoint = (point: number, by: number) => {
    const near = nearestOnSegment(pieces[by]!.segment, pieces[point]!.segment.from);
    if (near.distance <= WELD) cut(by, near.part, ends[point]!.start);
  };
  for (const [i, j] of pairsToMeet(pieces)) {
    if (pieces[i]!.isPoint || pieces[j]!.isPoint) {
      if (!pieces[j]!.isPoint) passPoint(i, j);
      if (!pieces[i]!.isPoint) passPoint(j, i);
      continue;
    }
    for (const meeting of meetSegments(pieces[i]!.segment, pieces[j]!.segment)) {
      const partsOfI = meeting.kind === 'overlap' ? meeting.partsA : [meeting.partA];
      const partsOfJ = meeting.kind === 'overlap' ? meeting.partsB : [meeting.partB];
      partsOfI.forEach((part, k) => {
        const place = places.add();
        cut(i, part, place);
        cut(j, partsOfJ[k]!, place);
      });
    }
  }
  for (const [i, own] of cuts) {
    own.sort((one, other) => one.part - other.part);
    joinNeighbours([{ part: 0, place: ends[i]!.start }, ...own, { part: 1, place: ends[i]!.end }], segmentLength(pieces[i]!.segment), places);
  }
  return cuts;
}

interface Cut {
  readonly part: number;
  readonly place: number;
}

/** Cuts of one piece that lie within rounding slack of each other are one place. */
function joinNeighbours(cuts: readonly Cut[], length: number, places: Places): void {
  for (let k = 1; k < cuts.length; k++) {
    if ((cuts[k]!.part - cuts[k - 1]!.part) * length <= WELD) places.join(cuts[k - 1]!.place, cuts[k]!.place);
  }
}

/** Up to so many pieces, comparing the extents of all pairs is quicker than an index. */
const FEW = 100;

/** Pairs of pieces that may meet, apart from where one runs smoothly on into the next. */
function pairsToMeet<F extends Frame>(pieces: readonly RawPiece<F>[]): readonly (readonly [number, number])[] {
  const bounds = pieces.map((piece) => boundsOfSegment(piece.segment));
  const pairs: (readonly [number, number])[] = [];
  const runsOnFrom = pieces.map((piece, i) => (piece.isSmoothBefore && !piece.isPoint ? lastBefore(pieces, i) : -1));
  const consider = (i: number, j: number) => {
    if (runsOnFrom[j] !== i && runsOnFrom[i] !== j) pairs.push([i, j]);
  };
  if (pieces.length <= FEW) {
    for (let i = 0; i < bounds.length; i++) {
      for (let j = i + 1; j < bounds.length; j++) if (boundsMeet(bounds[i]!, bounds[j]!, WELD)) consider(i, j);
    }
    return pairs;
  }
  const index: Flatbush = indexOf(bounds);
  const near = (b: Bounds) => index.search(b.minX - WELD, b.minY - WELD, b.maxX + WELD, b.maxY + WELD);
  bounds.forEach((b, i) => {
    for (const j of near(b)) if (j > i) consider(i, j);
  });
  return pairs;
}

/** The piece before one, points at corners left out. */
function lastBefore<F extends Frame>(pieces: readonly RawPiece<F>[], index: number): number {
  let i = index;
  do i = (i + pieces.length - 1) % pieces.length;
  while (pieces[i]!.isPoint && pieces[i]!.kind === 'corner');
  return i;
}
