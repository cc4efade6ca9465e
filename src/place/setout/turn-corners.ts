// How a border that is set out along its sides turns its corners, and which ways fit.
//
// The mitre runs from the inner corner to the outer one. On a line at the height b outward from the centre line it lies W / 2 + b beyond the
// side's end. Mirrored on it, the pattern needs a whole number of divisions up to there, or a whole number and a half when a crest is to stand on it.

import { EYE, SAME_ANGLE } from '../../num/tolerances.ts';
import { shortestTurn } from '../../num/angle.ts';
import { alternates, unitRuns } from './pattern.ts';
import type { SetOutResult } from './result.ts';
import type { BorderSide } from './wish.ts';

export type CornerTurn =
  | {
      /** The pattern goes on into the corner and is mirrored on the mitre. */
      readonly how: 'division-on-mitre' | 'crest-on-mitre';
      readonly fits: boolean;
      readonly why: 'fits' | 'off' | 'not-alike' | 'out-of-phase';
      /** Divisions from the side's end to the mitre, the nearest that could be. */
      readonly divisions: number;
      /** How far the mitre lies from there, in inches; less than 0 when it comes sooner. */
      readonly off: number;
      /** Divided from mitre to mitre instead, it would come out even with this count and spacing. */
      readonly fromMitreToMitre: { readonly length: number; readonly count: number; readonly spacing: number };
      /** Radians by which the line turns on the mitre. */
      readonly kink: number;
    }
  | {
      /** The sides end at the corner, and it has a motif of its own. */
      readonly how: 'corner-motif';
      readonly fits: boolean;
      readonly why: 'fits' | 'out-of-phase';
      /** Side of the square that the clearances leave. */
      readonly room: number;
      /** Radius of the quarter circle about the inner corner that would join the lines of both sides. */
      readonly radius: number;
    };

/** The ways to turn a corner between two sides set out alike. */
export function turnCorners(result: SetOutResult, side: BorderSide): readonly CornerTurn[] {
  const phased = alternates(result.pattern);
  // Mirrored, a side must end as it began; going on round the corner, it must end as the next begins.
  const mirrors = !phased || result.count % 2 === 1;
  const goesOn = !phased || result.count % 2 === 0;
  return [
    onMitre('division-on-mitre', result, side, mirrors),
    onMitre('crest-on-mitre', result, side, mirrors),
    {
      how: 'corner-motif',
      fits: goesOn,
      why: goesOn ? 'fits' : 'out-of-phase',
      room: side.width - side.outerClearance - side.innerClearance,
      radius: side.width / 2 + result.base,
    },
  ];
}

function onMitre(how: 'division-on-mitre' | 'crest-on-mitre', result: SetOutResult, side: BorderSide, inPhase: boolean): CornerTurn {
  const { spacing, unit } = result;
  const reach = side.width / 2 + result.base;
  const half = how === 'crest-on-mitre' ? 0.5 : 0;
  const divisions = Math.max(0, Math.round(reach / spacing - half)) + half;
  const off = reach - divisions * spacing;
  const length = side.length + 2 * reach;
  const count = Math.max(1, Math.round(length / spacing));
  const even = evenAboutItsMiddle(result);
  const alike = half === 0 || even;
  // Arriving at the angle a, the line leaves the mitre at a right angle less a.
  const angle = half > 0 ? 0 : unit.stop.angle;
  return {
    how,
    fits: Math.abs(off) <= EYE && alike && inPhase,
    why: !alike ? 'not-alike' : Math.abs(off) > EYE ? 'off' : inPhase ? 'fits' : 'out-of-phase',
    divisions,
    off,
    fromMitreToMitre: { length, count, spacing: length / count },
    kink: Math.abs(shortestTurn(Math.PI / 2 - 2 * angle)),
  };
}

/** Whether half a division, mirrored, is the whole of it. */
function evenAboutItsMiddle({ pattern, unit, found }: SetOutResult): boolean {
  return unitRuns(pattern) === 'to-crest' || (found === 'symmetric' && Math.abs(unit.start.angle + unit.stop.angle) <= SAME_ANGLE * 1e3);
}
