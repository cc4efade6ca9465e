// What a template is lined up on: the places and lines of an area that hands feel for, each with the name a registration gives it.

import { meetPaths } from '../geometry/meet-paths.ts';
import type { Path } from '../geometry/path.ts';
import { type Point, distance } from '../geometry/point.ts';
import { boundsOf, unionBounds } from '../geometry/bounds.ts';
import { SAME_POINT } from '../num/tolerances.ts';
import type { ReferenceLine } from '../top/area.ts';
import { extended } from '../top/extended.ts';
import type { StitchedHere } from './target.ts';

/** A place to put a point on. */
export interface Landmark {
  /** As a registration's `on`. */
  readonly on: string;
  readonly at: Point<'area'>;
}

/** A line to put a point, a line or the needle line on. */
export interface LandLine {
  readonly on: string;
  readonly path: Path<'area'>;
}

export interface Landmarks {
  readonly places: readonly Landmark[];
  readonly lines: readonly LandLine[];
}

const crossingsOf = new WeakMap<readonly ReferenceLine[], readonly Landmark[]>();

/** All that a template can be lined up on: the centre, crossings of reference lines, ends of stitched lines; reference lines and stitched lines. */
export function landmarks(lines: readonly ReferenceLine[], stitched: StitchedHere): Landmarks {
  const known = crossingsOf.get(lines) ?? crossings(lines);
  crossingsOf.set(lines, known);
  const ends = [...stitched].flatMap(([name, path]): readonly Landmark[] => {
    const first = path.vertices[0];
    const last = path.vertices[path.vertices.length - 1];
    if (path.closed || !first || !last) return [];
    return [
      { on: `end:${name}/start`, at: { x: first.x, y: first.y } },
      { on: `end:${name}/stop`, at: { x: last.x, y: last.y } },
    ];
  });
  return {
    places: [...known, ...ends],
    lines: [...lines.map(({ id, path }) => ({ on: `line:${id}`, path: extended(path) })), ...[...stitched].map(([name, path]) => ({ on: `stitched:${name}`, path }))],
  };
}

/** Crossings within the area, each place once and the centre by its own name. */
function crossings(lines: readonly ReferenceLine[]): readonly Landmark[] {
  const all = unionBounds(lines.map(({ path }) => boundsOf(path)));
  const found: Landmark[] = [];
  lines.forEach((a, i) => {
    for (const b of lines.slice(i + 1)) {
      let nth = 0;
      for (const meeting of meetPaths(extended(a.path), extended(b.path))) {
        if (meeting.kind === 'overlap') continue;
        nth += 1;
        const { at } = meeting;
        const inside = at.x >= all.minX - 1 && at.x <= all.maxX + 1 && at.y >= all.minY - 1 && at.y <= all.maxY + 1;
        if (!inside || found.some((other) => distance(other.at, at) <= SAME_POINT)) continue;
        const isCentre = Math.hypot(at.x, at.y) <= SAME_POINT;
        found.push({ on: isCentre ? 'centre' : `crossing:${a.id},${b.id}${nth > 1 ? `,${nth}` : ''}`, at });
      }
    }
  });
  return found;
}
