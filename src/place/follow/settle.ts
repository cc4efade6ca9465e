// Sliding and turning a needle line until the greatest of its deviations from a line is as small as it can be near where it lay.
// Maths: the least greatest error of a smooth problem by a sequence of linear programmes, each within a reach that grows while the linear measure
// tells true and shrinks when it does not (Madsen and Schjaer-Jacobsen, "Linearly constrained minimax optimization", Mathematical Programming 14,
// 1978; from memory). The distance to a curve changes with the point by the unit vector from its foot, so the slopes are exact.

import { TURN } from '../../num/angle.ts';
import { SAME_POINT } from '../../num/tolerances.ts';
import { leastGreatest } from './least-greatest.ts';
import { type Foot, type NeedleTrack, findFoot, newFoot, pieceHolding } from './needle-track.ts';

/** Carries places of the line to the track's coordinates: turned by `angle`, then moved. */
export interface Seat {
  readonly angle: number;
  readonly x: number;
  readonly y: number;
}

export interface ToSettle {
  readonly track: NeedleTrack;
  /** Places to measure from, in the line's own frame: x, y, and how far away the needle line is to run, in inches. */
  readonly places: Float64Array;
  /** How many times its deviation each place counts. */
  readonly weights: Float64Array;
  /** 1 when the line is to lie on the right of the needle line as the track runs, -1 when on its left. */
  readonly hand: 1 | -1;
}

export interface Settled {
  readonly seat: Seat;
  /** Where each place has its foot, in inches along the needle line. */
  readonly feet: Float64Array;
  /** The greatest weighed deviation, in inches. */
  readonly greatest: number;
}

export interface SettleOptions {
  /** At most so many linear programmes. */
  readonly rounds: number;
  /** Good enough: stop as soon as the greatest deviation is no more than this. */
  readonly enough?: number;
  /** Stop when a round gains less than this, in inches. */
  readonly gain?: number;
}

/** The first reach of a step, in inches of the body's movement. */
const FIRST_REACH = 1 / 4;

/** The seat near `from` with the least greatest deviation. `feet` says about where along the needle line the feet of the places are. */
export function settle(problem: ToSettle, from: Seat, feet: Float64Array, { rounds, enough = 0, gain = SAME_POINT }: SettleOptions): Settled {
  const count = problem.weights.length;
  const body = bodyOf(problem.places);
  const values = new Float64Array(count);
  const slopes = new Float64Array(3 * count);
  let known = measure(problem, from, Int32Array.from(feet, (along) => pieceHolding(problem.track, along)), body, values, slopes);
  let seat = from;
  let reach = Math.min(FIRST_REACH, body.radius);
  for (let round = 0; round < rounds && known.greatest > enough; round++) {
    const { move, greatest: hoped } = leastGreatest(values, slopes, reach);
    const promised = known.greatest - hoped;
    if (promised <= gain) break;
    const next = movedSeat(seat, body, move);
    const nextValues = new Float64Array(count);
    const nextSlopes = new Float64Array(3 * count);
    const tried = measure(problem, next, known.pieces, body, nextValues, nextSlopes);
    const gained = known.greatest - tried.greatest;
    if (gained > 0) {
      values.set(nextValues);
      slopes.set(nextSlopes);
      known = tried;
      seat = next;
    }
    if (gained < promised / 4) reach /= 4;
    else if (gained > (promised * 3) / 4) reach = Math.min(2 * reach, body.radius);
  }
  return { seat, feet: known.feet, greatest: known.greatest };
}

/** The deviation at one place, in inches: positive when the needle line lies farther away than it should. Beyond an end it grows with how far. */
export function deviationAt({ track, hand }: Pick<ToSettle, 'track' | 'hand'>, seat: Seat, x: number, y: number, away: number, foot: Foot): number {
  const cos = Math.cos(seat.angle);
  const sin = Math.sin(seat.angle);
  findFoot(track, cos * x - sin * y + seat.x, sin * x + cos * y + seat.y, foot);
  const off = hand * foot.side - away;
  return foot.beyond > 0 ? (off < 0 ? off - foot.beyond : off + foot.beyond) : off;
}

interface Body {
  readonly x: number;
  readonly y: number;
  /** How far the line reaches from its middle, so that turning is counted in inches. */
  readonly radius: number;
}

function bodyOf(places: Float64Array): Body {
  const count = places.length / 3;
  let x = 0;
  let y = 0;
  for (let i = 0; i < count; i++) {
    x += places[3 * i]! / count;
    y += places[3 * i + 1]! / count;
  }
  let radius = SAME_POINT;
  for (let i = 0; i < count; i++) radius = Math.max(radius, Math.hypot(places[3 * i]! - x, places[3 * i + 1]! - y));
  return { x, y, radius };
}

interface Measured {
  readonly greatest: number;
  readonly pieces: Int32Array;
  readonly feet: Float64Array;
}

const asked = newFoot();

/** The weighed deviations, and how each changes when the line slides (x, y) in the track's coordinates or turns about its middle. */
function measure(problem: ToSettle, seat: Seat, pieces: Int32Array, body: Body, values: Float64Array, slopes: Float64Array): Measured {
  const { places, weights, hand } = problem;
  const cos = Math.cos(seat.angle);
  const sin = Math.sin(seat.angle);
  const found = new Int32Array(weights.length);
  const feet = new Float64Array(weights.length);
  let greatest = 0;
  for (let i = 0; i < weights.length; i++) {
    const x = places[3 * i]!;
    const y = places[3 * i + 1]!;
    asked.piece = pieces[i]!;
    const weight = weights[i]!;
    const value = weight * deviationAt(problem, seat, x, y, places[3 * i + 2]!, asked);
    found[i] = asked.piece;
    feet[i] = asked.along;
    values[i] = value;
    greatest = Math.max(greatest, Math.abs(value));
    const dx = x - body.x;
    const dy = y - body.y;
    const armX = cos * dx - sin * dy;
    const armY = sin * dx + cos * dy;
    const sign = hand * weight;
    slopes[3 * i] = sign * asked.x;
    slopes[3 * i + 1] = sign * asked.y;
    slopes[3 * i + 2] = (sign * (asked.y * armX - asked.x * armY)) / body.radius;
  }
  return { greatest, pieces: found, feet };
}

function movedSeat(seat: Seat, body: Body, [dx, dy, turned]: readonly [number, number, number]): Seat {
  const turn = turned / body.radius;
  const cos = Math.cos(seat.angle);
  const sin = Math.sin(seat.angle);
  const middleX = cos * body.x - sin * body.y + seat.x + dx;
  const middleY = sin * body.x + cos * body.y + seat.y + dy;
  const angle = (seat.angle + turn) % TURN;
  return {
    angle,
    x: middleX - (Math.cos(angle) * body.x - Math.sin(angle) * body.y),
    y: middleY - (Math.sin(angle) * body.x + Math.cos(angle) * body.y),
  };
}
