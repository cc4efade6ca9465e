// Outlines put together from arcs and corners, the way a pen goes round them.

import { type Path, type Vertex, closedPath, openPath, pathOfSegments, segmentsOf } from '../../../geometry/path.ts';
import { type Point, distance, point } from '../../../geometry/point.ts';
import { type Arc, type Segment, arcAround, lineFrom, segmentLength, stretchOfSegment } from '../../../geometry/segment.ts';
import { fromDegrees, normalised } from '../../../num/angle.ts';
import { SAME_NUMBER, SAME_POINT } from '../../../num/tolerances.ts';

/** A corner, an arc, or an open path such as a fitted curve. */
type Piece = Point<'template'> | Arc<'template'> | Path<'template'>;

/**
 * The closed path through corners, along arcs and along open paths in the order given, straight from one to the next and
 * back to the first.
 * Arcs of more than a half turn are cut in equal parts; pieces of no length are left out.
 */
export function trace(...pieces: readonly Piece[]): Path<'template'> {
  const first = pieces[0] && stretchesOf(pieces[0])[0]?.from;
  return first ? closedPath(verticesThrough([...pieces, first]).slice(0, -1)) : closedPath([]);
}

/** The open path through corners, along arcs and along open paths, in the same way. */
export function traceOpen(...pieces: readonly Piece[]): Path<'template'> {
  return openPath(verticesThrough(pieces));
}

function verticesThrough(pieces: readonly Piece[]): readonly Vertex[] {
  const stretches: Segment<'template'>[] = [];
  let at: Point<'template'> | undefined;
  for (const stretch of pieces.flatMap(stretchesOf)) {
    if (at && distance(at, stretch.from) > SAME_POINT) stretches.push(lineFrom(at, stretch.from));
    if (segmentLength(stretch) > SAME_POINT) stretches.push(stretch);
    at = stretch.to;
  }
  // Rounding may take the bulge of a half turn a hair over 1.
  return pathOfSegments(stretches, false).vertices.map((v) => ({ ...v, bulge: Math.max(-1, Math.min(1, v.bulge)) }));
}

/** What a piece is made of; a corner is a line of no length. */
function stretchesOf(piece: Piece): readonly Segment<'template'>[] {
  if ('vertices' in piece) return segmentsOf(piece);
  return 'kind' in piece ? inHalfTurns(piece) : [lineFrom(piece, piece)];
}

/** The arc round a centre from one place in degrees (clockwise from x) through so many degrees, clockwise when positive. */
export function arc(centreX: number, centreY: number, radius: number, startDegrees: number, sweepDegrees: number): Arc<'template'> {
  return arcAround(point(centreX, centreY), radius, fromDegrees(startDegrees), fromDegrees(sweepDegrees));
}

/** The arc round a centre from one angle to another in radians (clockwise from x), run clockwise or counterclockwise. */
export function arcBetween(centre: Point<'template'>, radius: number, from: number, to: number, way: 'clockwise' | 'counterclockwise'): Arc<'template'> {
  return arcAround(centre, radius, from, way === 'clockwise' ? normalised(to - from) : -normalised(from - to));
}

/** The direction from one point towards another, in radians clockwise from x. */
export function towards(from: Point<'template'>, to: Point<'template'>): number {
  return Math.atan2(to.y - from.y, to.x - from.x);
}

function inHalfTurns(piece: Arc<'template'>): readonly Segment<'template'>[] {
  const parts = Math.ceil(Math.abs(piece.sweep) / Math.PI - SAME_NUMBER);
  if (parts <= 1) return [piece];
  return Array.from({ length: parts }, (_, i) => stretchOfSegment(piece, i / parts, (i + 1) / parts));
}
