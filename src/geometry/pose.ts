// Poses: rigid motions of the plane, the only way from one frame to another.
// A pose flips (x -> -x) if flipped, then turns clockwise by `angle`, then moves by (x, y).

import type { Frame, Point, Vec } from './point.ts';
import { shortestTurn } from '../num/angle.ts';

declare const leads: unique symbol;

/** Carries `From` coordinates to `To` coordinates; x and y in inches, angle in radians. */
export interface Pose<From extends Frame, To extends Frame> {
  readonly x: number;
  readonly y: number;
  readonly angle: number;
  readonly flipped: boolean;
  readonly [leads]?: (from: From) => To;
}

/** The pose that leaves everything where it is. */
export function stay<F extends Frame>(): Pose<F, F> {
  return { x: 0, y: 0, angle: 0, flipped: false };
}

export function poseOf<From extends Frame, To extends Frame>(x: number, y: number, angle = 0, flipped = false): Pose<From, To> {
  return { x, y, angle, flipped };
}

/** The point as seen in the other frame. */
export function carry<From extends Frame, To extends Frame>(pose: Pose<From, To>, p: Point<From>): Point<To> {
  const v = carryVec(pose, { x: p.x, y: p.y });
  return { x: v.x + pose.x, y: v.y + pose.y };
}

/** The vector as seen in the other frame: flipped and turned, not moved. */
export function carryVec<From extends Frame, To extends Frame>(pose: Pose<From, To>, v: Vec<From>): Vec<To> {
  const cos = Math.cos(pose.angle);
  const sin = Math.sin(pose.angle);
  const x = pose.flipped ? -v.x : v.x;
  return { x: cos * x - sin * v.y, y: sin * x + cos * v.y };
}

/** The pose that does `first` and then `then`. */
export function after<A extends Frame, B extends Frame, C extends Frame>(first: Pose<A, B>, then: Pose<B, C>): Pose<A, C> {
  const at = carry(then, { x: first.x, y: first.y });
  const angle = then.flipped ? then.angle - first.angle : then.angle + first.angle;
  return { x: at.x, y: at.y, angle: shortestTurn(angle), flipped: first.flipped !== then.flipped };
}

/** The pose that undoes this one. */
export function inverse<From extends Frame, To extends Frame>(pose: Pose<From, To>): Pose<To, From> {
  const angle = pose.flipped ? pose.angle : -pose.angle;
  const back: Pose<To, From> = { x: 0, y: 0, angle, flipped: pose.flipped };
  const at = carryVec(back, { x: pose.x, y: pose.y });
  return { x: -at.x, y: -at.y, angle: shortestTurn(angle), flipped: pose.flipped };
}

/** The pose that turns clockwise about a point. */
export function turnAbout<F extends Frame>(centre: Point<F>, angle: number): Pose<F, F> {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return {
    x: centre.x - (cos * centre.x - sin * centre.y),
    y: centre.y - (sin * centre.x + cos * centre.y),
    angle: shortestTurn(angle),
    flipped: false,
  };
}

/** The pose that mirrors across the line through a point in a direction given in radians. */
export function mirrorAcross<F extends Frame>(on: Point<F>, direction: number): Pose<F, F> {
  // Mirroring across the line at `direction` is a flip (x -> -x) followed by a turn of 2 * direction - pi.
  const turn: Pose<F, F> = { x: 0, y: 0, angle: shortestTurn(2 * direction - Math.PI), flipped: true };
  const image = carry(turn, on);
  return { ...turn, x: on.x - image.x, y: on.y - image.y };
}
