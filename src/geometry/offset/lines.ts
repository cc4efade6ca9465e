// Strung stretches made into paths with their contact maps: clockwise, starting where the edge starts, longest first.

import { JOINT, SLIVER, TOUCHED, WELD } from '../../num/tolerances.ts';
import { lengthsBefore, pathLength, signedArea } from '../measure.ts';
import { type Path, type Vertex, closedPath, openPath } from '../path.ts';
import { type Frame, type Point, distance } from '../point.ts';
import { type Segment, pointOnSegment, reversedSegment, segmentLength, stretchOfSegment } from '../segment.ts';
import type { Stretch } from './arrange.ts';
import type { Contact, OffsetLoop, Touch } from './contact.ts';
import type { RawPiece } from './raw-pieces.ts';
import type { TwinStretch } from './trace.ts';

/** A piece of a line before it is measured; without a segment when the roller touches a whole stretch from one place. */
interface Rolled<F extends Frame> {
  readonly segment?: Segment<F>;
  readonly touch: Touch;
  readonly opposite?: Touch;
}

/** The closed line of some stretches that lead round. */
export function closedLine<F extends Frame>(pieces: readonly RawPiece<F>[], specks: readonly Stretch[], loop: readonly Stretch[]): OffsetLoop<F> | undefined {
  const rolled: Rolled<F>[] = [];
  loop.forEach((s, i) => {
    const before = loop[(i + loop.length - 1) % loop.length]!;
    for (const touch of passedBetween(pieces, specks, before, s)) rolled.push({ touch });
    rolled.push(rolledAlong(pieces, s));
  });
  const path = pathOf(rolled, true);
  if (pathLength(path) < SLIVER) return undefined;
  const clockwise = signedArea(path) >= 0 ? rolled : reversed(rolled);
  const ordered = startingAtTheEdge(clockwise);
  return measured(ordered, ordered === rolled ? path : pathOf(ordered, true));
}

/** The open centre line of some twins, run so that it starts where the edge is touched first. */
export function openLine<F extends Frame>(pieces: readonly RawPiece<F>[], specks: readonly Stretch[], twins: readonly TwinStretch[]): OffsetLoop<F> | undefined {
  const rolled: Rolled<F>[] = [];
  const first = twins[0]!;
  const last = twins[twins.length - 1]!;
  for (const touch of passedBetween(pieces, specks, first.back, first.there)) rolled.push({ touch });
  twins.forEach((twin, i) => {
    const before = twins[i - 1];
    if (before) for (const touch of passedBetween(pieces, specks, before.there, twin.there)) rolled.push({ touch });
    if (before) for (const touch of passedBetween(pieces, specks, twin.back, before.back)) rolled.push({ touch: against(touch) });
    rolled.push({ ...rolledAlong(pieces, twin.there), opposite: against(touchAlong(pieces, twin.back)) });
  });
  for (const touch of passedBetween(pieces, specks, last.there, last.back)) rolled.push({ touch });
  const there = touchAlong(pieces, first.there).edgeStart;
  const back = touchAlong(pieces, last.back).edgeStart;
  const ordered = there <= back ? rolled : turnedRound(rolled);
  const line = measured(ordered, pathOf(ordered, false));
  return line.length < SLIVER ? undefined : line;
}

/** Longest first; of equal ones, the one that starts first along the edge. */
export function longestFirst<F extends Frame>(lines: readonly OffsetLoop<F>[]): readonly OffsetLoop<F>[] {
  const start = (line: OffsetLoop<F>) => Math.min(line.contacts[0]!.edgeStart, line.contacts[0]!.edgeEnd);
  return [...lines].sort((a, b) => (Math.abs(a.length - b.length) > WELD ? b.length - a.length : start(a) - start(b)));
}

/**
 * What it touches all at once in the place where it passes from one stretch to the next: arcs of exactly the roller's radius, to rounding
 * slack.
 */
