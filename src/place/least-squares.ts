// Three unknowns, any number of equations: steps of a damped Gauss-Newton search, and what the equations leave free.
// Maths: Levenberg-Marquardt (Nocedal and Wright, Numerical Optimization, chapter 10) with the step taken in the eigenvectors of
// J^T J, so that where the equations leave a way free the step is the shortest; eigenvectors by cyclic Jacobi rotations
// (Golub and Van Loan, Matrix Computations, 8.5). Both from memory.

import { FREE_WAY } from '../num/tolerances.ts';

export type Triple = readonly [number, number, number];

export interface Row {
  readonly value: number;
  readonly by: Triple;
}

/** The eigenvalues of J^T J, largest first, with their unit vectors. */
export interface Spread {
  readonly sizes: Triple;
  readonly ways: readonly [Triple, Triple, Triple];
}

/** How strongly the equations hold each way of moving. */
export function spreadOf(rows: readonly Row[]): Spread {
  const a = [0, 1, 2].map((i) => [0, 1, 2].map((j) => rows.reduce((sum, { by }) => sum + by[i]! * by[j]!, 0)));
  const v = [[1, 0, 0], [0, 1, 0], [0, 0, 1]];
  for (let sweep = 0; sweep < 30; sweep++) {
    const off = Math.abs(a[0]![1]!) + Math.abs(a[0]![2]!) + Math.abs(a[1]![2]!);
    // Each sweep squares what is left, so what is below rounding here is nothing after.
    if (off <= Number.EPSILON * (a[0]![0]! + a[1]![1]! + a[2]![2]!)) break;
    for (const [p, q] of [[0, 1], [0, 2], [1, 2]] as const) rotate(a, v, p, q);
  }
  const order = [0, 1, 2].sort((i, j) => a[j]![j]! - a[i]![i]!);
  const column = (i: number): Triple => [v[0]![i]!, v[1]![i]!, v[2]![i]!];
  return {
    sizes: [a[order[0]!]![order[0]!]!, a[order[1]!]![order[1]!]!, a[order[2]!]![order[2]!]!],
    ways: [column(order[0]!), column(order[1]!), column(order[2]!)],
  };
}

/** The ways of moving that the equations do not hold, as unit vectors. */
export function freeWays(rows: readonly Row[]): readonly Triple[] {
  const { sizes, ways } = spreadOf(rows);
  return ways.filter((_, i) => Math.sqrt(Math.max(0, sizes[i]!)) <= FREE_WAY);
}

/** The shortest step that makes the linearised equations as small as can be; `damping` shortens it where they hold weakly. */
export function step(rows: readonly Row[], damping: number): Triple {
  const { sizes, ways } = spreadOf(rows);
  const pull = [0, 1, 2].map((i) => rows.reduce((sum, { value, by }) => sum + value * by[i]!, 0));
  let result: Triple = [0, 0, 0];
  ways.forEach((way, i) => {
    if (Math.sqrt(Math.max(0, sizes[i]!)) <= FREE_WAY) return;
    const along = way[0] * pull[0]! + way[1] * pull[1]! + way[2] * pull[2]!;
    const by = -along / (sizes[i]! + damping);
    result = [result[0] + by * way[0], result[1] + by * way[1], result[2] + by * way[2]];
  });
  return result;
}

function rotate(a: number[][], v: number[][], p: number, q: number): void {
  const apq = a[p]![q]!;
  if (apq === 0) return;
  const theta = (a[q]![q]! - a[p]![p]!) / (2 * apq);
  const t = (theta >= 0 ? 1 : -1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
  const c = 1 / Math.sqrt(t * t + 1);
  const s = t * c;
  for (let k = 0; k < 3; k++) {
    const akp = a[k]![p]!;
    const akq = a[k]![q]!;
    a[k]![p] = c * akp - s * akq;
    a[k]![q] = s * akp + c * akq;
  }
  for (let k = 0; k < 3; k++) {
    const apk = a[p]![k]!;
    const aqk = a[q]![k]!;
    a[p]![k] = c * apk - s * aqk;
    a[q]![k] = s * apk + c * aqk;
    const vkp = v[k]![p]!;
    const vkq = v[k]![q]!;
    v[k]![p] = c * vkp - s * vkq;
    v[k]![q] = s * vkp + c * vkq;
  }
  a[p]![q] = 0;
  a[q]![p] = 0;
}
