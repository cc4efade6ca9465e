// What several rules ask of the stitched lines, found once.

import { type Bounds, boundsOf } from '../geometry/bounds.ts';
import { carryPath } from '../geometry/change.ts';
import { type Path, endOf, segmentsOf, startOf } from '../geometry/path.ts';
import { type Point, type Vec, moved, dot } from '../geometry/point.ts';
import { type Pose, after, carry, poseOf } from '../geometry/pose.ts';
import { partOfAngle } from '../geometry/segment.ts';
import type { LaidPass, LaidPlacement } from '../stitch/laid-placement.ts';
import type { StitchedLine } from '../stitch/stitched-line.ts';
import type { CheckInput } from './input.ts';

/** A rectangle that surely holds a line on the quilt: the extents of its pass carried along. Cheap, and rarely tight. */
export function roughBounds(line: StitchedLine): Bounds {
  const { minX, minY, maxX, maxY } = boundsOf(line.source);
  const { to, needleOffset } = line;
  const [cos, sin] = [Math.abs(Math.cos(to.angle)), Math.abs(Math.sin(to.angle))];
  const [halfX, halfY] = [(maxX - minX) / 2, (maxY - minY) / 2];
  const middle = carry(to, { x: (minX + maxX) / 2, y: (minY + maxY) / 2 });
  const [x, y] = [middle.x + needleOffset.x, middle.y + needleOffset.y];
  const [w, h] = [cos * halfX + sin * halfY, sin * halfX + cos * halfY];
  return { minX: x - w, minY: y - h, maxX: x + w, maxY: y + h };
}

/** Where a line starts and stops on the quilt, without carrying all of it; undefined for a line that closes. */
export function endsOf(line: StitchedLine): { readonly start: Point<'quilt'>; readonly stop: Point<'quilt'> } | undefined {
  const start = startOnQuilt(line);
  const stop = endOf(line.source);
  if (line.source.closed || !start || !stop) return undefined;
  return { start, stop: moved(carry(line.to, stop), line.needleOffset) };
}

type FoundPass = Extract<LaidPass, { kind: 'found' }>;

/** One image of a pass in the axes of the areas a placement is laid on. */
export interface LaidImage {
  readonly pass: FoundPass;
  readonly image: number;
  /** Where the needle sews. */
  readonly path: Path<'area'>;
}

/** Every image of every pass that was found, as the needle sews it, in the areas' own axes. */
export function laidImages(laid: LaidPlacement): readonly LaidImage[] {
  const { x, y } = laid.needleOffset;
  const toNeedle: Pose<'area', 'area'> = poseOf(x, y);
  return laid.images.flatMap((motion, image) =>
    laid.passes.flatMap((pass) => (pass.kind === 'found' ? [{ pass, image, path: carryPath(after(motion, toNeedle), pass.path) }] : [])),
  );
}

/** Placements of the chosen sheets. */
export function chosenPlacements(input: CheckInput): readonly LaidPlacement[] {
  return input.placements.filter((laid) => input.plan.sheets[laid.sheet]?.chosen === true);
}

const indexes = new WeakMap<CheckInput['lines'], ReadonlyMap<string, StitchedLine>>();

/** The stitched lines by their ids. */
export function lineById(input: CheckInput): ReadonlyMap<string, StitchedLine> {
  const known = indexes.get(input.lines);
  if (known) return known;
  const index = new Map(input.lines.map((line) => [line.id, line] as const));
  indexes.set(input.lines, index);
  return index;
}

/** The stitched lines that are this image of a pass, one for each area it is laid on. */
export function linesOfImage(input: CheckInput, laid: LaidPlacement, pass: string, image: number): readonly StitchedLine[] {
  const lines = lineById(input);
  return laid.areas.flatMap((area) => lines.get(`${area}/${laid.sheet}/${laid.placement}/${pass}/${image}`) ?? []);
}

/** The point of a path that lies farthest in a direction (a unit vector). */
export function farthest<F extends 'area' | 'quilt'>(path: Path<F>, way: Vec<F>): Point<F> | undefined {
  let best = startOf(path);
  const tryPoint = (p: Point<F>) => {
    if (!best || dot({ x: p.x - best.x, y: p.y - best.y }, way) > 0) best = p;
  };
  for (const s of segmentsOf(path)) {
    tryPoint(s.from);
    tryPoint(s.to);
    if (s.kind === 'arc' && partOfAngle(s, Math.atan2(way.y, way.x)) <= 1) tryPoint(moved(s.centre, way, s.radius));
  }
  return best;
}

/** Where the needle of a line goes down on the quilt. */
export function startOnQuilt(line: StitchedLine): Point<'quilt'> | undefined {
  const start = startOf(line.source);
  return start && moved(carry(line.to, start), line.needleOffset);
}

/** A clearance as it is kept: none where it is less than nothing, as the layout of the top says. */
export function soundClearance(asked: number): number {
  return Number.isFinite(asked) && asked > 0 ? asked : 0;
}
