// What is marked on the template picked out: its pins, the ends of its passes, the foot, and what draws it while it is in the hand.
// All places are on the quilt, in inches.

import { pointAlong } from '../../geometry/measure.ts';
import { nearestOnPath } from '../../geometry/nearest.ts';
import { type Point, type Vec, between, distance, moved, unit } from '../../geometry/point.ts';
import { type Pose, after, carry, carryVec } from '../../geometry/pose.ts';
import { lettersOf } from '../../num/letters.ts';
import type { LaidPlacement } from '../../stitch/laid-placement.ts';
import { requirementOf } from '../../place/place.ts';
import { type Requirement, equationsOf } from '../../place/requirement.ts';
import { edgeNamed } from '../kit/reach.ts';
import type { SessionState } from '../store.ts';
import { axesOf, laidOn, onTable, pickedOn } from './on-table.ts';
import { layingOf } from './setting.ts';
import { needlePose } from './trace.ts';

export interface Marks {
  readonly pins: readonly Pin[];
  readonly ends: readonly EndMark[];
  readonly ways: readonly WayMark[];
  readonly foot: FootMark | undefined;
  /** What is near and what it is near to. */
  readonly near: readonly [Point<'quilt'>, Point<'quilt'>] | undefined;
}

/** The sign of a registration where it holds the template. */
export interface Pin {
  readonly key: string;
  readonly at: Point<'quilt'>;
  /** `asked`: letting go now makes it; `in-the-way`: it cannot be met with the others, `to` is where it would have to be. */
  readonly kind: 'held' | 'asked' | 'in-the-way';
  readonly to?: Point<'quilt'>;
  /** Between the two, in inches. */
  readonly gap?: number;
}

/** An end of a pass: where the needle goes down or stops, its letter, and the mark to be drawn on the template there. */
export interface EndMark {
  readonly pass: string;
  readonly end: 'start' | 'stop';
  readonly letter: string;
  readonly at: Point<'quilt'>;
  /** Away from the template. */
  readonly outward: Vec<'quilt'>;
  readonly mark: readonly [Point<'quilt'>, Point<'quilt'>];
  readonly isPicked: boolean;
}

/** Which way a pass is sewn, at its middle. */
export interface WayMark {
  readonly pass: string;
  readonly at: Point<'quilt'>;
  readonly way: Vec<'quilt'>;
}

export interface FootMark {
  readonly needle: Point<'quilt'>;
  readonly centre: Point<'quilt'>;
  /** In inches. */
  readonly diameter: number;
}

/** The mark on a template is drawn so far in from its edge, in inches. */
const MARK = 3 / 8;

/** The marks of the one template picked out; undefined when none or several are. */
export function marksOn(state: SessionState): Marks | undefined {
  const on = onTable(state);
  const [only, ...others] = pickedOn(state.selection, on?.sheet?.id);
  const laid = on && only !== undefined && others.length === 0 ? laidOn(state, on, only) : undefined;
  const laying = laid && layingOf(state, laid.placement);
  if (!on || !laid || !laying) return undefined;
  const axes = axesOf(laid, on.area);
  const { setting, placement } = laying;
  const pass = state.selection.kind === 'placement' ? state.selection.pass : undefined;
  const asked = new Set((state.inHand?.made ?? []).map(({ registration }) => `${registration.put} ${registration.on}`));
  const against = laid.standing.kind === 'impossible' ? laid.standing.against : laid.standing.kind === 'unreadable' ? [laid.standing.registration] : [];

  const pins = placement.registrations.flatMap((registration, i): readonly Pin[] => {
    const read = requirementOf(registration, setting);
    const equations = read.ok ? equationsOf(read.value, laid.pose) : [];
    const equation = equations.at(-1);
    if (!read.ok || !equation) return [];
    const key = `${registration.put} ${registration.on} ${i}`;
    const at = carry(axes, whereHeld(read.value, equation.at, laid.pose));
    if (!against.includes(i)) return [{ key, at, kind: asked.has(`${registration.put} ${registration.on}`) ? 'asked' : 'held' }];
    // A place is missed in two directions at once; how far a line is turned moves nothing.
    const to = equations.reduce((place, { value, by: [x, y] }) => moved(place, { x, y }, -value), equation.at);
    return [{ key, at, kind: 'in-the-way', to: carry(axes, to), gap: distance(equation.at, to) }];
  });
  const near = state.inHand?.near;
  return {
    pins,
    ends: endMarks(laid, axes, after(needlePose(laying, laid.pose), axes), pass),
    ways: laid.passes.flatMap((found) => (found.kind === 'found' ? [wayMark(found, laid, axes)] : [])),
    foot: footMark(state, laid, after(laid.pose, axes), laying.foot.diameter, axes),
    near: near && [carry(axes, near.feature), carry(axes, near.landmark)],
  };
}

