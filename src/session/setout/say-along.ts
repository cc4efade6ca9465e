// What is said of a way to follow a line: how much of it, with what, how near, and what is left.

import type { Kit } from '../../model/plan.ts';
import { type LengthStyle, writeFineLength, writeLength } from '../../num/inches.ts';
import { SAME_POINT } from '../../num/tolerances.ts';
import type { Following } from '../../place/follow/following.ts';

export interface LaidAlong {
  /** Its id in the kit. */
  readonly template: string;
  readonly following: Following<'area'>;
}

/** Placements along a line, one after the other. */
export interface Along {
  readonly laid: readonly LaidAlong[];
  /** Stretches that nothing follows, in inches along the line. */
  readonly missed: readonly { readonly from: number; readonly to: number }[];
  /** The same template laid once along all of it, where that is too far off. */
  readonly onceAlongAll?: Following<'area'>;
}

/** So little of a line left out is not told in per cent. */
const PART_SEEN = 0.005;

/** "Arc 5, all of the line in one placement". `part` is how much of the line is followed, 0 to 1. */
export function titleAlong({ laid }: Along, part: number, { templates }: Kit): string {
  const names = [...new Set(laid.map(({ template }) => templates[template]?.name ?? template))];
  const with_ = names.length === 1 ? names[0]! : `${names.slice(0, -1).join(', ')} and ${names.at(-1)!}`;
  const times = laid.length === 1 ? 'one placement' : `${laid.length} placements`;
  return part > 1 - PART_SEEN ? `${with_}, all of the line in ${times}` : `${with_}, ${Math.round(100 * part)} % of the line in ${times}`;
}

/** How near it comes to the distance (0 for the line itself), what it could still do, and what is left to sew by hand. */
export function sayAlong(way: Along, distance: number, style: LengthStyle): readonly string[] {
  const from = distance === 0 ? 'the line' : `${writeLength(distance, style)} from the line`;
  return [sayStraying(greatestStray(way), distance === 0, from, style), sayOnce(way, distance === 0, style), way.laid.length === 1 ? sayFreedom(way.laid[0]!.following) : '', sayMissed(way, style)].filter(Boolean);
}

/** Why nothing is offered. */
export function sayNothingFollows(tolerance: number, style: LengthStyle): string {
  return `None of your templates follows it within ${writeFineLength(tolerance, style.unit)}, not even for ${writeLength(1 / 2, style)}. Ask for less nearness or another distance, or add a template with such a curve in Kit.`;
}

/** The farthest that any of the placements strays, in inches. */
export function greatestStray({ laid }: Along): number {
  return Math.max(...laid.map(({ following: { deviation } }) => deviation.greatest));
}

function sayStraying(most: number, isLine: boolean, from: string, style: LengthStyle): string {
  if (most <= SAME_POINT) return isLine ? 'It follows the line exactly.' : `It keeps exactly ${from}.`;
  return isLine ? `It keeps to the line within ${writeFineLength(most, style.unit)}.` : `It keeps ${from}, to within ${writeFineLength(most, style.unit)}.`;
}

function sayOnce({ onceAlongAll }: Along, isLine: boolean, style: LengthStyle): string {
  return onceAlongAll ? `Laid once along all of it, it would be ${writeFineLength(onceAlongAll.deviation.greatest, style.unit)} ${isLine ? 'off' : 'off that distance'}.` : '';
}

function sayFreedom({ freedom }: Following<'area'>): string {
  switch (freedom.kind) {
    case 'none':
      return '';
    case 'turn':
      return 'Its edge is round there: it may be turned, and sews the same.';
    case 'slide':
      return 'Its edge is straight there: it may be slid along, and sews the same.';
  }
}

function sayMissed({ missed }: Along, style: LengthStyle): string {
  if (missed.length === 0) return '';
  const inches = missed.reduce((sum, { from, to }) => sum + to - from, 0);
  return `${writeLength(inches, style)} of it is left to sew by hand, in ${missed.length === 1 ? 'one place' : `${missed.length} places`}.`;
}
