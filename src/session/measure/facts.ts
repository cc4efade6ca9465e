// The facts on the tape under the table, about the template in hand or picked out and the sheet on the table.

import { type Bounds, boundsOf, grownBounds, middleOfBounds } from '../../geometry/bounds.ts';
import { carryPath } from '../../geometry/change.ts';
import { whereIs } from '../../geometry/inside.ts';
import type { Path } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { type Pose, after, carry, poseOf } from '../../geometry/pose.ts';
import { shortestTurn, toDegrees } from '../../num/angle.ts';
import { laidImages, soundClearance } from '../../check/stitched.ts';
import { nearestLine, nearestSeam } from '../../space/clearances.ts';
import { extentOf, linesNear } from '../../space/lines-near.ts';
import { type RoomLeft, roomLeft } from '../../space/room-left.ts';
import type { LaidPlacement } from '../../stitch/laid-placement.ts';
import { quiltPath } from '../../stitch/quilt-path.ts';
import type { StitchedLine } from '../../stitch/stitched-line.ts';
import type { Area } from '../../top/area.ts';
import { areaAt } from '../area-at.ts';
import { type OnTable, laidOn, onTable, pickedOn } from '../lay/on-table.ts';
import { type SessionState, planOf } from '../store.ts';
import { onQuilt } from '../view.ts';

export interface Facts {
  /** Inches to the nearest seam or raw edge of the area, less than 0 beyond it. */
  readonly seam: { readonly distance: number; readonly name: string } | undefined;
  /** Inches to the nearest line of another placement or sheet; 0 where they meet. */
  readonly line: { readonly distance: number; readonly name: string } | undefined;
  readonly room: { readonly circle: RoomLeft<'quilt'>; readonly area: Area | undefined; readonly isHere: boolean } | undefined;
  /** All that is sewn of the sheet on this area, and of it the one placement, in inches. */
  readonly length: { readonly sheet: number; readonly placement: number | undefined; readonly lines: number };
  /** How the template lies, degrees clockwise, -180 to 180. */
  readonly angle: number | undefined;
}

/** A line farther off than this, in inches, is not a neighbour. */
const NEIGHBOUR = 12;
/** The space is looked for so far beyond the area, in inches, and no farther than half its size. */
const BEYOND = 9;

/** The facts about what lies on the table; undefined when nothing does. */
export function factsOf(state: SessionState): Facts | undefined {
  const on = onTable(state);
  if (!on) return undefined;
  const laid = placementInQuestion(state, on);
  const length = lengthsOf(state, on, laid);
  return {
    seam: toSeam(laid ? [laid] : onSheet(state, on), on.area),
    line: laid && toLine(state, on, laid),
    room: roomAt(state, on, laid),
    length,
    angle: laid && toDegrees(shortestTurn(laid.pose.angle)),
  };
}

/** The placement in hand or picked first, as it is laid on the area on the table. */
export function placementInQuestion(state: SessionState, on: OnTable): LaidPlacement | undefined {
  const id = state.inHand?.placements[0] ?? pickedOn(state.selection, on.sheet?.id)[0];
  return id === undefined ? undefined : laidOn(state, on, id);
}

// ---- seam ----

/** Of the placement in question or, without one, of all that the sheet sews here. */
function toSeam(placements: readonly LaidPlacement[], area: Area): Facts['seam'] {
  const nearest = nearestSeam(placements.flatMap(needlePaths), area);
  if (!nearest) return undefined;
  const name = area.referenceLines.find(({ id }) => id === nearest.seam.id)?.name ?? 'seam';
  return { distance: nearest.distance, name: nearest.seam.kind === 'raw' ? `raw ${name}` : name };
}

/** Every image of its passes or, while nothing is traced, of the needle line all round, in the area's axes. */
function needlePaths(laid: LaidPlacement): readonly Path<'area'>[] {
  const sewn = laidImages(laid).map(({ path }) => path);
  if (sewn.length > 0) return sewn;
  const { x, y } = laid.needleOffset;
  const offset: Pose<'area', 'area'> = poseOf(x, y);
  return laid.images.flatMap((image) => laid.needle.lines.map((line) => carryPath(after(after(laid.pose, image), offset), line.path)));
}

// ---- other lines ----

