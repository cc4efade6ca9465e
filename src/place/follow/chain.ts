// A line followed by one placement after another, each going on where the one before stopped, in as few as were found.
// Way: from the start of the line the placement that reaches farthest, and again from there. Because whatever follows a stretch follows every part of it, no
// other way needs fewer, but for what the joins ask: at a join both needle lines keep to the wanted line, so that their ends meet.

import { carryPath } from '../../geometry/change.ts';
import { meetPaths } from '../../geometry/meet-paths.ts';
import { pointAlong } from '../../geometry/measure.ts';
import { type Frame, type Point, type Vec, distance } from '../../geometry/point.ts';
import type { NeedleLines } from '../../needle/needle-line.ts';
import { EYE, JOIN, TAKE_OVER } from '../../num/tolerances.ts';
import { type Following, type PassEnds, followingOf, footOfWanted, poseOfSeat } from './following.ts';
import { apartFor, extent, finest, lengthened, within } from './longest.ts';
import { firstThatFollow, look } from './look.ts';
import type { EndsOf, Rail, Seating } from './seating.ts';
import type { WantedLine } from './wanted-line.ts';

export interface Chain<F extends Frame> {
  readonly placements: readonly Following<F>[];
  /** How far apart the ends are from each placement to the next, in inches; infinite where a stretch between them is missed. */
  readonly gaps: readonly number[];
  /** Stretches that nothing follows, in inches along the line. */
  readonly missed: readonly { readonly from: number; readonly to: number }[];
  /** The greatest deviation of any, in inches. */
  readonly greatest: number;
}

export interface ChainOptions<F extends Frame> {
  readonly tolerance: number;
  readonly needleOffset: Vec<F>;
  readonly least: number;
  /** No more placements than this; what is left is missed. */
  readonly most?: number;
}

const MOST_PLACEMENTS = 24;

/** The chain along the best of the lines (the sides of one line): the least missed, then the fewest placements, then the least deviation. */
export function chainAlong<F extends Frame>(lines: readonly WantedLine<F>[], rails: readonly Rail[], needles: readonly NeedleLines[], options: ChainOptions<F>): Chain<F> | undefined {
  const chains = lines.map((line) => toldChain(line, linksOf(line, rails, options), needles, options)).filter(({ placements }) => placements.length > 0);
  const lost = ({ missed }: Chain<F>) => missed.reduce((sum, { from, to }) => sum + to - from, 0);
  return chains.sort((a, b) => lost(a) - lost(b) || a.placements.length - b.placements.length || a.greatest - b.greatest)[0];
}

function linksOf<F extends Frame>(line: WantedLine<F>, rails: readonly Rail[], { tolerance, least, most = MOST_PLACEMENTS }: ChainOptions<F>): readonly Seating<F>[] {
  const held = Math.max(1, tolerance / TAKE_OVER);
  const links: Seating<F>[] = [];
  const shortest = Math.max(2, Math.ceil(least / line.step));
  for (let at = 0; at < line.steps && links.length < most; ) {
    while (at < line.steps && line.shadowed[at]) at++;
    const before = links[links.length - 1];
    const isJoined = before !== undefined && line.run[before.stretch.to] === line.run[at];
    const ends: EndsOf = ({ to }) => ({ first: isJoined || line.path.closed ? held : 1, last: to < line.steps || line.path.closed ? held : 1 });
    const link = farthest(line, rails, at, shortest, tolerance, ends);
    if (link) links.push(link);
    at = link ? link.stretch.to : at + Math.ceil(shortest / 2);
  }
  return links;
}

/** The seating that follows the line from a place on as far as any does. */
function farthest<F extends Frame>(line: WantedLine<F>, rails: readonly Rail[], from: number, shortest: number, tolerance: number, ends: EndsOf): Seating<F> | undefined {
  const rest = line.steps - from;
  for (let steps = rest; steps >= Math.min(rest, shortest); steps = Math.min(steps - 1, Math.floor(steps * SHORTER))) {
    const seatings = look([line], [{ from, to: from + steps }], rails, { most: 40, looked: 17, settled: 33, rounds: 14, enough: tolerance, gain: tolerance / 256, alike: tolerance / 2, apart: apartFor(steps * line.step, tolerance), ends });
    const followed = firstThatFollow(seatings, tolerance, 5, (each) => within(each, each.stretch, tolerance, ends))
      .map((each) => lengthened(each, tolerance, 1, ends))
      .sort((a, b) => extent(b.stretch) - extent(a.stretch));
    const longest = followed[0];
    if (!longest) continue;
    return finest(followed.filter(({ stretch }) => extent(stretch) === extent(longest.stretch)), tolerance, ends) ?? longest;
  }
  return undefined;
}