function passedBetween<F extends Frame>(pieces: readonly RawPiece<F>[], specks: readonly Stretch[], before: Stretch, after: Stretch): readonly Touch[] {
  const passed: Touch[] = [];
  const at = pointOnSegment(pieces[after.piece]!.segment, after.a);
  const isHere = (p: Point<F>) => distance(p, at) <= 2 * JOINT;
  const add = (touch: Touch) => {
    if (touch.kind === 'edge' && touch.edgeEnd - touch.edgeStart > TOUCHED) passed.push(touch);
  };
  for (let i = before.piece; ; i = (i + 1) % pieces.length) {
    const piece = pieces[i]!;
    const { from, to } = piece.segment;
    const isShort = segmentLength(piece.segment) <= JOINT;
    const speck = specks.find((s) => s.piece === i && s.from === before.to);
    const isBeside = i !== before.piece && i !== after.piece && (isHere(from) || isHere(to));
    if (isShort && (speck || isBeside)) add(touchOf(piece));
    else if (speck) add(touchAlong(pieces, speck));
    if (i === after.piece) return passed;
  }
}

function rolledAlong<F extends Frame>(pieces: readonly RawPiece<F>[], s: Stretch): Rolled<F> {
  return { segment: stretchOfSegment(pieces[s.piece]!.segment, s.a, s.b), touch: touchAlong(pieces, s) };
}

function touchAlong<F extends Frame>(pieces: readonly RawPiece<F>[], s: Stretch): Touch {
  const { kind, edge, edgeStart, edgeEnd } = pieces[s.piece]!;
  const at = (part: number) => (part === 0 ? edgeStart : part === 1 ? edgeEnd : edgeStart + (edgeEnd - edgeStart) * part);
  return { kind, edge, edgeStart: at(s.a), edgeEnd: at(s.b) };
}

function touchOf({ kind, edge, edgeStart, edgeEnd }: Touch): Touch {
  return { kind, edge, edgeStart, edgeEnd };
}

function against(touch: Touch): Touch {
  return { kind: touch.kind, edge: touch.edge, edgeStart: touch.edgeEnd, edgeEnd: touch.edgeStart };
}

function reversed<F extends Frame>(rolled: readonly Rolled<F>[]): readonly Rolled<F>[] {
  return [...rolled].reverse().map((r) => ({
    ...r,
    ...(r.segment && { segment: reversedSegment(r.segment) }),
    touch: against(r.touch),
    ...(r.opposite && { opposite: against(r.opposite) }),
  }));
}

/** An open line run the other way, with the other side first. */
function turnedRound<F extends Frame>(rolled: readonly Rolled<F>[]): readonly Rolled<F>[] {
  return reversed(rolled).map((r) => (r.opposite ? { ...r, touch: r.opposite, opposite: r.touch } : { ...r, touch: against(r.touch) }));
}

/** A closed line begun where its contact lies first along the edge. */
function startingAtTheEdge<F extends Frame>(rolled: readonly Rolled<F>[]): readonly Rolled<F>[] {
  const count = rolled.length;
  const firstBetween = rolled.map((r, i) => Math.min(rolled[(i + count - 1) % count]!.touch.edgeEnd, r.touch.edgeStart));
  const least = Math.min(...firstBetween);
  const isFirst = (i: number) => firstBetween[i]! <= least;
  const start = rolled.findIndex((_, i) => isFirst(i) && !isFirst((i + count - 1) % count));
  return start <= 0 ? rolled : [...rolled.slice(start), ...rolled.slice(0, start)];
}

function measured<F extends Frame>(rolled: readonly Rolled<F>[], path: Path<F>): OffsetLoop<F> {
  const before = lengthsBefore(path);
  let passed = 0;
  const contacts = rolled.map(({ segment, touch, opposite }): Contact => {
    const start = before[passed]!;
    if (segment) passed++;
    const { kind, edge, edgeStart, edgeEnd } = touch;
    const contact: Contact = { kind, edge, edgeStart, edgeEnd, start, end: before[passed]! };
    return opposite ? { ...contact, opposite } : contact;
  });
  return { path, length: pathLength(path), area: path.closed ? Math.abs(signedArea(path)) : 0, contacts };
}

function pathOf<F extends Frame>(rolled: readonly Rolled<F>[], closed: boolean): Path<F> {
  const vertices: Vertex[] = [];
  let end: Vertex | undefined;
  for (const { segment } of rolled) {
    if (!segment) continue;
    vertices.push({ x: segment.from.x, y: segment.from.y, bulge: segment.kind === 'line' ? 0 : Math.tan(segment.sweep / 4) });
    end = { x: segment.to.x, y: segment.to.y, bulge: 0 };
  }
  if (!closed && end) vertices.push(end);
  return closed ? closedPath(vertices) : openPath(vertices);
}
