// A set-out made a sheet: the placement with the registrations that hold it, the pass from division to division, and the repeat along the border.
//
// Registrations are chosen by what hands can do at the table (an etched line on a line of the border, the needle through the mark where a
// division begins), and only kept when, solved, they give the very pose that was found; a border measured anew then finds its pose again. Where none do, the pose stands by itself.

import { toDegrees } from '../num/angle.ts';
import { EYE, JOINT, MET, NOT_LEFT, SAME_POINT } from '../num/tolerances.ts';
import { distance } from '../geometry/point.ts';
import { type Pose, carry, carryVec, inverse, poseOf } from '../geometry/pose.ts';
import type { Foot, Pass, PassEnd, Placement, Registration, Sheet, Side } from '../model/plan.ts';
import { type PlaceSetting, place } from '../place/place.ts';
import { unitRuns } from '../place/setout/pattern.ts';
import type { SetOutResult } from '../place/setout/result.ts';
import type { BorderResult } from '../place/setout/set-out-border.ts';
import type { UnitEnd } from '../place/setout/unit.ts';
import type { Ruler } from '../place/setout/wish.ts';
import type { Area, ReferenceLine } from '../top/area.ts';
import { crossingsAlong } from '../place/crossings.ts';
import { unitLines } from './unit-lines.ts';

/** The template and foot a set-out was made with, and what the sheet is to be called. */
export interface SetOutLaying {
  /** Ids in the kit. */
  readonly template: string;
  readonly foot: string;
  readonly ruler: Ruler;
  readonly needleOffset: Foot['needleOffset'];
  readonly name: string;
}

/** The sheet of one side's set-out, for the one area. */
export function sideSheet(result: SetOutResult, area: Area, laying: SetOutLaying): Sheet {
  return sheetFor(result, area, laying, laying.name, { only: [area.id] }, result.count);
}

/**
 * The sheets of a whole border's set-out: one for all four sides where one pose serves them, otherwise one for the top and bottom and one for
 * the left and right. `areas` are those of the top; sides that are not there are left out.
 */
export function borderSheets(result: BorderResult, border: number, areas: readonly Area[], laying: SetOutLaying): readonly Sheet[] {
  const sideArea = (side: Side) => areas.find((area) => area.kind === 'border-side' && area.border === border && area.side === side);
  const top = sideArea('top') ?? sideArea('bottom');
  const left = sideArea('left') ?? sideArea('right');
  if (!top || !left) return [];
  if (result.onePose) return [sheetFor(result.across, top, laying, laying.name, {}, result.counts)];
  const ids = (...sides: Side[]) => sides.flatMap((side) => sideArea(side)?.id ?? []);
  return [
    sheetFor(result.across, top, laying, `${laying.name}, top and bottom`, { only: ids('top', 'bottom') }, result.across.count),
    sheetFor(result.down, left, laying, `${laying.name}, left and right`, { only: ids('left', 'right') }, result.down.count),
  ];
}

type Count = number | { readonly [side in Side]?: number };

function sheetFor(result: SetOutResult, area: Area, laying: SetOutLaying, name: string, which: { readonly only?: readonly string[] }, count: Count): Sheet {
  return {
    name,
    for: { kind: 'border-side', ...(area.border !== undefined && { border: area.border }), ...which },
    chosen: true,
    placements: { unit: placementOf(result, area, laying) },
    repeat: [{ along: result.pattern, count }],
    fills: {},
  };
}

/** The placement of a unit in one division of an area, its pass started and stopped on the division lines wherever they say the place. */
export function placementOf(result: SetOutResult, area: Area, { template, foot, ruler, needleOffset: [x, y] }: SetOutLaying): Placement {
  const needleOffset = carryVec(inverse(area.frame), { x, y });
  const { unit } = result;
  const pose = poseOf<'template', 'area'>(unit.pose.x - needleOffset.x, unit.pose.y - needleOffset.y, unit.pose.angle, unit.pose.flipped);
  const lines = unitLines(area, result.count);
  const setting: PlaceSetting = { shape: ruler.shape, needle: ruler.needle, lines, stitched: new Map(), needleOffset };
  const bare: Placement = {
    template,
    foot,
    flipped: pose.flipped,
    pose: { x: pose.x, y: pose.y, angle: toDegrees(pose.angle) },
    registrations: [],
    passes: { unit: passOf(result, setting, pose) },
  };
  const holds = (registrations: readonly Registration[]) => {
    const placed = place({ ...bare, registrations }, setting);
    const { kind } = placed.standing;
    return registrations.length > 0 && kind !== 'impossible' && kind !== 'unreadable' && samePose(placed.pose, pose, unit);
  };
  const registrations = likely(result, area, setting, pose).find(holds) ?? [];
  return { ...bare, registrations };
}