const SHORTER = 0.75;

interface Join {
  readonly stop: number;
  readonly start: number;
  readonly gap: number;
}

function toldChain<F extends Frame>(line: WantedLine<F>, links: readonly Seating<F>[], needles: readonly NeedleLines[], { needleOffset }: ChainOptions<F>): Chain<F> {
  const joins = links.slice(1).map((link, i) => joinOf(line, links[i]!, link, needles));
  const isWhole = joins.every((join) => join !== undefined);
  const round = line.path.closed && links.length > 1 && isWhole && links[0]!.stretch.from === 0 && links[links.length - 1]!.stretch.to === line.steps ? joinOf(line, links[links.length - 1]!, links[0]!, needles) : undefined;
  const placements = links.map((link, i) => {
    const before = i > 0 ? joins[i - 1] : round;
    const after = i < joins.length ? joins[i] : round;
    const ends: PassEnds = { ...(before && { start: before.start }), ...(after && { stop: after.stop }) };
    return followingOf(link, needles[link.rail.template]!, needleOffset, ends);
  });
  return {
    placements,
    gaps: [...joins, ...(round ? [round] : [])].map((join) => join?.gap ?? Infinity),
    missed: missedBy(line, links),
    greatest: Math.max(0, ...placements.map(({ deviation }) => deviation.greatest)),
  };
}

function missedBy<F extends Frame>(line: WantedLine<F>, links: readonly Seating<F>[]): Chain<F>['missed'] {
  const edges = [0, ...links.flatMap(({ stretch }) => [stretch.from, stretch.to]), line.steps];
  const missed: { from: number; to: number }[] = [];
  for (let i = 0; i < edges.length; i += 2) {
    if (line.run[edges[i + 1]!]! > line.run[edges[i]!]!) missed.push({ from: line.at[edges[i]!]!, to: line.at[edges[i + 1]!]! });
  }
  return missed;
}

/** Where one needle line goes over into the next; undefined where a stretch between them is missed. */
function joinOf<F extends Frame>(line: WantedLine<F>, a: Seating<F>, b: Seating<F>, needles: readonly NeedleLines[]): Join | undefined {
  const isRound = b.stretch.from === 0 && a.stretch.to === line.steps;
  if (!isRound && line.run[a.stretch.to] !== line.run[b.stretch.from]) return undefined;
  const laidA = laid(a, needles);
  const laidB = laid(b, needles);
  const corner = { x: line.x[b.stretch.from]!, y: line.y[b.stretch.from]! };
  const wanted = { x: line.wantedX[b.stretch.from]!, y: line.wantedY[b.stretch.from]! };
  const isSharp = line.corner[b.stretch.from] === 1 || a.stretch.to !== b.stretch.from;
  // At a corner the lines cross where it is mitred, beside the wanted line; elsewhere only a crossing close by is taken.
  const isNear = (p: Point<F>) => distance(p, wanted) <= 2 * EYE || (isSharp && distance(p, corner) <= MITRE * line.distance + JOIN);
  const crossing = meetPaths(laidA, laidB)
    .flatMap((meeting) => (meeting.kind === 'overlap' ? [] : [{ at: pointAlong(laidA, meeting.alongA).point, stop: meeting.alongA, start: meeting.alongB }]))
    .filter(({ at }) => isNear(at))
    .sort((p, q) => distance(p.at, wanted) - distance(q.at, wanted))[0];
  if (crossing) return { stop: crossing.stop, start: crossing.start, gap: 0 };
  const stop = footOfWanted(a, a.stretch.to);
  const start = footOfWanted(b, b.stretch.from);
  return { stop, start, gap: distance(pointAlong(laidA, stop).point, pointAlong(laidB, start).point) };
}

/** A mitre reaches this many times the distance from a corner as sharp as 39 degrees. */
const MITRE = 3;

function laid<F extends Frame>({ rail, seat }: Seating<F>, needles: readonly NeedleLines[]) {
  return carryPath(poseOfSeat<F>(seat, rail.track.flipped), needles[rail.template]!.lines[rail.needleLine]!.path);
}
