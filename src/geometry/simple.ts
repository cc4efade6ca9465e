// Whether a closed path can be an outline: it goes round something once, and nowhere meets itself.

import { type Outcome, fail, ok } from '../num/outcome.ts';
import { SAME_POINT } from '../num/tolerances.ts';
import { grownBounds } from './bounds.ts';
import { reversedPath } from './change.ts';
import { pathLength, signedArea } from './measure.ts';
import { type SegmentMeeting, meetSegments } from './meet-segments.ts';
import { type Path, segmentsOf } from './path.ts';
import type { Frame, Point } from './point.ts';
import { segmentBounds, segmentsIn } from './segment-index.ts';
import { withoutEmptyStretches } from './tidy.ts';

/** What stands in the way of taking a path for an outline, and where. */
export interface SimpleProblem<F extends Frame> {
  readonly kind: 'crosses-itself' | 'degenerate' | 'open';
  readonly at?: Point<F>;
  readonly message: string;
}

const known = new WeakMap<object, Outcome<Path<Frame>, SimpleProblem<Frame>>>();

/**
 * The path as an outline: clockwise on the screen, without empty stretches, starting where it did. Refused when open, when it encloses
 * nothing, or when it crosses, touches or runs along itself; then the first such place along the path is named.
 */
export function checkSimple<F extends Frame>(path: Path<F>): Outcome<Path<F>, SimpleProblem<F>> {
  const before = known.get(path) as Outcome<Path<F>, SimpleProblem<F>> | undefined;
  if (before) return before;
  const outcome = checked(path);
  known.set(path, outcome as unknown as Outcome<Path<Frame>, SimpleProblem<Frame>>);
  return outcome;
}

function checked<F extends Frame>(path: Path<F>): Outcome<Path<F>, SimpleProblem<F>> {
  const first = path.vertices[0];
  const start: { at?: Point<F> } = first ? { at: { x: first.x, y: first.y } } : {};
  if (!path.closed) return fail({ kind: 'open', ...start, message: 'the outline is not closed' });
  if (path.vertices.some((v) => !Number.isFinite(v.x) || !Number.isFinite(v.y) || !Number.isFinite(v.bulge))) {
    return fail({ kind: 'degenerate', message: 'the outline has a vertex that is not a place' });
  }
  const clean = withoutEmptyStretches(path);
  if (clean.vertices.length < 2) return fail({ kind: 'degenerate', ...start, message: 'the outline has no extent' });
  const area = signedArea(clean);
  // Thinner all along than rounding slack. A path of many stretches may also enclose as much one way round as the other: that is a crossing.
  const isThin = Math.abs(area) <= SAME_POINT * pathLength(clean);
  const clash = isThin && clean.vertices.length === 2 ? undefined : firstClash(clean);
  if (clash) return fail(clash);
  if (isThin) return fail({ kind: 'degenerate', ...start, message: 'the outline encloses no area' });
  return ok(area > 0 ? clean : reversedPath(clean));
}

/** The first place along the path where it meets itself other than from one stretch to the next. */
function firstClash<F extends Frame>(path: Path<F>): SimpleProblem<F> | undefined {
  const segments = segmentsOf(path);
  const bounds = segmentBounds(path);
  const count = segments.length;
  for (let i = 0; i < count; i++) {
    for (const j of segmentsIn(path, grownBounds(bounds[i]!, SAME_POINT))) {
      if (j <= i) continue;
      for (const meeting of meetSegments(segments[i]!, segments[j]!)) {
        if (j === i + 1 && isJoint(meeting, 1, 0)) continue;
        if (i === 0 && j === count - 1 && isJoint(meeting, 0, 1)) continue;
        return clashAt(meeting);
      }
    }
  }
  return undefined;
}

function isJoint<F extends Frame>(m: SegmentMeeting<F>, partA: number, partB: number): boolean {
  return m.kind === 'touching' && m.partA === partA && m.partB === partB;
}

function clashAt<F extends Frame>(m: SegmentMeeting<F>): SimpleProblem<F> {
  const at = m.kind === 'overlap' ? m.from : m.at;
  const how = m.kind === 'overlap' ? 'runs along itself' : m.kind === 'touching' ? 'touches itself' : 'crosses itself';
  return { kind: 'crosses-itself', at, message: `the outline ${how} at ${shown(at.x)}, ${shown(at.y)} in` };
}

function shown(inches: number): string {
  return String(Number(inches.toFixed(4)));
}
