// How forgiving a set-out is: what a border that comes out a little longer does to the crest.
//
// Maths, derived here. Run on at either end by the same length l, a chord whose line leaves it at the angle a and arrives at b grows by
// l (cos a + cos b), and at the part t along it the line's height over it grows by l ((1 - t) sin(-a) + t sin b). For a symmetric unit
// that is tan(-a) / 2 for each inch, on a circle s / (4 sqrt(R^2 - s^2 / 4)). To a crest, whose own end is held, half the spacing grows by l cos a and the
// height by l sin(-a): the same again. A rise is told with its chord.

import { SAME_NUMBER } from '../../num/tolerances.ts';
import { segmentsOf } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { partOfAngle, pointOnSegment } from '../../geometry/segment.ts';
import type { Chord } from './chord.ts';
import type { NeedleCurve } from './needle-curve.ts';
import type { Forgiveness, Found } from './result.ts';
import { type Unit, unitPath } from './unit.ts';

/** How much the crest moves with the spacing, and with a sixteenth of an inch in the whole side. */
export function forgivenessOf(curve: NeedleCurve, chord: Chord, found: Found, unit: Unit, count: number): Forgiveness {
  const per = perSpacing(curve, chord, found, unit);
  return { heightPerSpacing: per, heightPerSixteenth: Math.abs(per) / 16 / count };
}

function perSpacing(curve: NeedleCurve, chord: Chord, found: Found, unit: Unit): number {
  const a = unit.start.angle;
  const b = unit.stop.angle;
  switch (found) {
    case 'rise':
      return chord.grows ?? 0;
    case 'crest':
    case 'only-crest':
    case 'nearest-crest': {
      // Positive where the line climbs from its foot towards the crest; one that first goes the other way loses height.
      const [crest, foot, angle] = Math.abs(unit.start.at.x) < Math.abs(unit.stop.at.x) ? [unit.start, unit.stop, b] : [unit.stop, unit.start, -a];
      const side = crest.at.y < foot.at.y ? 1 : -1;
      return side * quotient(Math.sin(angle), 2 * Math.abs(Math.cos(angle)));
    }
    case 'symmetric': {
      const side = unit.start.at.y - unit.extents.minY >= unit.extents.maxY - unit.start.at.y ? 1 : -1;
      return side * quotient(Math.sin(-a), 2 * Math.abs(Math.cos(a)));
    }
    case 'parallel': {
      const crest = farthest(curve, unit);
      const t = (crest.x - unit.start.at.x) / (unit.stop.at.x - unit.start.at.x);
      const side = crest.y < unit.start.at.y ? 1 : -1;
      return side * quotient((1 - t) * Math.sin(-a) + t * Math.sin(b), Math.cos(a) + Math.cos(b));
    }
  }
}

/** The place of the unit's line that lies farthest from the line on which it starts. */
function farthest(curve: NeedleCurve, unit: Unit): Point<'area'> {
  const level = unit.start.at.y;
  let best: Point<'area'> = unit.start.at;
  for (const s of segmentsOf(unitPath(curve, unit))) {
    const tops = s.kind === 'arc' ? [-Math.PI / 2, Math.PI / 2].map((angle) => partOfAngle(s, angle)).filter((part) => part <= 1) : [];
    for (const part of [0, 1, ...tops]) {
      const p: Point<'area'> = pointOnSegment(s, part);
      if (Math.abs(p.y - level) > Math.abs(best.y - level)) best = p;
    }
  }
  return best;
}

function quotient(sine: number, cosine: number): number {
  if (Math.abs(cosine) > SAME_NUMBER) return sine / cosine;
  return Math.abs(sine) <= SAME_NUMBER ? 0 : Infinity;
}
