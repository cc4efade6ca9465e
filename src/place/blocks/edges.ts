// The straight edges of an area and how far the needle stays away from each.

import { SAME_POINT } from '../../num/tolerances.ts';
import { nearestOnPath } from '../../geometry/nearest.ts';
import { type Path, segmentsOf } from '../../geometry/path.ts';
import { type Point, type Vec, between, dot, partWay, quarterTurned, unit } from '../../geometry/point.ts';
import type { Clearance } from '../../model/plan.ts';
import type { Area, ReferenceLine } from '../../top/area.ts';
import { extentAlong } from './extent.ts';

export interface ClearEdge {
  /** The reference line along it, where there is one. */
  readonly line: ReferenceLine | undefined;
  readonly from: Point<'area'>;
  readonly to: Point<'area'>;
  /** Square on the edge, towards the inside of the area; a unit vector. */
  readonly inward: Vec<'area'>;
  /** How far the needle stays inside of it, in inches; none where the cloth goes on without a seam. */
  readonly clearance: number | undefined;
}

/** The edges of an area whose sides are straight, clockwise; sides that are not straight are left out. */
export function clearEdges(area: Area, clearance: Clearance): readonly ClearEdge[] {
  return segmentsOf(area.boundary).flatMap((s) => {
    if (s.kind !== 'line') return [];
    const middle = partWay(s.from, s.to, 0.5);
    const seam = area.seams.find(({ path }) => nearestOnPath(path, middle).distance <= SAME_POINT);
    const line = area.referenceLines.find(({ kind, path }) => kind === 'edge' && nearestOnPath(path, middle).distance <= SAME_POINT);
    const away = seam && (seam.kind === 'raw' ? clearance.rawEdge : clearance.seam);
    return [{ line, from: s.from, to: s.to, inward: quarterTurned(unit(between(s.from, s.to))), clearance: away }];
  });
}

/** How much farther inside of its clearance than need be a line stays at the edge where it has least room, in inches; less than 0 when it does not. */
export function roomWithin(path: Path<'area'>, edges: readonly ClearEdge[]): number {
  return edges.reduce((least, edge) => (edge.clearance === undefined ? least : Math.min(least, inwardOf(path, edge) - edge.clearance)), Infinity);
}

/** How far inside of an edge, carried on beyond its ends, a line stays. */
export function inwardOf(path: Path<'area'>, { from, inward }: ClearEdge): number {
  return extentAlong(path, inward)[0] - dot({ x: from.x, y: from.y }, inward);
}
