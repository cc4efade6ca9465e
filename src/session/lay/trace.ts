// Riding the edge: where the foot is on the needle line, what it is drawn to there, and how a place becomes the end of a pass.
// Distances along are inches, clockwise as seen on the etched face, in template coordinates unless they are named otherwise.

import { stretchOfPath } from '../../geometry/change.ts';
import { pointAlong, withinPath } from '../../geometry/measure.ts';
import { meetPaths } from '../../geometry/meet-paths.ts';
import { nearestOnPath } from '../../geometry/nearest.ts';
import type { Point } from '../../geometry/point.ts';
import { type Pose, after, carry, inverse, poseOf } from '../../geometry/pose.ts';
import { EYE, SAME_POINT, UNDER_FOOT } from '../../num/tolerances.ts';
import type { Pass, PassEnd } from '../../model/plan.ts';
import type { NeedleLine } from '../../needle/needle-line.ts';
import { crossingsAlong } from '../../place/crossings.ts';
import type { ReferenceLine } from '../../top/area.ts';
import { extended } from '../../top/extended.ts';
import type { Laid } from './placed.ts';
import type { Laying } from './setting.ts';

/** A place on a needle line that draws the foot. */
export interface Stop {
  readonly along: number;
  /** How the plan names it. */
  readonly end: PassEnd;
  /** In words, for people: "the vertical centre line". */
  readonly name: string;
}

/** A place the foot comes to. */
export interface Ridden {
  readonly along: number;
  readonly stop: Stop | undefined;
}

/** A straight etching is carried on to the needle line over no more than this, in inches: past the foot's own half width and a margin. */
const ETCHING_REACH = 1;

/**
 * Everything along a needle line that draws the foot, in order: crossings with reference lines, ends of lines sewn there, and where
 * etched lines point out over the edge. Reference lines first where several fall on one place.
 */
export function stopsAlong(laying: Laying, pose: Laid, line: NeedleLine): readonly Stop[] {
  const onTemplate = inverse(needlePose(laying, pose));
  const stops: Stop[] = [];
  for (const reference of laying.setting.lines) {
    crossingsAlong(reference, line, { pose, needleOffset: laying.needleOffset }).forEach((along, i) => {
      stops.push({ along: withinPath(line.path, along), end: { crosses: `line:${reference.id}`, ...(i > 0 && { nth: i + 1 }) }, name: `the ${reference.name}` });
    });
  }
  for (const [name, path] of laying.setting.stitched) {
    if (path.closed) continue;
    for (const end of [path.vertices[0], path.vertices.at(-1)]) {
      const near = end && nearestOnPath(line.path, carry(onTemplate, end));
      if (near && near.distance <= EYE) stops.push(bySpot(near.along, `the end of ${name.split('/')[0]}`));
    }
  }
  for (const etching of laying.setting.shape.etchings) {
    if (etching.kind !== 'line') continue;
    for (const meeting of meetPaths(line.path, extended(etching.path))) {
      if (meeting.kind === 'overlap') continue;
      if (nearestOnPath(etching.path, meeting.at).distance <= ETCHING_REACH) stops.push(bySpot(meeting.alongA, `the etched ${etching.name}`));
    }
  }
  const apart = stops.filter((stop, i) => !stops.slice(0, i).some((other) => Math.abs(apartAlong(line, other.along, stop.along)) <= UNDER_FOOT));
  return apart.sort((a, b) => a.along - b.along);
}

function bySpot(along: number, name: string): Stop {
  return { along, end: { along: roundedAlong(along) }, name };
}

/** From template coordinates to where the needle is when the foot's centre is there, in the axes the placement is laid in. */
export function needlePose({ needleOffset }: Pick<Laying, 'needleOffset'>, pose: Laid): Laid {
  const { x, y } = needleOffset;
  return x === 0 && y === 0 ? pose : after(pose, poseOf<'area', 'area'>(x, y));
}

/** The place of a needle line nearest to a point of the template, anywhere along it. */
export function reachedFirst(line: NeedleLine, p: Point<'template'>): number {
  return nearestOnPath(line.path, p).along;
}

/**
 * How far the foot runs for a hand that moved: signed inches along the needle line from where it is. The foot looks only so far as the
 * hand could have led it, so that it never jumps across a narrow template to the other side.
 */
export function runTo(line: NeedleLine, along: number, hand: Point<'template'>, handMoved: number): number {
  const look = Math.min(line.length / 2, LOOK_LEAST + LOOK_TIMES * handMoved);
  const from = line.path.closed ? along - look : Math.max(0, along - look);
  const to = line.path.closed ? along + look : Math.min(line.length, along + look);
  if (to - from <= SAME_POINT) return 0;
  const near = nearestOnPath(stretchOfPath(line.path, from, to), hand);
  return from + near.along - along;
}

