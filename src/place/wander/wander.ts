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
import { type Grip, awayAt, goes, gripOf, gripParts } from './grip.ts';
import { type Slack, USUAL_SLACK } from './slack.ts';

/** A stretch of a needle line, in inches clockwise along it; where `to` is not beyond `from`, it runs over the line's start. */
export interface SewnStretch {
  readonly line: NeedleLine;
  readonly from: number;
  readonly to: number;
}

/** How far the needle may stray at one place of a stretch. */
export interface Stray extends NeedlePlace {
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
  const body = bodyOf(shape.outline);
  const grip = gripOf(holds.flatMap((held) => gripParts(held, pose, body, needle, slack)), pose, body, slack);
  if (!isHeld(grip, placesRound(setting))) return { kind: 'free' };
  const bands = sewn.map((stretch) => placesAlong(stretch, pose, options.spacing ?? USUAL_SPACING).map((place) => strayAt(place, grip, slack)));
  return { kind: 'held', worst: Math.max(0, ...bands.flat().map(({ wide }) => wide)), bands };
}

/** A place of a laid needle line. */
export interface NeedlePlace {
  readonly at: Point<'area'>;
  /** Unit vector away from the template's edge, square to the needle line. */
  readonly away: Vec<'area'>;
  /** Inches clockwise along the needle line. */
  readonly along: number;
}

/**
 * Whether no freedom that is left moves the needle lines at these places. They are taken all round, not only where it is sewn: a template
 * that may turn must not leave its line.
 */
export function isHeld(grip: Grip, round: readonly NeedlePlace[]): boolean {
  if (grip.free.length === 0) return true;
  if (grip.free.length === 3 || round.length === 0) return false;
  return round.every(({ at, away }) => grip.free.every((way) => Math.abs(goes(way, grip, at, away)) <= Math.sqrt(FREE_WAY)));
}

/** Places all round the needle lines that are sewn: even steps, enough to see a line that does not run on itself. */
export function placesRound({ pose, sewn }: Pick<WanderSetting, 'pose' | 'sewn'>): readonly NeedlePlace[] {
  const lines = [...new Set(sewn.map(({ line }) => line))];
  return lines.flatMap((line) => Array.from({ length: 24 }, (_, i) => placeOn(line, (i * line.length) / 24, pose)));
}

/** Places at even distances along a stretch, both ends included, no more than `spacing` inches apart. */
export function placesAlong({ line, from, to }: SewnStretch, pose: Pose<'template', 'area'>, spacing: number): readonly NeedlePlace[] {
  const length = to > from || !line.path.closed ? to - from : to - from + line.length;
  const steps = Math.max(FEWEST_STEPS, Math.ceil(Math.abs(length) / spacing));
  return Array.from({ length: steps + 1 }, (_, i) => placeOn(line, from + (i * length) / steps, pose));
}

/** How far the needle may stray at a place. */
export function strayAt({ at, away, along }: NeedlePlace, grip: Grip, slack: Slack): Stray {
  // Summed by hand: this is asked very often while marks are chosen.
  let squares = 0;
  for (const motion of grip.byMarks) squares += goes(motion, grip, at, away) ** 2;
  const byMarks = Math.sqrt(squares);
  const byFoot = slack.foot + goes(grip.byFoot, grip, at, away);
  return { at, away, along, byMarks, byFoot, wide: Math.sqrt(squares + byFoot * byFoot) };
}

function placeOn(line: NeedleLine, along: number, pose: Pose<'template', 'area'>): NeedlePlace {
  const { point, tangent } = pointAlong(line.path, along);
  return { at: carry(pose, point), away: carryVec(pose, awayAt(line, tangent)), along };
}
