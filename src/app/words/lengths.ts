// Lengths on the screen, in the unit the plan is shown in.

import { styleOf } from '../../model/length-style.ts';
import { CM_PER_INCH, type LengthStyle, writeFineLength, writeLength } from '../../num/inches.ts';
import { useSession } from '../use-session.ts';

export type WriteLength = (inches: number) => string;

/** Writes a length (in inches) with its unit: "3 3/16 in" or "8.1 cm". */
export function useLengths(): WriteLength {
  const shownIn = useSession((state) => state.evaluation.plan.shownIn);
  return (inches) => writeLength(inches, styleOf({ shownIn }));
}

/** For a field to be typed in: fractions where the length is one, otherwise decimals fine enough to say what was typed. */
export function exactStyle(inches: number, unit: 'in' | 'cm'): LengthStyle {
  if (unit === 'cm') return { unit, decimals: 3 };
  return Number.isInteger(inches * 32) ? { unit, smallest: 32 } : { unit, decimals: 4 };
}

const INCHES_PER_YARD = 36;
const CM_PER_METRE = 100;

/** Writes a long length of stitching, in yards or metres once it is several of them. */
export function useLongLengths(): WriteLength {
  const unit = useSession((state) => state.evaluation.plan.shownIn);
  const short = useLengths();
  return (inches) => {
    if (inches < 10 * INCHES_PER_YARD) return short(inches);
    return unit === 'cm' ? `${Math.round((inches * CM_PER_INCH) / CM_PER_METRE)} m` : `${Math.round(inches / INCHES_PER_YARD)} yd`;
  };
}

/** Writes a length finer than a sixteenth where it is: of feet, thicknesses and what they do to a line. */
export function useFineLengths(): WriteLength {
  const unit = useSession((state) => state.evaluation.plan.shownIn);
  return (inches) => writeFineLength(inches, unit);
}
