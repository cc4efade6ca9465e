// Do the ends still meet? Two stretches that meet on a line, each laid for itself: how far apart their ends may come to lie on it.
// Maths: a stretch that strays by d square to itself is met by a line at the angle q a distance d / sin q farther along. The marks of
// two layings err apart from each other, the foot is the same foot for both.

import { SHALLOW_MEETING } from '../../num/tolerances.ts';
import { type Vec, dot } from '../../geometry/point.ts';
import type { Stray } from './wander.ts';

/**
 * How far apart two ends may come to lie along the line on which both stop (a unit vector), or square to the first of them where they
 * stop on none; 95 % half-width in inches.
 */
export function gapOfEnds(a: Stray, b: Stray, line: Vec<'area'> | undefined): number {
  const way = line && Math.min(Math.abs(dot(line, a.away)), Math.abs(dot(line, b.away))) > SHALLOW_MEETING ? line : a.away;
  const slopeA = dot(way, a.away);
  const slopeB = dot(way, b.away);
  if (Math.abs(slopeB) <= SHALLOW_MEETING) return Math.hypot(a.byMarks, b.byMarks, a.byFoot);
  return Math.hypot(a.byMarks / slopeA, b.byMarks / slopeB, a.byFoot / slopeA - b.byFoot / slopeB);
}
