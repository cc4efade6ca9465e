// Corners of a needle line inside a stretch that is sewn: where the foot could not follow the edge, and stops to turn.

import { segmentsOf } from '../../geometry/path.ts';
import { lengthsBefore } from '../../geometry/measure.ts';
import { cross, dot } from '../../geometry/point.ts';
import { tangentOnSegment } from '../../geometry/segment.ts';
import { SAME_POINT } from '../../num/tolerances.ts';
import type { Chord } from './chord.ts';
import { type NeedleCurve, runFrom } from './needle-curve.ts';

interface Corner {
  readonly along: number;
  /** Radians. */
  readonly turn: number;
}

const known = new WeakMap<NeedleCurve, readonly Corner[]>();

/** How many corners sharper than so many radians lie strictly inside the chord's stretch. */
export function cornersOf(curve: NeedleCurve, chord: Chord, sharper: number): number {
  const all = known.get(curve) ?? cornersAlong(curve);
  known.set(curve, all);
  return all.filter(({ along, turn }) => {
    const run = runFrom(curve, chord.start.along, along);
    return turn > sharper && run !== undefined && run > SAME_POINT && run < chord.run - SAME_POINT;
  }).length;
}

function cornersAlong({ path, closed }: NeedleCurve): readonly Corner[] {
  const segments = segmentsOf(path);
  const lengths = lengthsBefore(path);
  return segments.flatMap((s, i) => {
    const before = segments[i > 0 ? i - 1 : segments.length - 1];
    if (!before || (i === 0 && !closed)) return [];
    const a = tangentOnSegment(before, 1);
    const b = tangentOnSegment(s, 0);
    return [{ along: lengths[i]!, turn: Math.abs(Math.atan2(cross(a, b), dot(a, b))) }];
  });
}
