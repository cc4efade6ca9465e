// The raw pieces of an offset cut where they meet, and what is left of them: the stretches clear of the edge.
// Between two meetings a stretch is either clear of the edge all along or too near all along, so its middle decides.

import type Flatbush from 'flatbush';
import { JOINT, SLIVER, WELD } from '../../num/tolerances.ts';
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

/** Cuts raw pieces where they meet and keeps the stretches that are clear of the edge, to rounding slack or nearly. */
export function arrange<F extends Frame>(pieces: readonly RawPiece<F>[], isClear: IsClear<F>, isNearlyClear: IsClear<F>): Arrangement {
  const places = makePlaces();
  const cuts = pieces.map((): Cut[] => []);
  const ends = pieces.map(() => ({ start: places.add(), end: places.add() }));
  pieces.forEach((piece, i) => {
    const next = (i + 1) % pieces.length;
    if (distance(piece.segment.to, pieces[next]!.segment.from) <= JOINT) places.join(ends[i]!.end, ends[next]!.start);
    if (piece.isPoint) places.join(ends[i]!.start, ends[i]!.end);
  });
  const passPoint = (point: number, by: number) => {
    const near = nearestOnSegment(pieces[by]!.segment, pieces[point]!.segment.from);
    if (near.distance <= WELD) cuts[by]!.push({ part: near.part, place: ends[point]!.start });
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
        cuts[i]!.push({ part, place });
        cuts[j]!.push({ part: partsOfJ[k]!, place });
      });
    }
  }
  pieces.forEach((piece, i) => {
    if (piece.isPoint) return;
    cuts[i] = [{ part: 0, place: ends[i]!.start }, ...cuts[i]!.sort((one, other) => one.part - other.part), { part: 1, place: ends[i]!.end }];
    joinNeighbours(cuts[i], segmentLength(piece.segment), places);
  });
  const clear: Stretch[] = [];
  const nearlyClear: Stretch[] = [];
  pieces.forEach((piece, i) => {
    const own = cuts[i]!;
    const length = segmentLength(piece.segment);
    let start = own[0];
    for (let k = 1; k < own.length; k++) {
      const stop = own[k]!;
      const from = places.find(start!.place);
      const to = places.find(stop.place);
      if (from === to) continue;
      const stretch: Stretch = { piece: i, a: start!.part, b: stop.part, from, to };
      const middle = pointOnSegment(piece.segment, (stretch.a + stretch.b) / 2);
      if (isClear(middle)) clear.push(stretch);
      else if ((stretch.b - stretch.a) * length <= SLIVER && isNearlyClear(middle)) nearlyClear.push(stretch);
      start = stop;
    }
  });
  return { clear, nearlyClear };
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
