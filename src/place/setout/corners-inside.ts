// Corners of a needle line inside a stretch that is sewn: where the foot could not follow the edge, and stops to turn; and roundings so tight
// that they look like corners.

import { segmentsOf } from '../../geometry/path.ts';
import { lengthsBefore } from '../../geometry/measure.ts';
import { cross, dot } from '../../geometry/point.ts';
import { tangentOnSegment } from '../../geometry/segment.ts';
import { SAME_POINT, TIGHT_TURN, TIP_TURN } from '../../num/tolerances.ts';
import type { Chord } from './chord.ts';
import { type NeedleCurve, runFrom } from './needle-curve.ts';

/** How many tight roundings lie wholly or in part inside the chord's stretch: of one that is only begun, the mirror image goes on with it. */
export function roundingsOf(curve: NeedleCurve, chord: Chord): number {
  const all = roundingsKnown.get(curve) ?? roundingsAlong(curve);
  roundingsKnown.set(curve, all);
  return all.filter(({ from, length }) => {
    const begins = from - chord.start.along;
    // A closed line comes round again to a rounding in which the stretch starts, or before it.
    return (curve.closed ? [begins - curve.length, begins, begins + curve.length] : [begins]).some((at) => Math.min(chord.run, at + length) - Math.max(0, at) > SAME_POINT);
  }).length;
}

/** An arc of the needle line that is seen as a rounded corner. */
interface Rounding {
  readonly from: number;
  readonly length: number;
}

const roundingsKnown = new WeakMap<NeedleCurve, readonly Rounding[]>();

function roundingsAlong({ path }: NeedleCurve): readonly Rounding[] {
  const lengths = lengthsBefore(path);
  return segmentsOf(path).flatMap((s, i) => (s.kind === 'arc' && s.radius <= TIGHT_TURN && Math.abs(s.sweep) >= TIP_TURN ? [{ from: lengths[i]!, length: lengths[i + 1]! - lengths[i]! }] : []));
}

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
