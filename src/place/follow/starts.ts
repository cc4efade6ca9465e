// Where a search for the best seat begins: a stretch of the wanted line laid against every stretch of a needle line, both faces, both ways.
// Maths: the rigid motion that brings two rows of points together with the least squared distance, in closed form from their sums (Umeyama,
// "Least-squares estimation of transformation parameters", IEEE PAMI 13, 1991, in the plane; from memory). Points of the two rows belong together by
// inches along, which is only nearly right; the search that starts here puts it right.

import type { Frame } from '../../geometry/point.ts';
import { SAME_FIT, TIP_TURN } from '../../num/tolerances.ts';
import type { NeedleTrack } from './needle-track.ts';
import type { Seat } from './settle.ts';
import type { WantedLine } from './wanted-line.ts';

/** A stretch of a line, by the numbers of its places. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export interface Start {
  readonly seat: Seat;
  /** 1 when the needle line runs the way of the line, -1 against it. */
  readonly way: 1 | -1;
  /** The root of the mean squared distance, in inches. */
  readonly apart: number;
  /** Inches along the needle line at the stretch's first place. */
  readonly along: number;
  readonly stretch: Stretch;
}

/**
 * Seats of one stretch and one way from which a search may begin, best first: those from which sliding the needle line along a little makes the fit worse,
 * and others evenly between them. None at which a place lies more than `within` inches from where it should; none at all where the needle line is
 * shorter than the stretch.
 */
export function startsFor<F extends Frame>(line: WantedLine<F>, stretch: Stretch, places: readonly number[], track: NeedleTrack, way: 1 | -1, within = Infinity): readonly Start[] {
  const row = rowOf(line, stretch, places, track, way);
  if (!row) return [];
  const apart = new Float64Array(row.count);
  for (let i = 0; i < row.count; i++) apart[i] = lay(row, row.first + i * row.stride).apart;
  return chosen(apart, track.closed, within)
    .flatMap((i): Start | [] => {
      const slot = row.first + i * row.stride;
      const laid = lay(row, slot);
      const angle = Math.atan2(laid.across, laid.along);
      const cos = Math.cos(angle);
      const sin = Math.sin(angle);
      const seat = { angle, x: laid.x - (cos * row.meanX - sin * row.meanY), y: laid.y - (sin * row.meanX + cos * row.meanY) };
      if (within < Infinity && (worst(row, slot, laid.x, laid.y, cos, sin) > within || !endsRunAlong(row, slot, way, cos, sin))) return [];
      return { seat, way, apart: laid.apart, along: slot * track.step, stretch };
    })
    .sort((a, b) => a.apart - b.apart);
}

/** A stretch ready to be laid against a needle line. */
interface Row {
  readonly points: Float64Array;
  /** The wanted places from their middle, and how many slots of the needle line each lies from the first. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly ahead: Int32Array;
  /** From the first place to the next step of the line, and from the last to the step before. */
  readonly leaving: readonly number[];
  readonly meanX: number;
  readonly meanY: number;
  readonly squares: number;
  /** The slots its first place is laid on: so many, from the first on, so far apart. */
  readonly first: number;
  readonly count: number;
  readonly stride: number;
  /** Points of a closed line are looked at in the middle one of three rounds. */
  readonly round: number;
}

function rowOf<F extends Frame>(line: WantedLine<F>, stretch: Stretch, places: readonly number[], track: NeedleTrack, way: 1 | -1): Row | undefined {
  const first = places[0];
  const last = places[places.length - 1];
  if (first === undefined || last === undefined || places.length < 3) return undefined;
  const whole = line.run[last]! - line.run[first]!;
  const goesRound = line.path.closed && track.closed && stretch.to - stretch.from === line.steps;
  if (whole > track.length && !goesRound) return undefined;
  // Once round a closed line is once round the needle line, however much longer one is.
  const scale = goesRound ? track.length / whole : 1;
  const count = places.length;
  const ahead = Int32Array.from(places, (place) => way * Math.round(((line.run[place]! - line.run[first]!) * scale) / track.step));
  const meanX = places.reduce((sum, place) => sum + line.wantedX[place]!, 0) / count;
  const meanY = places.reduce((sum, place) => sum + line.wantedY[place]!, 0) / count;
  const x = Float64Array.from(places, (place) => line.wantedX[place]! - meanX);
  const y = Float64Array.from(places, (place) => line.wantedY[place]! - meanY);
  let squares = 0;
  for (let i = 0; i < count; i++) squares += x[i]! * x[i]! + y[i]! * y[i]!;
  const { wantedX, wantedY } = line;
  const leaving = [wantedX[first + 1]! - wantedX[first]!, wantedY[first + 1]! - wantedY[first]!, wantedX[last - 1]! - wantedX[last]!, wantedY[last - 1]! - wantedY[last]!];
  const reach = Math.abs(ahead[count - 1]!);
  const [low, high] = track.closed ? [0, track.slots - 1] : way > 0 ? [0, track.slots - reach] : [reach, track.slots];
  const stride = Math.max(1, Math.round(whole / track.step / STEPS_PAST));
  return { points: track.points, x, y, ahead, leaving, meanX, meanY, squares, first: low, count: Math.max(0, Math.floor((high - low) / stride) + 1), stride, round: track.closed ? track.slots : 0 };
}