/** The foot follows a hand that cuts a corner, in times the way the hand went; and at least so far, in inches. */
const LOOK_TIMES = 3;
const LOOK_LEAST = 0.25;

/** The place, or the stop within `reach` inches along that draws the foot there. */
export function drawnTo(line: NeedleLine, along: number, stops: readonly Stop[], reach: number): Ridden {
  let best: Stop | undefined;
  let least = reach;
  for (const stop of stops) {
    const away = Math.abs(apartAlong(line, along, stop.along));
    if (away <= least && (!best || away < least)) {
      best = stop;
      least = away;
    }
  }
  return best ? { along: best.along, stop: best } : { along: withinPath(line.path, along), stop: undefined };
}

/** The signed inches from one place to another the shorter way round. */
export function apartAlong(line: NeedleLine, from: number, to: number): number {
  if (!line.path.closed) return to - from;
  const rest = (((to - from) % line.length) + line.length) % line.length;
  return rest > line.length / 2 ? rest - line.length : rest;
}

/** How the plan names a place the foot came to. */
export function endAt({ along, stop }: Ridden): PassEnd {
  return stop?.end ?? { along: roundedAlong(along) };
}

/** As the plan writes it: to a few decimals, and never beyond the end of the line. */
function roundedAlong(along: number): number {
  return Math.floor(along * 1e5) / 1e5;
}

/** A pass traced on a needle line from one end for a signed way; a whole round and more is all round. */
export function tracedPass(line: NeedleLine, from: Ridden, to: Ridden, ran: number): Pass {
  const onEdge = { ...(line.from !== 'outline' && { edge: line.from }), ...(line.loop > 0 && { loop: line.loop }) };
  const allRound = line.path.closed && Math.abs(ran) >= line.length - SAME_POINT;
  return { ...onEdge, start: endAt(from), stop: allRound ? 'all-round' : endAt(to), way: ran < 0 ? 'counterclockwise' : 'clockwise' };
}

/** A pass all round a needle line, from a place on it. */
export function roundPass(line: NeedleLine, from: Ridden): Pass {
  return tracedPass(line, from, from, line.length);
}

/** A name for one more pass: the first letter that is free. */
export function freePassId(passes: { readonly [id: string]: unknown }): string {
  for (let i = 0; ; i++) {
    const letter = String.fromCharCode(97 + (i % 26));
    const id = i < 26 ? letter : `${letter}${Math.floor(i / 26)}`;
    if (!(id in passes)) return id;
  }
}

/** Where a place along a needle line lies on the quilt: where the needle goes down there. */
export function onQuiltAlong(laying: Laying, pose: Laid, line: NeedleLine, along: number): Point<'quilt'> {
  return carry(after(needlePose(laying, pose), laying.axes), pointAlong(line.path, along).point);
}

/** From the quilt to the template coordinates of a needle line: where a hand over the needle leads the foot's centre. */
export function toNeedleLine(laying: Laying, pose: Laid): Pose<'quilt', 'template'> {
  return inverse(after(needlePose(laying, pose), laying.axes));
}

/**
 * The same stretch of a needle line under another pose: an end on a reference line stays on it where it still crosses near that
 * place, goes on to the line that crosses just there now (a template turned over on a diagonal changes one centre line for the other),
 * and is told by the distance along where there is none.
 */
export function keptEnd(laying: Laying, pose: Laid, line: NeedleLine, end: PassEnd, along: number, reach: number): PassEnd {
  if ('along' in end) return end;
  const { lines } = laying.setting;
  const reference = lines.find(({ id }) => `line:${id}` === end.crosses);
  if (!reference) return end;
  const stays = crossingAt(laying, pose, line, reference, along, reach);
  if (stays) return stays;
  for (const other of lines) {
    const there = crossingAt(laying, pose, line, other, along, UNDER_FOOT);
    if (there) return there;
  }
  return { along: roundedAlong(along) };
}

/** The crossing of a reference line nearest to a place along a needle line, within so many inches of it. */
function crossingAt(laying: Laying, pose: Laid, line: NeedleLine, reference: ReferenceLine, along: number, reach: number): PassEnd | undefined {
  let nth = -1;
  let least = reach;
  crossingsAlong(reference, line, { pose, needleOffset: laying.needleOffset }).forEach((crossing, i) => {
    const away = Math.abs(apartAlong(line, along, crossing));
    if (away > least || (nth >= 0 && away === least)) return;
    nth = i;
    least = away;
  });
  if (nth < 0) return undefined;
  return { crosses: `line:${reference.id}`, ...(nth > 0 && { nth: nth + 1 }) };
}
