// A needle line seated along a stretch of a line, and how a seating is changed: settled anew on another stretch, lengthened as far as it will go.

import type { Frame } from '../../geometry/point.ts';
import type { NeedleTrack } from './needle-track.ts';
import { type Seat, type SettleOptions, settle } from './settle.ts';
import type { Start, Stretch } from './starts.ts';
import { type WantedLine, placesBetween } from './wanted-line.ts';

/** A needle line of some template, on one face. */
export interface Rail {
  readonly track: NeedleTrack;
  /** Which template of those asked about. */
  readonly template: number;
  /** Which of its needle lines. */
  readonly needleLine: number;
}

export interface Seating<F extends Frame> {
  readonly line: WantedLine<F>;
  readonly rail: Rail;
  /** 1 when the needle line runs the way of the line, -1 against it. */
  readonly way: 1 | -1;
  readonly stretch: Stretch;
  readonly seat: Seat;
  /** The places of the line it was settled by, and where along the needle line their feet are. */
  readonly places: readonly number[];
  readonly feet: Float64Array;
  /** The greatest weighed deviation at those places, in inches. */
  readonly greatest: number;
}

/** Ends that another placement goes on from have to be kept to: there the deviation counts so many times. */
export interface Ends {
  readonly first: number;
  readonly last: number;
}

/** What the ends of a stretch are asked, wherever it may come to end. */
export type EndsOf = (stretch: Stretch) => Ends;

/** Nothing goes on from here. */
export const looseEnds: EndsOf = () => ({ first: 1, last: 1 });

/** On which side of the needle line, as it runs, the line lies: 1 right, -1 left. */
export function handOf<F extends Frame>(line: WantedLine<F>, way: 1 | -1): 1 | -1 {
  return (line.side === 'right') === way > 0 ? -1 : 1;
}

/** A start found by a first look, settled on its stretch. */
export function seated<F extends Frame>(line: WantedLine<F>, rail: Rail, start: Start, ends: EndsOf, most: number, options: SettleOptions): Seating<F> {
  const { stretch, way } = start;
  const places = placesBetween(line, stretch.from, stretch.to, most);
  const whole = line.run[stretch.to]! - line.run[stretch.from]!;
  const goesRound = line.path.closed && rail.track.closed && stretch.to - stretch.from === line.steps;
  const scale = goesRound ? rail.track.length / whole : 1;
  const first = line.run[places[0] ?? stretch.from]!;
  const feet = Float64Array.from(places, (place) => start.along + way * scale * (line.run[place]! - first));
  return settledBy({ line, rail, way, stretch, seat: start.seat, places, feet, greatest: Infinity }, ends, options);
}

/** The same seating settled on another stretch, feet followed from where they are. */
export function reseated<F extends Frame>(before: Seating<F>, stretch: Stretch, ends: EndsOf, most: number, options: SettleOptions): Seating<F> {
  const places = placesBetween(before.line, stretch.from, stretch.to, most);
  return settledBy({ ...before, stretch, places, feet: feetFor(before, places) }, ends, options);
}

function settledBy<F extends Frame>(seating: Seating<F>, ends: EndsOf, options: SettleOptions): Seating<F> {
  const { line, rail, way, places, feet } = seating;
  const measured = new Float64Array(3 * places.length);
  places.forEach((place, i) => {
    measured[3 * i] = line.x[place]!;
    measured[3 * i + 1] = line.y[place]!;
    measured[3 * i + 2] = line.away[place]!;
  });
  const weights = new Float64Array(places.length).fill(1);
  if (places.length > 0) {
    const { first, last } = ends(seating.stretch);
    weights[0] = first;
    weights[places.length - 1] = last;
  }
  const settled = settle({ track: rail.track, places: measured, weights, hand: handOf(line, way) }, seating.seat, feet, options);
  return { ...seating, ...settled };
}

/** About where the feet of other places are: between known ones in proportion, beyond them by inches along the wanted line. */
function feetFor<F extends Frame>({ line, rail, way, places: known, feet }: Seating<F>, places: readonly number[]): Float64Array {
  const unrolled = unrolledFeet(feet, rail.track);
  const round = closedRound(line, known, places);
  let k = 0;
  return Float64Array.from(places, (place) => {
    const at = place + round;
    while (k + 2 < known.length && known[k + 1]! <= at) k++;
    const a = known[k]!;
    const b = known[Math.min(k + 1, known.length - 1)]!;
    if (at <= a || b === a) return unrolled[k]! + way * (runAt(line, at) - line.run[a]!);
    if (at >= b) return unrolled[k + 1]! + way * (runAt(line, at) - line.run[b]!);
    return unrolled[k]! + ((at - a) / (b - a)) * (unrolled[k + 1]! - unrolled[k]!);
  });
}

/** The feet of a closed needle line gone on counting, so that they do not jump where it starts. */
function unrolledFeet(feet: Float64Array, { closed, length }: NeedleTrack): Float64Array {
  const unrolled = Float64Array.from(feet);
  for (let i = 1; closed && i < unrolled.length; i++) unrolled[i] = unrolled[i]! - Math.round((unrolled[i]! - unrolled[i - 1]!) / length) * length;
  return unrolled;
}

/**
 * Whether a seating follows its stretch: no deviation beyond the tolerance, and the needle line neither turns back nor goes out of its way between two
 * places (round a tip, into a notch) by more than such a deviation would make it.
 */
export function follows<F extends Frame>({ line, rail, way, places, feet, greatest }: Seating<F>, tolerance: number): boolean {
  if (greatest > tolerance) return false;
  const unrolled = unrolledFeet(feet, rail.track);
  for (let i = 1; i < places.length; i++) {
    const onNeedle = way * (unrolled[i]! - unrolled[i - 1]!);
    const onWanted = line.run[places[i]!]! - line.run[places[i - 1]!]!;
    if (onNeedle < -2 * tolerance || onNeedle > onWanted * STRETCHED + 2 * tolerance) return false;
  }
  return true;
}

/** A needle line within the tolerance outside a bend is longer than the line by less than this. */
const STRETCHED = 5 / 4;

/** On a closed line the same place has two numbers, one round apart: by how much to shift the new ones to lie beside the known. */
function closedRound<F extends Frame>(line: WantedLine<F>, known: readonly number[], places: readonly number[]): number {
  if (!line.path.closed || known.length === 0 || places.length === 0) return 0;
  const middleOf = (row: readonly number[]) => (row[0]! + row[row.length - 1]!) / 2;
  return Math.round((middleOf(known) - middleOf(places)) / line.steps) * line.steps;
}

function runAt<F extends Frame>({ run, steps }: WantedLine<F>, place: number): number {
  if (place < 0) return run[place + steps]! - run[steps]!;
  if (place >= run.length) return run[place - steps]! + run[steps]!;
  return run[place]!;
}
