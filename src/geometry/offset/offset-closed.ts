// The exact offset of a closed line-arc path: the path of a roller's centre as it goes round outside it or inside it.
// Lines stay lines and arcs stay arcs. The offset is the whole boundary of the places the roller's centre can be, so
// that it may fall into several loops:
//   - inside, one for every chamber the roller fits into (it can be set down there);
//   - outside, one all round, and one more in every pocket whose mouth is narrower than the roller.
//
// A gap exactly as wide as the roller (to rounding slack) lets it pass:
//   - a slot exactly as wide gives its centre line, open, with both sides touched;
//   - where such a slot leads into wider places, these have their own closed loops, and the open line runs from one to
//     the other: no line goes twice over the same place;
//   - a gap of no length, such as two corners just as far apart as the roller is wide, gives two loops that touch;
//   - a place that fits the roller exactly and lets it move nowhere gives no line: it counts as collapsed.
// An inside arc of exactly the roller's radius is touched all at once, from one place: a contact of no length along the
// offset, in the corner it makes there.
//
// Way: raw pieces, cut where they meet, of which those clear of the edge are kept and strung together; after X.-Z. Liu
// et al., "An offset algorithm for polyline curves", Computers in Industry 58 (2007), with every meeting tried and every
// piece measured against the true edge, so that nothing rests on winding numbers.

import { lengthsBefore, pathLength, signedArea } from '../measure.ts';
import { type Path, segmentsOf } from '../path.ts';
import type { Frame } from '../point.ts';
import { arrange } from './arrange.ts';
import { clearanceFrom } from './clearance.ts';
import type { EdgeStretch, OffsetLoop } from './contact.ts';
import { closedLine, longestFirst, openLine } from './lines.ts';
import { missedStretches } from './missed.ts';
import { type Side, rawPieces } from './raw-pieces.ts';
import { trace } from './trace.ts';

export type OffsetOutcome<F extends Frame> =
  /** The lines, longest first, and the stretches of edge that none of them touches. */
  | { readonly kind: 'loops'; readonly loops: readonly OffsetLoop<F>[]; readonly missed: readonly EdgeStretch[] }
  /** There is no place for the roller on that side: all of the edge is missed. */
  | { readonly kind: 'collapsed'; readonly missed: readonly EdgeStretch[] };

/**
 * The offset of a closed path that does not cross itself, at a distance `radius` > 0 in inches, outside it or inside it. Loops run
 * clockwise on the screen whichever way the path runs, and start where they touch it nearest after its start.
 */
export function offsetClosed<F extends Frame>(path: Path<F>, radius: number, where: 'outside' | 'inside'): OffsetOutcome<F> {
  const isClockwise = signedArea(path) >= 0;
  const side: Side = isClockwise === (where === 'inside') ? 1 : -1;
  const pieces = rawPieces(segmentsOf(path), lengthsBefore(path), radius, side);
  const traced = trace(pieces, arrange(pieces, radius, clearanceFrom(path)), side);
  const lines = [
    ...traced.loops.map((loop) => closedLine(pieces, traced.specks, loop)),
    ...traced.openLines.map((line) => openLine(pieces, traced.specks, line)),
  ].filter((line) => line !== undefined);
  const missed = missedStretches(lines, pathLength(path));
  return lines.length === 0 ? { kind: 'collapsed', missed } : { kind: 'loops', loops: longestFirst(lines), missed };
}