/** A stretch is slid past the needle line in steps of this part of its own length, at which its shape does not change much. */
const STEPS_PAST = 24;

interface Laid {
  x: number;
  y: number;
  along: number;
  across: number;
  apart: number;
}

const laidNow: Laid = { x: 0, y: 0, along: 0, across: 0, apart: 0 };

/** The sums of one laying, written over by the next: the middle of the needle line's points, what gives the angle, and how far apart it all is. */
function lay({ points, x, y, ahead, squares, round }: Row, slot: number): Laid {
  const count = ahead.length;
  let sumX = 0;
  let sumY = 0;
  let size = 0;
  let along = 0;
  let across = 0;
  for (let i = 0; i < count; i++) {
    const k = 2 * (round + slot + ahead[i]!);
    const px = points[k]!;
    const py = points[k + 1]!;
    const wx = x[i]!;
    const wy = y[i]!;
    sumX += px;
    sumY += py;
    size += px * px + py * py;
    along += wx * px + wy * py;
    across += wx * py - wy * px;
  }
  laidNow.x = sumX / count;
  laidNow.y = sumY / count;
  laidNow.along = along;
  laidNow.across = across;
  const spread = size - count * (laidNow.x * laidNow.x + laidNow.y * laidNow.y);
  laidNow.apart = Math.sqrt(Math.max(0, squares + spread - 2 * Math.sqrt(along * along + across * across)) / count);
  return laidNow;
}

function worst({ points, x, y, ahead, round }: Row, slot: number, middleX: number, middleY: number, cos: number, sin: number): number {
  let greatest = 0;
  for (let i = 0; i < ahead.length; i++) {
    const k = 2 * (round + slot + ahead[i]!);
    const dx = points[k]! - (middleX + cos * x[i]! - sin * y[i]!);
    const dy = points[k + 1]! - (middleY + sin * x[i]! + cos * y[i]!);
    greatest = Math.max(greatest, dx * dx + dy * dy);
  }
  return Math.sqrt(greatest);
}

/**
 * Whether the needle line leaves both ends about the way the wanted line does: no more than half a right angle off. Where it does not, a tip or a notch lies
 * between the last places, and the needle would have to go round it.
 */
function endsRunAlong({ points, ahead, round, leaving }: Row, slot: number, way: 1 | -1, cos: number, sin: number): boolean {
  return [0, 1].every((end) => {
    const k = 2 * (round + slot + (end === 0 ? 0 : ahead[ahead.length - 1]!));
    const inward = 2 * (end === 0 ? way : -way);
    const px = points[k + inward]! - points[k]!;
    const py = points[k + inward + 1]! - points[k + 1]!;
    const wx = leaving[2 * end]!;
    const wy = leaving[2 * end + 1]!;
    const along = px * (cos * wx - sin * wy) + py * (sin * wx + cos * wy);
    return along >= Math.cos(TIP_TURN) * Math.hypot(px, py) * Math.hypot(wx, wy);
  });
}

/** Those no worse than either neighbour, the middle of a level run (such as along a straight edge), and every so many; none worse than `within`. */
function chosen(row: Float64Array, closed: boolean, within: number): number[] {
  const found: number[] = [];
  const count = row.length;
  const at = (i: number) => (closed ? row[(i + count) % count]! : (row[i] ?? Infinity));
  for (let i = 0; i < count; ) {
    const here = row[i]!;
    let end = i;
    while (end + 1 < count && Math.abs(row[end + 1]! - here) <= SAME_FIT) end++;
    const isDip = at(i - 1) >= here && at(end + 1) >= row[end]!;
    if (here <= within && (isDip || end > i + 1 || i % EVERY === 0)) found.push((i + end) >> 1);
    i = end + 1;
  }
  return found;
}

const EVERY = 12;
