// How the lengths of a plan are written for its people.

import type { LengthStyle } from '../num/inches.ts';
import type { Plan } from './plan.ts';

const INCHES: LengthStyle = { unit: 'in', smallest: 16 };
const CENTIMETRES: LengthStyle = { unit: 'cm', decimals: 1 };

/** Inches to the nearest sixteenth, or centimetres to the nearest millimetre. */
export function styleOf(plan: Pick<Plan, 'shownIn'>): LengthStyle {
  return plan.shownIn === 'cm' ? CENTIMETRES : INCHES;
}
