// The tips of a template: the places of its outline that stand out, which hands put on lines and crossings.

import { shortestTurn } from '../num/angle.ts';
import { TIP_TURN, TIP_RADIUS } from '../num/tolerances.ts';
import { lengthsBefore } from '../geometry/measure.ts';
import { type Path, segmentsOf } from '../geometry/path.ts';
import { type Point, angleOf } from '../geometry/point.ts';
import { pointOnSegment, tangentOnSegment } from '../geometry/segment.ts';

export interface Tip {
  /** `tip:1`, numbered along the outline from its start. */
  readonly id: string;
  readonly at: Point<'template'>;
  /** Inches along the outline. */
  readonly along: number;
}

const tipsOfOutline = new WeakMap<object, readonly Tip[]>();

/**
 * The tips of a closed outline that runs clockwise: corners that turn outward by at least TIP_TURN, and the middles of
 * roundings no larger than TIP_RADIUS that do.
 */
export function tipsOf(outline: Path<'template'>): readonly Tip[] {
  const known = tipsOfOutline.get(outline);
  if (known) return known;
  const segments = segmentsOf(outline);
  const lengths = lengthsBefore(outline);
  const found: { at: Point<'template'>; along: number }[] = [];
  segments.forEach((s, i) => {
    const before = segments[(i + segments.length - 1) % segments.length]!;
    const turn = shortestTurn(angleOf(tangentOnSegment(s, 0)) - angleOf(tangentOnSegment(before, 1)));
    if (turn >= TIP_TURN) found.push({ at: s.from, along: lengths[i]! });
    if (s.kind === 'arc' && s.sweep >= TIP_TURN && s.radius <= TIP_RADIUS) {
      found.push({ at: pointOnSegment(s, 0.5), along: (lengths[i]! + lengths[i + 1]!) / 2 });
    }
  });
  const tips = found.map((tip, i) => ({ ...tip, id: `tip:${i + 1}` }));
  tipsOfOutline.set(outline, tips);
  return tips;
}
