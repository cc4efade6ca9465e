// The move of three unknowns that makes the greatest of many linear errors least: a linear programme so small that it is solved on the spot.
// Maths: minimise e subject to |value_i + by_i . move| <= e and |move_k| <= reach. Solved by the dual simplex method, one exchange at a time
// (the exchange of Remez, one point each time): Nocedal and Wright, Numerical Optimization, chapter 13; Cheney, Introduction to
// Approximation Theory, chapter 2. Both from memory. The four rows that hold the answer are kept with the inverse of their matrix.

import { SAME_NUMBER } from '../../num/tolerances.ts';

export interface LeastGreatest {
  readonly move: readonly [number, number, number];
  /** The greatest error that is left, by the linear measure. */
  readonly greatest: number;
}

/** More exchanges than this are not met outside of ties that go in a circle; the best bound so far is then a fair step. */
const MOST_EXCHANGES = 80;

/**
 * The move, no component larger than `reach`, that makes the greatest of the errors |value + by . move| least. `values` holds one number an
 * error, `by` three. Without errors, no move.
 */
export function leastGreatest(values: Float64Array, by: Float64Array, reach: number): LeastGreatest {
  const count = values.length;
  if (count === 0) return { move: [0, 0, 0], greatest: 0 };
  let first = 0;
  for (let i = 1; i < count; i++) if (Math.abs(values[i]!) > Math.abs(values[first]!)) first = i;
  const sign = values[first]! < 0 ? -1 : 1;
  const a0 = sign * by[3 * first]!;
  const a1 = sign * by[3 * first + 1]!;
  const a2 = sign * by[3 * first + 2]!;
  // The start: the worst error, held by three walls of the box.
  const s0 = a0 > 0 ? -1 : 1;
  const s1 = a1 > 0 ? -1 : 1;
  const s2 = a2 > 0 ? -1 : 1;
  // Row j of the inverse gives how much of basic row j stands for any row (a, c).
  const inverse = new Float64Array([0, 0, 0, 1, s0, 0, 0, -a0 * s0, 0, s1, 0, -a1 * s1, 0, 0, s2, -a2 * s2]);
  const constants = new Float64Array([sign * values[first]!, -reach, -reach, -reach]);
  const weights = new Float64Array([1, Math.abs(a0), Math.abs(a1), Math.abs(a2)]);
  const parts = new Float64Array(4);
  let move: [number, number, number] = [0, 0, 0];
  let greatest = 0;
  for (let exchange = 0; exchange < MOST_EXCHANGES; exchange++) {
    const at = (k: number) => -(inverse[k]! * constants[0]! + inverse[4 + k]! * constants[1]! + inverse[8 + k]! * constants[2]! + inverse[12 + k]! * constants[3]!);
    const x = at(0);
    const y = at(1);
    const z = at(2);
    greatest = -at(3);
    move = [x, y, z];
    let worst = SAME_NUMBER * (1 + Math.abs(greatest));
    let enters = -1;
    let way = 1;
    for (let i = 0; i < count; i++) {
      const value = values[i]! + by[3 * i]! * x + by[3 * i + 1]! * y + by[3 * i + 2]! * z;
      const over = Math.abs(value) - greatest;
      if (over <= worst) continue;
      worst = over;
      enters = i;
      way = value < 0 ? -1 : 1;
    }
    for (let k = 0; k < 3; k++) {
      const over = Math.abs(move[k]!) - reach;
      if (over <= worst) continue;
      worst = over;
      enters = count + k;
      way = move[k]! < 0 ? -1 : 1;
    }
    if (enters < 0) break;
    const isWall = enters >= count;
    const e0 = isWall ? (enters === count ? way : 0) : way * by[3 * enters]!;
    const e1 = isWall ? (enters === count + 1 ? way : 0) : way * by[3 * enters + 1]!;
    const e2 = isWall ? (enters === count + 2 ? way : 0) : way * by[3 * enters + 2]!;
    const e3 = isWall ? 0 : 1;
    let leaves = -1;
    let least = Infinity;
    for (let j = 0; j < 4; j++) {
      const part = inverse[4 * j]! * e0 + inverse[4 * j + 1]! * e1 + inverse[4 * j + 2]! * e2 + inverse[4 * j + 3]! * e3;
      parts[j] = part;
      if (part <= SAME_NUMBER) continue;
      const ratio = weights[j]! / part;
      if (ratio >= least) continue;
      least = ratio;
      leaves = j;
    }
    if (leaves < 0) break;
    const pivot = parts[leaves]!;
    for (let k = 0; k < 4; k++) inverse[4 * leaves + k]! /= pivot;
    for (let j = 0; j < 4; j++) {
      if (j === leaves) continue;
      for (let k = 0; k < 4; k++) inverse[4 * j + k]! -= parts[j]! * inverse[4 * leaves + k]!;
      weights[j] = Math.max(0, weights[j]! - least * parts[j]!);
    }
    weights[leaves] = least;
    constants[leaves] = isWall ? -reach : way * values[enters]!;
  }
  return { move, greatest };
}
