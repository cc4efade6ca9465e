// How far inside a straight seam a path stays.
// Maths: with t along the seam and h inward from it, the least h of a line is at one of its ends or where it passes an end
// of the seam; of an arc also at the end of the radius that points outward.

import { type Path, segmentsOf } from './path.ts';
import { type Frame, type Point, type Vec, between, dot, moved, partWay, quarterTurned, size, unit } from './point.ts';
import { type Arc, type Line, partOfAngle } from './segment.ts';
import { SAME_POINT } from '../num/tolerances.ts';

export interface Inward<F extends Frame> {
  /** Inches from the seam towards the inside; less than 0 beyond the seam. */
  readonly distance: number;
  readonly at: Point<F>;
}

/**
 * The least distance inward from a seam of that part of a path which lies beside it: between the lines that stand square on
 * the seam's ends. The inside lies to the right of the seam as it runs. Undefined when no part does.
 */
export function leastInward<F extends Frame>(path: Path<F>, from: Point<F>, to: Point<F>): Inward<F> | undefined {
  const along = unit(between(from, to));
  const inward = quarterTurned(along);
  const length = size(between(from, to));
  const rule: Rule<F> = { along, from, to };
  let best: Inward<F> | undefined;
  for (const s of segmentsOf(path)) {
    const places = s.kind === 'line' ? [s.from, s.to, ...onLine(s, rule)] : [s.from, s.to, ...onArc(s, rule, inward)];
    for (const at of places) {
      const t = dot(between(from, at), along);
      if (t < -SAME_POINT || t > length + SAME_POINT) continue;
      const distance = dot(between(from, at), inward);
      if (!best || distance < best.distance) best = { distance, at };
    }
  }
  return best;
}

interface Rule<F extends Frame> {
  readonly along: Vec<F>;
  readonly from: Point<F>;
  readonly to: Point<F>;
}

/** Where a line passes the ends of the seam. */
function onLine<F extends Frame>(s: Line<F>, { along, from, to }: Rule<F>): readonly Point<F>[] {
  const run = dot(between(s.from, s.to), along);
  if (run === 0) return [];
  return [from, to].flatMap((end) => {
    const part = dot(between(s.from, end), along) / run;
    return part > 0 && part < 1 ? [partWay(s.from, s.to, part)] : [];
  });
}

/** Where an arc passes the ends of the seam, and where it is farthest out. */
function onArc<F extends Frame>(s: Arc<F>, { along, from, to }: Rule<F>, inward: Vec<F>): readonly Point<F>[] {
  const places = [moved(s.centre, inward, -s.radius)];
  for (const end of [from, to]) {
    const aside = dot(between(s.centre, end), along);
    const rest = s.radius * s.radius - aside * aside;
    if (rest < 0) continue;
    const foot = moved(s.centre, along, aside);
    places.push(moved(foot, inward, Math.sqrt(rest)), moved(foot, inward, -Math.sqrt(rest)));
  }
  return places.filter((p) => partOfAngle(s, Math.atan2(p.y - s.centre.y, p.x - s.centre.x)) <= 1);
}
