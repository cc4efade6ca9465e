// One laying of a medallion: where the needle lines of neighbours meet, which is where one starts and stops, or how far they miss.

import { TURN, toDegrees } from '../../num/angle.ts';
import { SAME_POINT } from '../../num/tolerances.ts';
import { carryPath } from '../../geometry/change.ts';
import { meetPaths } from '../../geometry/meet-paths.ts';
import { pathLength, pointAlong } from '../../geometry/measure.ts';
import { type Path, straight } from '../../geometry/path.ts';
import { type Point, type Vec, cross, distance, dot, heading, moved, scaled } from '../../geometry/point.ts';
import { type Pose, carryVec, turnAbout } from '../../geometry/pose.ts';
import { type Laid, apartness } from './laid-line.ts';
import { THIS_LINE } from './round-poses.ts';

export type RoundRepeat = 'turn' | 'mirror-and-turn';

/** A stretch of the needle line, in inches along it; all round where neighbours only touch. */
export type RingStretch = { readonly start: number; readonly stop: number; readonly way: 'clockwise' | 'counterclockwise' } | 'all-round';

export interface Ring {
  readonly pose: Laid;
  /** From the centre to what was put on this line, in inches. */
  readonly from: number;
  /**
   * `touching`: neighbours just touch. `on-lines`: one starts on this line and stops on the next, where the next one starts.
   * `meeting`: they meet, at no line. `mirrored`: each meets its own mirror image on both lines. `apart`: the ring does not close.
   */
  readonly closes: 'touching' | 'on-lines' | 'meeting' | 'mirrored' | 'apart';
  /** Between neighbours, in inches: more than 0 the gap, less than 0 how deep one reaches into the other. */
  readonly apart: number;
  /** Where one stops and the next starts; where they are nearest when they do not meet. */
  readonly joint: Point<'area'> | undefined;
  /** How far the line turns at the joint, in degrees. */
  readonly kink: number | undefined;
  readonly stretch: RingStretch | undefined;
}

/** How far from the centre lines are followed, in inches: beyond any top. */
const FAR = 200;

/** A needle line as it lies, repeated `count` times round the centre. `line` is closed and clockwise on the etched face. */
export function ringOf(line: Path<'area'>, pose: Laid, from: number, count: number, repeat: RoundRepeat): Ring {
  return repeat === 'turn' ? turnedRing(line, pose, from, count) : mirroredRing(line, pose, from, count);
}

/** How far neighbours lie apart when a line is turned into `count` images (inches; see `apartness`). */
export function neighboursApart(line: Path<'area'>, count: number): number {
  return apartness(line, carryPath(stepOf(count), line));
}

function stepOf(count: number): Pose<'area', 'area'> {
  return turnAbout({ x: 0, y: 0 }, TURN / count);
}

function turnedRing(line: Path<'area'>, pose: Laid, from: number, count: number): Ring {
  const step = stepOf(count);
  const next = carryPath(step, line);
  const meetings = meetPaths(line, next).flatMap((meeting) => (meeting.kind === 'overlap' ? [] : [meeting]));
  const apart = apartness(line, next);
  const outermost = meetings.reduce<(typeof meetings)[number] | undefined>((best, one) => (best && out(best.at) >= out(one.at) ? best : one), undefined);
  if (!outermost) return { pose, from, closes: 'apart', apart, joint: undefined, kink: undefined, stretch: undefined };
  if (meetings.every(({ kind }) => kind === 'touching')) return { pose, from, closes: 'touching', apart: 0, joint: outermost.at, kink: 0, stretch: 'all-round' };
  const { at, alongA: stop, alongB: start } = outermost;
  const stretch = outerStretch(line, start, stop);
  // The next image starts as this one started, turned by a step.
  const [stops, starts] = [sewnWay(line, stop, stretch.way), carryVec(step, sewnWay(line, start, stretch.way))];
  const onLine = Math.abs(cross(heading<'area'>(THIS_LINE + TURN / count), { x: at.x, y: at.y })) <= ON_LINE;
  return { pose, from, closes: onLine ? 'on-lines' : 'meeting', apart, joint: at, kink: turnBetween(stops, starts), stretch };
}

/** A joint is on a line within what two searches leave, in inches. */
const ON_LINE = 1e3 * SAME_POINT;

function mirroredRing(line: Path<'area'>, pose: Laid, from: number, count: number): Ring {
  const half = TURN / (2 * count);
  const [starts, stops] = [crossingsOut(line, THIS_LINE), crossingsOut(line, THIS_LINE + half)];
  const [start, stop] = [starts.at(-1), stops.at(-1)];
  if (!start || !stop) return { pose, from, closes: 'apart', apart: missOf(line, start ? THIS_LINE + half : THIS_LINE), joint: undefined, kink: undefined, stretch: undefined };
  const stretch = outerStretch(line, start.along, stop.along);
  const mirror = heading<'area'>(THIS_LINE + half);
  const square = { x: -mirror.y, y: mirror.x };
  const way = sewnWay(line, stop.along, stretch.way);
  const back = scaled(plusMirrored(way, square), -1);
  return { pose, from, closes: 'mirrored', apart: 0, joint: stop.at, kink: turnBetween(way, back), stretch };
}

/** The least way from a closed line to a ray from the centre, in inches. */
function missOf(line: Path<'area'>, angle: number): number {
  return apartness(line, straight({ x: 0, y: 0 }, moved({ x: 0, y: 0 }, heading(angle), FAR)));
}

function plusMirrored(v: Vec<'area'>, square: Vec<'area'>): Vec<'area'> {
  const across = dot(v, square);
  return { x: v.x - 2 * across * square.x, y: v.y - 2 * across * square.y };
}

export interface CrossingOut {
  readonly along: number;
  /** From the centre, in inches. */
  readonly out: number;
  readonly at: Point<'area'>;
}

/** Where a line crosses or touches a ray from the centre, the nearest to the centre first. */
export function crossingsOut(line: Path<'area'>, angle: number): readonly CrossingOut[] {
  const ray = straight<'area'>({ x: 0, y: 0 }, moved({ x: 0, y: 0 }, heading(angle), FAR));
  return meetPaths(ray, line).flatMap((meeting) => (meeting.kind === 'overlap' ? [] : [{ along: meeting.alongB, out: meeting.alongA, at: meeting.at }]));
}

/** Of the two ways from one place of a closed line to another, the one whose middle lies farther out. */
function outerStretch(line: Path<'area'>, start: number, stop: number): Exclude<RingStretch, 'all-round'> {
  const total = pathLength(line);
  const forward = (((stop - start) % total) + total) % total;
  const middle = (along: number) => out(pointAlong(line, along).point);
  const way = middle(start + forward / 2) >= middle(start - (total - forward) / 2) ? 'clockwise' : 'counterclockwise';
  return { start, stop, way };
}

function sewnWay(line: Path<'area'>, along: number, way: 'clockwise' | 'counterclockwise'): Vec<'area'> {
  const { tangent } = pointAlong(line, along);
  return way === 'clockwise' ? tangent : scaled(tangent, -1);
}

function turnBetween(a: Vec<'area'>, b: Vec<'area'>): number {
  return toDegrees(Math.abs(Math.atan2(cross(a, b), dot(a, b))));
}

function out(p: Point<'area'>): number {
  return distance({ x: 0, y: 0 }, p);
}
