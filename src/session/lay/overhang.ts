// What of the needle line hangs over a seam or the raw edge, or comes nearer to it than the plan allows: told while the hand moves,
// before the checks have looked.

import { carryPath, stretchOfPath } from '../../geometry/change.ts';
import { leastInward } from '../../geometry/inward.ts';
import { pathLength, pointAlong } from '../../geometry/measure.ts';
import { meetPaths } from '../../geometry/meet-paths.ts';
import { type Path, endOf, startOf, straight } from '../../geometry/path.ts';
import { type Point, type Vec, between, dot, moved, quarterTurned, unit } from '../../geometry/point.ts';
import { after, carry, poseOf } from '../../geometry/pose.ts';
import { SAME_POINT } from '../../num/tolerances.ts';
import { soundClearance } from '../../check/stitched.ts';
import { written, writtenBeside } from '../../check/words.ts';
import type { Clearance, Plan } from '../../model/plan.ts';
import type { LaidPlacement } from '../../stitch/laid-placement.ts';
import { extended } from '../../top/extended.ts';
import type { Area } from '../../top/area.ts';
import { type SessionState, planOf } from '../store.ts';
import { middleOf } from './moves.ts';
import { laidOn, onTable, pickedOn } from './on-table.ts';

export interface Overhang {
  /** The stretches concerned, in the axes the placement is laid in. */
  readonly stretches: readonly Path<'area'>[];
  /** The middle of the template, in the same axes. */
  readonly middle: Point<'area'>;
  /** All of them together, in inches. */
  readonly length: number;
  /** The edge that is come nearest to, or gone farthest over: how far inward of it, in inches, less than 0 beyond it; and what is asked. */
  readonly nearest: { readonly name: string; readonly isRaw: boolean; readonly distance: number; readonly limit: number };
}

/**
 * What hangs over of the passes of a placement as they were traced or, while there are none, of its needle line all round; undefined
 * when nothing does. Seams within an area, such as a mitre, are crossed freely, and so are those of the pieces under a drawn area.
 */
export function overhangOf(laid: LaidPlacement, area: Area, clearance: Clearance): Overhang | undefined {
  const first = laid.images[0];
  const edges = first ? edgesOf(area, clearance) : [];
  if (!first || edges.length === 0) return undefined;
  const { x, y } = laid.needleOffset;
  const toNeedle = after(poseOf<'area', 'area'>(x, y), first);
  const traced = laid.passes.flatMap((pass) => (pass.kind === 'found' ? [carryPath(toNeedle, pass.path)] : []));
  const paths = traced.length > 0 ? traced : laid.needle.lines.map(({ path }) => carryPath(after(laid.pose, toNeedle), path));
  let nearest: Overhang['nearest'] | undefined;
  const stretches = paths.flatMap((path) => stretchesOver(path, edges, (edge, distance) => {
    if (!nearest || distance - edge.limit < nearest.distance - nearest.limit) nearest = { name: edge.name, isRaw: edge.isRaw, distance, limit: edge.limit };
  }));
  if (!nearest) return undefined;
  const middle = carry(after(laid.pose, first), middleOf(laid.template));
  return { stretches, middle, length: stretches.reduce((sum, stretch) => sum + pathLength(stretch), 0), nearest };
}

interface Edge {
  readonly name: string;
  readonly isRaw: boolean;
  /** The edge carried on at both ends: what hangs over beyond a corner hangs over as well. */
  readonly from: Point<'area'>;
  readonly to: Point<'area'>;
  readonly inward: Vec<'area'>;
  readonly limit: number;
  /** The line that stitching may come up to. */
  readonly bound: Path<'area'>;
}

function edgesOf({ kind, seams, referenceLines }: Area, clearance: Clearance): readonly Edge[] {
  const crossesSeams = kind === 'drawn' || kind === 'top';
  return seams.flatMap((seam): readonly Edge[] => {
    const long = extended(seam.path);
    const [from, to] = [startOf(long), endOf(long)];
    const isRaw = seam.kind === 'raw';
    if (!from || !to || seam.id === 'mitre' || (crossesSeams && !isRaw)) return [];
    const inward = quarterTurned(unit(between(from, to)));
    const limit = soundClearance(isRaw ? clearance.rawEdge : clearance.seam);
    const bound = straight(moved(from, inward, limit), moved(to, inward, limit));
    const name = referenceLines.find(({ id }) => id === seam.id)?.name ?? 'seam';
    return [{ name, isRaw, from, to, inward, limit, bound }];
  });
}

/** The stretches of a path beyond the bound of any edge; each edge is told of the least that is left to it. */
function stretchesOver(path: Path<'area'>, edges: readonly Edge[], tell: (edge: Edge, distance: number) => void): readonly Path<'area'>[] {
  const length = pathLength(path);
  const cuts = edges.flatMap(({ bound }) => meetPaths(path, bound).flatMap((meeting) => (meeting.kind === 'overlap' ? [...meeting.alongA] : [meeting.alongA])));
  const places = [0, ...cuts, length].sort((a, b) => a - b);
  const over: { from: number; to: number }[] = [];
  places.slice(1).forEach((to, i) => {
    const from = places[i]!;
    if (to - from <= SAME_POINT) return;
    const { point } = pointAlong(path, (from + to) / 2);
    const crossed = edges.filter(({ from: start, inward, limit }) => dot(between(start, point), inward) < limit - SAME_POINT);
    if (crossed.length === 0) return;
    for (const edge of crossed) tell(edge, leastInward(stretchOfPath(path, from, to), edge.from, edge.to)?.distance ?? edge.limit);
    const last = over.at(-1);
    if (last && from - last.to <= SAME_POINT) last.to = to;
    else over.push({ from, to });
  });
  const [first] = over;
  const last = over.at(-1);
  // A closed line that begins within what hangs over: the two ends are one stretch.
  if (path.closed && first && last && over.length > 1 && first.from <= SAME_POINT && length - last.to <= SAME_POINT) {
    over.pop();
    first.from = last.from - length;
  }
  return over.map(({ from, to }) => (to - from >= length - SAME_POINT ? path : stretchOfPath(path, from, to)));
}

const known = new WeakMap<LaidPlacement, { readonly area: Area; readonly clearance: Clearance; readonly found: Overhang | undefined }>();

/** The same of the one template picked out, as it lies now. */
export function overhangPicked(state: SessionState): Overhang | undefined {
  const on = onTable(state);
  const [only, ...others] = pickedOn(state.selection, on?.sheet?.id);
  const laid = on && only !== undefined && others.length === 0 ? laidOn(state, on, only) : undefined;
  if (!on || !laid) return undefined;
  const { clearance } = planOf(state).top;
  const before = known.get(laid);
  if (before?.area === on.area && before.clearance === clearance) return before.found;
  const found = overhangOf(laid, on.area, clearance);
  known.set(laid, { area: on.area, clearance, found });
  return found;
}

/** "2 1/4 in of the needle line is too near: 3/8 in over the raw right edge." */
export function sayOverhang({ length, nearest: { name, isRaw, distance, limit } }: Overhang, plan: Plan): string {
  const edge = isRaw ? `the raw ${name}` : `the ${name}`;
  const how = distance < -SAME_POINT ? `${written(plan, -distance)} over ${edge}` : `${writtenBeside(plan, Math.max(0, distance), limit)} from ${edge}, and you asked for ${written(plan, limit)}`;
  return `${written(plan, length)} of the needle line is too near: ${how}.`;
}