/** A pin that holds only the way an etched line points stands at that line's end, clear of the pins that hold its place. */
function whereHeld({ feature, angle, distance: asked }: Requirement, at: Point<'area'>, pose: Pose<'template', 'area'>): Point<'area'> {
  return angle !== undefined && asked === undefined && feature.kind === 'line' ? carry(pose, moved(feature.at, feature.way, feature.lever)) : at;
}

type Found = Extract<LaidPlacement['passes'][number], { kind: 'found' }>;

function endMarks(laid: LaidPlacement, axes: Pose<'area', 'quilt'>, needle: Pose<'template', 'quilt'>, picked: string | undefined): readonly EndMark[] {
  const toQuilt = after(laid.pose, axes);
  return laid.passes.flatMap((pass, i) => {
    if (pass.kind === 'missing') return [];
    const line = laid.needle.lines[pass.needleLine]!;
    const edge = edgeNamed(laid.template, line.from);
    // A pass all round stops where it starts: one letter is enough.
    const ends = pass.path.closed ? (['start'] as const) : (['start', 'stop'] as const);
    return ends.map((end): EndMark => {
      const place = pointAlong(line.path, end === 'start' ? pass.start : pass.stop).point;
      const touch = nearestOnPath(edge, place).point;
      const at = carry(needle, place);
      const edgeAt = carry(toQuilt, touch);
      const inward = unit(between(carry(toQuilt, place), edgeAt));
      return {
        pass: pass.pass,
        end,
        letter: lettersOf(2 * i + (end === 'start' ? 0 : 1)),
        at,
        outward: { x: -inward.x, y: -inward.y },
        mark: [edgeAt, moved(edgeAt, inward, MARK)],
        isPicked: pass.pass === picked,
      };
    });
  });
}

function wayMark(pass: Found, laid: LaidPlacement, axes: Pose<'area', 'quilt'>): WayMark {
  const middle = pointAlong(pass.path, pass.length / 2);
  const { x, y } = laid.needleOffset;
  const at = carry(axes, { x: middle.point.x + x, y: middle.point.y + y });
  const to = carry(axes, { x: middle.point.x + x + middle.tangent.x, y: middle.point.y + y + middle.tangent.y });
  return { pass: pass.pass, at, way: between(at, to) };
}

/** Where the foot stands: where it was last seen, or else where the first pass ends, or else at the start of the first needle line. */
function footMark(state: SessionState, laid: LaidPlacement, pose: Pose<'template', 'quilt'>, diameter: number, axes: Pose<'area', 'quilt'>): FootMark | undefined {
  const known = state.foot?.placement === laid.placement ? state.foot : undefined;
  const line = laid.needle.lines[known?.needleLine ?? 0];
  if (!line) return undefined;
  const first = laid.passes.find((pass) => pass.kind === 'found' && pass.needleLine === 0);
  const along = known?.along ?? (first?.kind === 'found' ? first.stop : 0);
  const centre = carry(pose, pointAlong(line.path, along).point);
  return { centre, needle: moved(centre, carryVec(axes, laid.needleOffset)), diameter };
}
