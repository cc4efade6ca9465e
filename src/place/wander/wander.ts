// Forgiveness: how far the needle line may stray when marks are lined up and the foot is held as closely as hands do it.
// Maths: first-order propagation of error (see grip.ts). Straying is measured square to the needle line; what slides along the line
// is not seen. The foot's error is one error for the whole line, and moves it away from the edge everywhere.

import { FREE_WAY } from '../../num/tolerances.ts';
import { pointAlong } from '../../geometry/measure.ts';
import type { Point, Vec } from '../../geometry/point.ts';
import { type Pose, carry, carryVec } from '../../geometry/pose.ts';
import type { TemplateShape } from '../../model/kit/shape.ts';
import type { NeedleLine } from '../../needle/needle-line.ts';
import { bodyOf } from '../register.ts';
import type { Requirement } from '../requirement.ts';
import { type Grip, awayAt, goes, gripOf } from './grip.ts';
import { type Slack, USUAL_SLACK } from './slack.ts';

/** A stretch of a needle line, in inches clockwise along it; where `to` is not beyond `from`, it runs over the line's start. */
export interface SewnStretch {
  readonly line: NeedleLine;
  readonly from: number;
  readonly to: number;
}

/** How far the needle may stray at one place of a stretch. */
export interface Stray {
  readonly at: Point<'area'>;
  /** Unit vector away from the template's edge, square to the needle line. */
  readonly away: Vec<'area'>;
  /** Inches clockwise along the needle line. */
  readonly along: number;
  /** By the marks alone, by the foot alone (signed: what of a needle line farther out is left), and by both; 95 % half-widths in inches. */
  readonly byMarks: number;
  readonly byFoot: number;
  readonly wide: number;
}

export type Wander =
  | {
      readonly kind: 'held';
      /** The widest of all places, 95 % half-width in inches. */
      readonly worst: number;
      /** For each stretch, places at even distances from its start to its end. */
      readonly bands: readonly (readonly Stray[])[];
    }
  /** The registrations let the needle line slip away. */
  | { readonly kind: 'free' };

export interface WanderSetting {
  readonly pose: Pose<'template', 'area'>;
  readonly shape: TemplateShape;
  /** All needle lines of the template with its foot. */
  readonly needle: readonly NeedleLine[];
  /** What is sewn of them. */
  readonly sewn: readonly SewnStretch[];
}

export interface WanderOptions {
  readonly slack?: Slack;
  /** Between two places that are told, at most, in inches. */
  readonly spacing?: number;
}

/** How far apart places of the band are told, in inches, when nothing else is asked. */
const USUAL_SPACING = 1 / 2;
const FEWEST_STEPS = 8;

/**
 * How far the sewn stretches may stray when a template is lined up by these registrations, which its pose meets; 95 % half-widths in
 * inches. A freedom that only slides a needle line along itself, such as turning a circle, is none.
 */
export function wander(holds: readonly Requirement[], setting: WanderSetting, options: WanderOptions = {}): Wander {
  const { pose, shape, needle, sewn } = setting;
  const slack = options.slack ?? USUAL_SLACK;
  const grip = gripOf(holds, pose, bodyOf(shape.outline), needle, slack);
  if (!grippedWell(grip, setting)) return { kind: 'free' };
  const bands = sewn.map((stretch) => placesAlong(stretch, options.spacing ?? USUAL_SPACING).map((along) => strayAt(stretch.line, along, pose, grip, slack)));
  return { kind: 'held', worst: Math.max(0, ...bands.flat().map(({ wide }) => wide)), bands };
}

/** Whether no freedom that is left moves any of the needle lines that are sewn, seen all round: a template that may turn must not leave its line. */
function grippedWell(grip: Grip, { pose, sewn }: WanderSetting): boolean {
  if (grip.free.length === 0) return true;
  if (grip.free.length === 3 || sewn.length === 0) return false;
  const lines = [...new Set(sewn.map(({ line }) => line))];
  return lines.every((line) =>
    roundOf(line).every((along) => {
      const { at, away } = placeOn(line, along, pose);
      return grip.free.every((way) => Math.abs(goes(way, grip, at, away)) <= Math.sqrt(FREE_WAY));
    }),
  );
}

/** Places all round a needle line: three on each of its pieces would do; even steps do as well and are quick. */
function roundOf({ length }: NeedleLine): readonly number[] {
  return Array.from({ length: 24 }, (_, i) => (i * length) / 24);
}

/** How far the needle may stray at a place of a needle line. */
export function strayAt(line: NeedleLine, along: number, pose: Pose<'template', 'area'>, grip: Grip, slack: Slack): Stray {
  const { at, away } = placeOn(line, along, pose);
  const byMarks = Math.hypot(...grip.byMarks.map((motion) => goes(motion, grip, at, away)));
  const byFoot = slack.foot + goes(grip.byFoot, grip, at, away);
  return { at, away, along, byMarks, byFoot, wide: Math.hypot(byMarks, byFoot) };
}

function placeOn(line: NeedleLine, along: number, pose: Pose<'template', 'area'>): { readonly at: Point<'area'>; readonly away: Vec<'area'> } {
  const { point, tangent } = pointAlong(line.path, along);
  return { at: carry(pose, point), away: carryVec(pose, awayAt(line, tangent)) };
}

function placesAlong({ line, from, to }: SewnStretch, spacing: number): readonly number[] {
  const length = to > from || !line.path.closed ? to - from : to - from + line.length;
  const steps = Math.max(FEWEST_STEPS, Math.ceil(Math.abs(length) / spacing));
  return Array.from({ length: steps + 1 }, (_, i) => from + (i * length) / steps);
}