function toLine(state: SessionState, on: OnTable, laid: LaidPlacement): Facts['line'] {
  const paths = needlePaths(laid).map((path) => carryPath(on.area.frame, path));
  const others = linesNear(neighbours(state, on), state.evaluation.top.areas, grownBounds(extentOf(on.area), NEIGHBOUR)).filter(
    (line) => !(line.sheet === laid.sheet && line.placement === laid.placement && line.area === on.area.id),
  );
  const nearest = nearestLine(paths, others, NEIGHBOUR);
  return nearest && { distance: nearest.distance, name: nameOfLine(state, on, nearest.line) };
}

function nameOfLine(state: SessionState, on: OnTable, line: StitchedLine): string {
  const plan = planOf(state);
  const sheet = plan.sheets[line.sheet];
  const placement = sheet?.placements[line.placement];
  const name = placement?.name ?? plan.kit.templates[placement?.template ?? '']?.name ?? line.placement;
  if (line.area !== on.area.id) return `${name} in ${state.evaluation.top.areas.find(({ id }) => id === line.area)?.name ?? 'the next area'}`;
  return line.sheet === on.sheet?.id ? name : `${name} on ${sheet?.name ?? 'another sheet'}`;
}

/** The placements of the sheet on the table, and of the sheets that are sewn where it does not take their place. */
function neighbours(state: SessionState, on: OnTable): readonly LaidPlacement[] {
  const { sheets } = planOf(state);
  const mine = new Set(on.sheet ? on.areas.map(({ id }) => id) : []);
  return state.evaluation.placements.filter(
    (laid) => laid.sheet === on.sheet?.id || (sheets[laid.sheet]?.chosen === true && !laid.areas.some((id) => mine.has(id))),
  );
}

// ---- room ----

function roomAt(state: SessionState, on: OnTable, laid: LaidPlacement | undefined): Facts['room'] {
  const { top, plan } = state.evaluation;
  const from = placeAskedAbout(state, on, laid);
  if (whereIs(top.rawEdge, from) === 'outside' || top.keepOuts.some(({ outline }) => whereIs(outline, from) === 'inside')) return undefined;
  const within = grownBounds(extentOf(on.area), Math.min(BEYOND, Math.max(on.area.width, on.area.height) / 2));
  const around = grownBounds(within, NEIGHBOUR);
  const lines = linesNear(neighbours(state, on), top.areas, around);
  const circle = roomLeft(
    [
      ...lines.map((line) => ({ path: quiltPath(line) })),
      { path: top.rawEdge, keep: soundClearance(plan.top.clearance.rawEdge) },
      ...top.keepOuts.map(({ outline, clearance }) => ({ path: outline, keep: soundClearance(clearance) })),
    ],
    from,
    onTop(within, top.width, top.height),
  );
  if (!circle) return undefined;
  const area = areaAt(top, circle.at);
  return { circle, area, isHere: area?.id === on.area.id };
}

/** Under the pointer; while a template is in hand, or the pointer is not over the table, at the template's middle or the area's. */
function placeAskedAbout(state: SessionState, { area }: OnTable, laid: LaidPlacement | undefined): Point<'quilt'> {
  if (state.pointer && !state.inHand) return onQuilt(state.view, state.pointer);
  const middle = laid && middleOfBounds<'template'>(boundsOf(laid.template.outline));
  const first = laid?.images[0];
  if (laid && middle && first) return carry(after(after(laid.pose, first), area.frame), middle);
  return carry(area.frame, { x: 0, y: 0 });
}

function onTop(within: Bounds, width: number, height: number): Bounds {
  return { minX: Math.max(0, within.minX), minY: Math.max(0, within.minY), maxX: Math.min(width, within.maxX), maxY: Math.min(height, within.maxY) };
}

// ---- length ----

/** The placements of the sheet on the table, as they are laid on the area. */
function onSheet(state: SessionState, { sheet, area }: OnTable): readonly LaidPlacement[] {
  return sheet ? state.evaluation.placements.filter((laid) => laid.sheet === sheet.id && laid.areas.includes(area.id)) : [];
}

function lengthsOf(state: SessionState, on: OnTable, of: LaidPlacement | undefined): Facts['length'] {
  const here = onSheet(state, on);
  const sewn = (laid: LaidPlacement) => laid.images.length * laid.passes.reduce((sum, pass) => sum + (pass.kind === 'found' ? pass.length : 0), 0);
  const count = (laid: LaidPlacement) => laid.images.length * laid.passes.filter(({ kind }) => kind === 'found').length;
  return { sheet: here.reduce((sum, laid) => sum + sewn(laid), 0), placement: of && sewn(of), lines: here.reduce((sum, laid) => sum + count(laid), 0) };
}
