// Corners rounded the way a maker rounds them: by an arc tangent to both sides.
// Maths: the centre of the rounding arc lies where the two sides, each moved towards the inside by its radius, meet; the
// arc touches each side square to that centre.

import { type Path, closedPath, pathOfSegments, segmentsOf } from '../../../geometry/path.ts';
import { type Point, type Vec, angleOf, between, cross, distance, dot, moved, quarterTurned } from '../../../geometry/point.ts';
import { type Arc, type Segment, arcAround, bearingOf, partAt, pointOnSegment, segmentLength, stretchOfSegment, tangentOnSegment } from '../../../geometry/segment.ts';
import { shortestTurn } from '../../../num/angle.ts';
import { type Outcome, ok } from '../../../num/outcome.ts';
import { SAME_POINT, SMOOTH_JOINT } from '../../../num/tolerances.ts';
import type { ShapeProblem } from '../shape.ts';
import { tooGreat } from '../sizes.ts';

type Side = Segment<'template'>;

/** Which corners are rounded, by where they lie. */
type Which = (corner: Point<'template'>) => boolean;

const every: Which = () => true;

/**
 * The closed clockwise path with every outer corner (where it turns clockwise) rounded by so many inches; smooth joints and
 * inside corners stay as they are, and so do corners that `which` does not want rounded. Undefined when an arc of that
 * radius does not fit somewhere.
 */
export function roundCorners(path: Path<'template'>, radius: number, which: Which = every): Path<'template'> | undefined {
  if (radius <= SAME_POINT) return path;
  const sides = segmentsOf(path);
  const from = sides.map(() => 0);
  const to = sides.map(() => 1);
  const roundings = sides.map((side, i): Rounding | undefined | 'does not fit' => {
    const next = (i + 1) % sides.length;
    if (!isOuterCorner(side, sides[next]!) || !which(side.to)) return undefined;
    const rounding = roundingOf(side, sides[next]!, radius);
    if (!rounding) return 'does not fit';
    to[i] = rounding.leaves;
    from[next] = rounding.joins;
    return rounding;
  });
  const pieces: Side[] = [];
  for (const [i, side] of sides.entries()) {
    const rounding = roundings[i];
    const left = (to[i]! - from[i]!) * segmentLength(side);
    if (rounding === 'does not fit' || left < -SAME_POINT || from[i]! < 0 || to[i]! > 1) return undefined;
    if (left > SAME_POINT) pieces.push(stretchOfSegment(side, from[i]!, to[i]!));
    if (rounding) pieces.push(rounding.arc);
  }
  return closedPath(pathOfSegments(pieces, true).vertices);
}

/** The same, or the problem that names the size `corner` and the greatest radius that fits. */
export function withRoundCorners(path: Path<'template'>, radius: number, which: Which = every): Outcome<Path<'template'>, ShapeProblem> {
  const rounded = roundCorners(path, radius, which);
  return rounded ? ok(rounded) : tooGreat('corner', 'corner radius', radius, largestRounding(path, radius, which), 'the other sizes as they are');
}

/** The greatest radius, below one that does not fit, by which all outer corners can be rounded; by halving. */
function largestRounding(path: Path<'template'>, tooLarge: number, which: Which): number {
  let fits = 0;
  let fails = tooLarge;
  while (fails - fits > SAME_POINT) {
    const middle = (fits + fails) / 2;
    if (roundCorners(path, middle, which)) fits = middle;
    else fails = middle;
  }
  return fits;
}

interface Rounding {
  readonly arc: Arc<'template'>;
  /** Part of the side before at which the arc leaves it. */
  readonly leaves: number;
  /** Part of the side after at which the arc joins it. */
  readonly joins: number;
}

function isOuterCorner(before: Side, after: Side): boolean {
  const a = tangentOnSegment(before, 1);
  const b = tangentOnSegment(after, 0);
  return Math.atan2(cross(a, b), dot(a, b)) > SMOOTH_JOINT;
}

function roundingOf(before: Side, after: Side, radius: number): Rounding | undefined {
  const corner = before.to;
  const centres = meetings(movedIn(before, radius), movedIn(after, radius));
  const centre = centres.sort((a, b) => distance(a, corner) - distance(b, corner))[0];
  if (!centre) return undefined;
  const leaves = partAt(bearingOf(before), centre);
  const joins = partAt(bearingOf(after), centre);
  if (leaves < 0 || leaves > 1 || joins < 0 || joins > 1) return undefined;
  const start = angleOf(between(centre, pointOnSegment(before, leaves)));
  const sweep = shortestTurn(angleOf(between(centre, pointOnSegment(after, joins))) - start);
  return sweep > 0 ? { arc: arcAround(centre, radius, start, sweep), leaves, joins } : undefined;
}

/** The whole line or circle a side belongs to, moved to its right (the inside of a clockwise outline). */
type Whole =
  | { readonly kind: 'line'; readonly at: Point<'template'>; readonly way: Vec<'template'> }
  | { readonly kind: 'circle'; readonly centre: Point<'template'>; readonly radius: number };

function movedIn(side: Side, by: number): Whole {
  if (side.kind === 'line') {
    const way = tangentOnSegment(side, 0);
    return { kind: 'line', at: moved(side.from, quarterTurned(way), by), way };
  }
  return { kind: 'circle', centre: side.centre, radius: side.radius - Math.sign(side.sweep) * by };
}

function meetings(a: Whole, b: Whole): Point<'template'>[] {
  if (a.kind === 'line' && b.kind === 'line') {
    const turn = cross(a.way, b.way);
    return turn === 0 ? [] : [moved(a.at, a.way, cross(between(a.at, b.at), b.way) / turn)];
  }
  if (a.kind === 'line') return b.kind === 'line' ? [] : lineAndCircle(a.at, a.way, b.centre, b.radius);
  if (b.kind === 'line') return lineAndCircle(b.at, b.way, a.centre, a.radius);
  // The line through both meetings: square to the line of centres, at `along` from the first centre.
  const apart = distance(a.centre, b.centre);
  if (apart === 0) return [];
  const way: Vec<'template'> = { x: (b.centre.x - a.centre.x) / apart, y: (b.centre.y - a.centre.y) / apart };
  const along = (apart * apart + a.radius * a.radius - b.radius * b.radius) / (2 * apart);
  return lineAndCircle(moved(a.centre, way, along), quarterTurned(way), a.centre, a.radius);
}

function lineAndCircle(at: Point<'template'>, way: Vec<'template'>, centre: Point<'template'>, radius: number): Point<'template'>[] {
  if (radius <= 0) return [];
  const out = between(centre, at);
  const nearest = moved(at, way, -dot(out, way));
  const half = Math.sqrt(radius * radius - cross(way, out) ** 2);
  return Number.isNaN(half) ? [] : [moved(nearest, way, half), moved(nearest, way, -half)];
}
