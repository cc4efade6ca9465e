// The lines a placement can be told by: the reference lines of its area or, when the sheet repeats along the area, those
// of one division of it.

import { straight } from '../geometry/path.ts';
import { segmentsOf } from '../geometry/path.ts';
import { SAME_POINT } from '../num/tolerances.ts';
import type { RepeatStep, Side } from '../model/plan.ts';
import type { Area, ReferenceLine } from '../top/area.ts';

/** The count of a repeat along an area, or undefined when the repeat does not run along it or gives its side no count. */
export function countAlong(steps: readonly RepeatStep[], side: Side | undefined): number | undefined {
  for (const step of steps) {
    if (!('along' in step)) continue;
    if (typeof step.count === 'number') return step.count;
    return side === undefined ? undefined : step.count[side];
  }
  return undefined;
}

/** True when some step repeats along the length of the area. */
export function runsAlong(steps: readonly RepeatStep[]): boolean {
  return steps.some((step) => 'along' in step);
}

/**
 * The lines that placements, passes and mirrors may name, in the frame the placement is laid in. With a count, that is
 * one division: its two division lines, its centre, and those lines of the area that run along it.
 */
export function unitLines(area: Area, count: number | undefined): readonly ReferenceLine[] {
  if (count === undefined) return area.referenceLines;
  const half = area.width / count / 2;
  const lengthwise = area.referenceLines.filter(runsLengthwise);
  return [
    upright(area, 'division-start', 'division', 'first division line', -half),
    upright(area, 'vertical-centre', 'centre', 'middle of the division', 0),
    upright(area, 'division-end', 'division', 'next division line', half),
    ...lengthwise,
  ];
}

/** The lines that divide an area evenly, `division-1` to the last but one, from left to right in its own axes. */
export function divisionLines(area: Area, count: number): readonly ReferenceLine[] {
  return Array.from({ length: Math.max(0, count - 1) }, (_, i) =>
    upright(area, `division-${i + 1}`, 'division', `division line ${i + 1}`, ((i + 1) * area.width) / count - area.width / 2),
  );
}

function upright(area: Area, id: string, kind: ReferenceLine['kind'], name: string, x: number): ReferenceLine {
  return { id, kind, name, path: straight({ x, y: -area.height / 2 }, { x, y: area.height / 2 }) };
}

function runsLengthwise(line: ReferenceLine): boolean {
  const segments = segmentsOf(line.path);
  const only = segments[0];
  return segments.length === 1 && only?.kind === 'line' && Math.abs(only.from.y - only.to.y) < SAME_POINT;
}