function samePose(a: Pose<'template', 'area'>, b: Pose<'template', 'area'>, { start, stop }: SetOutResult['unit']): boolean {
  if (a.flipped !== b.flipped) return false;
  const back = inverse(b);
  return [start, stop].every(({ at }) => distance(carry(a, carry(back, at)), at) <= JOINT);
}

/** Sets of registrations worth trying, the ones that hold the template best first. */
function likely(result: SetOutResult, area: Area, { shape, lines }: PlaceSetting, pose: Pose<'template', 'area'>): readonly (readonly Registration[])[] {
  const put = result.edge === 'outline' ? 'needle-line' : `needle-line:${result.edge}`;
  const uprights: Registration[] = [];
  const levels: Registration[] = [];
  for (const etching of shape.etchings) {
    if (etching.kind !== 'line') continue;
    const [first, last] = [etching.path.vertices[0], etching.path.vertices.at(-1)];
    if (!first || !last) continue;
    const a = carry(pose, { x: first.x, y: first.y });
    const b = carry(pose, { x: last.x, y: last.y });
    const on = lines.find((line) => isUprightAt(line, a.x));
    if (Math.abs(a.x - b.x) <= MET && on) uprights.push({ put: `etching:${etching.id}`, on: `line:${on.id}` });
    // A line has its far side on the right as it runs from left to right: below it.
    if (Math.abs(a.y - b.y) <= MET) levels.push({ put: `etching:${etching.id}`, on: 'line:horizontal-centre', ...(Math.abs(a.y) > SAME_POINT && { distance: a.y }) });
  }
  const { start, stop } = result.unit;
  const ends = [start, stop].flatMap((end) => throughEnd(put, end, result.spacing));
  const touching: readonly Registration[] = unitRuns(result.pattern) === 'to-crest' ? [{ put, on: 'line:edge-top', distance: area.height / 2 + result.unit.extents.minY }] : [];
  return [
    ...uprights.flatMap((upright) => ends.map((end) => [upright, end])),
    ...levels.flatMap((level) => ends.map((end) => [level, end])),
    ...uprights.flatMap((upright) => levels.map((level) => [upright, level])),
    ...(ends.length > 1 || touching.length > 0 ? [[...ends, ...touching]] : []),
    ...ends.map((end) => [end]),
  ];
}

function isUprightAt(line: ReferenceLine, x: number): boolean {
  return line.path.vertices.length === 2 && line.path.vertices.every((vertex) => Math.abs(vertex.x - x) <= MET);
}

/** The needle line through the place where the centre line meets a division, when the unit ends there. */
function throughEnd(put: string, { at }: UnitEnd, spacing: number): readonly Registration[] {
  if (Math.abs(at.y) > SAME_POINT || Math.abs(Math.abs(at.x) - spacing / 2) > MET) return [];
  return [{ put, on: `crossing:${at.x < 0 ? 'division-start' : 'division-end'},horizontal-centre` }];
}

function passOf(result: SetOutResult, setting: PlaceSetting, pose: Pose<'template', 'area'>): Pass {
  const { unit, edge, loop } = result;
  const end = (at: UnitEnd) => endOf(at, result, setting, pose);
  return { ...(edge !== 'outline' && { edge }), ...(loop > 0 && { loop }), start: end(unit.start), stop: end(unit.stop), way: unit.way };
}

/** By the division line it lies on, when the needle line crosses that line there plainly; else by its distance along the needle line. */
function endOf(end: UnitEnd, { edge, loop, spacing }: SetOutResult, { needle, lines, needleOffset = { x: 0, y: 0 } }: PlaceSetting, pose: Pose<'template', 'area'>): PassEnd {
  const line = needle.lines.find((each) => each.from === edge && each.loop === loop);
  const id = Math.abs(end.at.x) < spacing / 4 ? 'vertical-centre' : end.at.x < 0 ? 'division-start' : 'division-end';
  const reference = lines.find((each) => each.id === id);
  if (!line || !reference) return { along: end.along };
  const crossings = crossingsAlong(reference, line, { pose, needleOffset });
  const apart = (a: number) => Math.min(Math.abs(a - end.along), line.length - Math.abs(a - end.along));
  const nth = crossings.findIndex((along) => apart(along) <= NOT_LEFT) + 1;
  // Where it only grazes the line, a hair's breadth decides which crossing is which.
  const others = crossings.filter((along) => apart(along) > NOT_LEFT && apart(along) < EYE);
  return nth === 0 || others.length > 0 ? { along: end.along } : { crosses: `line:${id}`, ...(nth > 1 && { nth }) };
}
