// What of an edge an offset does not touch.

import { TOUCHED } from '../../num/tolerances.ts';
import type { Frame } from '../point.ts';
import type { EdgeStretch, OffsetLoop, Touch } from './contact.ts';

/**
 * The stretches of an edge of some length (inches) that no contact of the lines covers, in order along it, merged over its joints and
 * over its start. What is not longer than rounding leaves is not reported.
 */
export function missedStretches<F extends Frame>(lines: readonly OffsetLoop<F>[], edgeLength: number): readonly EdgeStretch[] {
  const touched = touchedStretches(lines);
  const first = touched[0];
  if (!first) return [{ start: 0, end: edgeLength, length: edgeLength }];
  const missed: EdgeStretch[] = [];
  let reached = first.end;
  for (const { start, end } of touched) {
    if (start - reached > TOUCHED) missed.push({ start: reached, end: start, length: start - reached });
    reached = Math.max(reached, end);
  }
  const over = edgeLength - reached + first.start;
  if (over <= TOUCHED) return missed;
  const round: EdgeStretch = { start: edgeLength - reached > 0 ? reached : 0, end: first.start > 0 ? first.start : edgeLength, length: over };
  return round.start < round.end && round.start === 0 ? [round, ...missed] : [...missed, round];
}

/** Covered stretches, start before end, in order along the edge. */
function touchedStretches<F extends Frame>(lines: readonly OffsetLoop<F>[]): readonly { readonly start: number; readonly end: number }[] {
  const touched: { readonly start: number; readonly end: number }[] = [];
  const add = ({ edgeStart, edgeEnd }: Touch) => {
    if (edgeStart < edgeEnd) touched.push({ start: edgeStart, end: edgeEnd });
    else if (edgeEnd < edgeStart) touched.push({ start: edgeEnd, end: edgeStart });
  };
  for (const line of lines) {
    for (const contact of line.contacts) {
      add(contact);
      if (contact.opposite) add(contact.opposite);
    }
  }
  return touched.sort((a, b) => a.start - b.start);
}
