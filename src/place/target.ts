// Where a registration puts something: reading `line:diagonal-down`, `crossing:a,b`, `centre`, `end:...`, `stitched:...`.

import { carryPath } from '../geometry/change.ts';
import { meetPaths } from '../geometry/meet-paths.ts';
import type { Path } from '../geometry/path.ts';
import { segmentsOf } from '../geometry/path.ts';
import { type Point, type Vec, between, moved, unit } from '../geometry/point.ts';
import { poseOf } from '../geometry/pose.ts';
import { type Outcome, fail, ok } from '../num/outcome.ts';
import { extended } from '../top/extended.ts';
import type { ReferenceLine } from '../top/area.ts';

export type Target =
  | { readonly kind: 'point'; readonly at: Point<'area'>; readonly name: string }
  /** A straight line without end, through a place, in a direction. */
  | { readonly kind: 'line'; readonly at: Point<'area'>; readonly way: Vec<'area'>; readonly name: string }
  | { readonly kind: 'curve'; readonly path: Path<'area'>; readonly name: string };

/** What registrations on an area can name besides its reference lines: lines already sewn there, by `placement/pass` or `sheet/placement/pass`. */
export type StitchedHere = ReadonlyMap<string, Path<'area'>>;

/** The place or line a registration's `on` names, in the area's own axes, or a sentence saying that it is not there. */
export function targetOf(on: string, lines: readonly ReferenceLine[], stitched: StitchedHere = new Map()): Outcome<Target, string> {
  if (on === 'centre') return ok({ kind: 'point', at: { x: 0, y: 0 }, name: 'centre' });
  const colon = on.indexOf(':');
  const kind = colon < 0 ? on : on.slice(0, colon);
  const rest = colon < 0 ? '' : on.slice(colon + 1);
  if (kind === 'line') {
    const line = lines.find((candidate) => candidate.id === rest);
    return line ? ok(lineTarget(line)) : fail(`There is no reference line "${rest}" here.`);
  }
  if (kind === 'point') {
    const [x, y] = rest.split(',').map(Number);
    if (x === undefined || y === undefined || !Number.isFinite(x) || !Number.isFinite(y)) return fail(`"${on}" is not a place; write point:X,Y in inches.`);
    return ok({ kind: 'point', at: { x, y }, name: 'marked place' });
  }
  if (kind === 'crossing') return crossingTarget(rest, lines);
  if (kind === 'stitched') {
    const path = stitched.get(rest);
    return path ? ok(lineTarget({ path, name: 'stitched line' })) : fail(`There is no stitched line "${rest}" here.`);
  }
  if (kind === 'end') return endTarget(rest, stitched);
  return fail(`"${on}" is nowhere on the top; name a reference line, a crossing, the centre, or an end of a stitched line.`);
}

/** The same place or line moved. */
export function targetMoved(target: Target, by: Vec<'area'>): Target {
  if (by.x === 0 && by.y === 0) return target;
  return target.kind === 'curve' ? { ...target, path: carryPath(poseOf<'area', 'area'>(by.x, by.y), target.path) } : { ...target, at: moved(target.at, by) };
}

/** A reference line or stitched line as something to line up on; a straight one goes on beyond its ends. */
export function lineTarget(line: Pick<ReferenceLine, 'path' | 'name'>): Target {
  const segments = segmentsOf(line.path);
  const only = segments[0];
  if (segments.length === 1 && only?.kind === 'line') return { kind: 'line', at: only.from, way: unit(between(only.from, only.to)), name: line.name };
  return { kind: 'curve', path: line.path, name: line.name };
}

function crossingTarget(pair: string, lines: readonly ReferenceLine[]): Outcome<Target, string> {
  const [first = '', second = '', nth = '1'] = pair.split(',').map((part) => part.trim());
  const a = lines.find((line) => line.id === first);
  const b = lines.find((line) => line.id === second);
  if (!a || !b) return fail(`There is no reference line "${a ? second : first}" here.`);
  const meetings = meetPaths(extended(a.path), extended(b.path)).flatMap((meeting) => (meeting.kind === 'overlap' ? [] : [meeting.at]));
  const meeting = meetings[Number(nth) - 1];
  if (!meeting) return fail(`The ${a.name} and the ${b.name} do not cross.`);
  return ok({ kind: 'point', at: meeting, name: `crossing of the ${a.name} and the ${b.name}` });
}

function endTarget(rest: string, stitched: StitchedHere): Outcome<Target, string> {
  const slash = rest.lastIndexOf('/');
  const end = rest.slice(slash + 1);
  const path = stitched.get(rest.slice(0, slash));
  const vertex = end === 'start' ? path?.vertices[0] : path?.vertices[path.vertices.length - 1];
  if (!path || !vertex || (end !== 'start' && end !== 'stop')) return fail(`There is no end of a stitched line "${rest}" here.`);
  return ok({ kind: 'point', at: { x: vertex.x, y: vertex.y }, name: end === 'start' ? 'start of the stitched line' : 'end of the stitched line' });
}
