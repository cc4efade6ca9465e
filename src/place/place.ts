// Placing one placement: its registrations solved into a pose or, without any, the pose it was laid in by eye.

import { fromDegrees } from '../num/angle.ts';
import { type Outcome, fail, ok } from '../num/outcome.ts';
import { type Vec, scaled } from '../geometry/point.ts';
import { type Pose, poseOf } from '../geometry/pose.ts';
import type { TemplateShape } from '../model/kit/shape.ts';
import type { Placement, Registration } from '../model/plan.ts';
import type { NeedleLines } from '../needle/needle-line.ts';
import type { ReferenceLine } from '../top/area.ts';
import { directionOf, featureOf } from './feature.ts';
import { type Freedom, register } from './register.ts';
import { type Requirement, canMeet } from './requirement.ts';
import { type StitchedHere, targetMoved, targetOf } from './target.ts';

/** How a placement is held. */
export type Standing =
  | { readonly kind: 'by-eye' }
  | { readonly kind: 'free'; readonly freedom: Freedom }
  | { readonly kind: 'fixed' | 'overfixed' }
  /** Registrations (by index) that cannot all be met, and by how many inches the best try misses. */
  | { readonly kind: 'impossible'; readonly against: readonly number[]; readonly gap: number }
  /** A registration that names something that is not there, or two things that cannot be put together. */
  | { readonly kind: 'unreadable'; readonly registration: number; readonly detail: string };

export interface Placed {
  readonly pose: Pose<'template', 'area'>;
  readonly standing: Standing;
}

export interface PlaceSetting {
  readonly shape: TemplateShape;
  readonly needle: NeedleLines;
  readonly lines: readonly ReferenceLine[];
  readonly stitched: StitchedHere;
  /** From the foot's centre to the needle, in the area's own axes; none when left out. */
  readonly needleOffset?: Vec<'area'>;
}

/**
 * The pose of a placement in its area (inches, radians) and how it is held. Where the registrations cannot be met or read, it
 * keeps the pose it last had.
 */
export function place(placement: Placement, setting: PlaceSetting): Placed {
  const from = poseOf<'template', 'area'>(placement.pose.x, placement.pose.y, fromDegrees(placement.pose.angle), placement.flipped);
  if (placement.registrations.length === 0) return { pose: from, standing: { kind: 'by-eye' } };
  const requirements: Requirement[] = [];
  for (const [index, registration] of placement.registrations.entries()) {
    const read = requirementOf(registration, setting);
    if (!read.ok) return { pose: from, standing: { kind: 'unreadable', registration: index, detail: read.problem } };
    requirements.push(read.value);
  }
  const registered = register(requirements, { from, outline: setting.shape.outline, search: 'nearest' });
  if (registered.kind === 'impossible') return { pose: from, standing: { kind: 'impossible', against: registered.against, gap: registered.gap } };
  const pose = registered.poses[0] ?? from;
  return { pose, standing: registered.kind === 'free' ? { kind: 'free', freedom: registered.freedom } : { kind: registered.kind } };
}

/** A registration read against a template and an area, or a sentence saying what of it cannot be. */
export function requirementOf(registration: Registration, { shape, needle, lines, stitched, needleOffset }: PlaceSetting): Outcome<Requirement, string> {
  const feature = featureOf(registration.put, shape, needle);
  if (!feature.ok) return feature;
  const target = targetOf(registration.on, lines, stitched);
  if (!target.ok) return target;
  const direction = directionOf(registration.put, shape);
  const requirement: Requirement = {
    feature: feature.value,
    // The needle line is told by the foot's centre: where the needle falls elsewhere, what it is put on moves the other way.
    target: feature.value.kind === 'needle-line' && needleOffset ? targetMoved(target.value, scaled(needleOffset, -1)) : target.value,
    ...(registration.distance !== undefined && { distance: registration.distance }),
    ...(registration.angle !== undefined && { angle: registration.angle }),
    ...(direction && { direction }),
  };
  const quarrel = canMeet(requirement);
  return quarrel === undefined ? ok(requirement) : fail(quarrel);
}
