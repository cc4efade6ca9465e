// The pull of a landmark: where a template that is almost lined up would go if the hand let it.

import { distance } from '../geometry/point.ts';
import { type Pose, carry } from '../geometry/pose.ts';
import { middleOfBounds, boundsOf } from '../geometry/bounds.ts';
import { shortestTurn } from '../num/angle.ts';
import { NEAR_ANGLE } from '../num/tolerances.ts';
import type { Registration } from '../model/plan.ts';
import { type Near, nearThings } from './near.ts';
import { type PlaceSetting, requirementOf } from './place.ts';
import { settle } from './register.ts';
import type { Requirement } from './requirement.ts';

type Laid = Pose<'template', 'area'>;

export interface Snapped {
  readonly pose: Laid;
  /** What was pulled to what; the nearest first, at most as many as the pose can keep. */
  readonly made: readonly Near[];
}

/** How many pulls are tried; more would not be felt by a hand. */
const TRIED = 6;

/**
 * Where a template goes from a wished pose: held to the registrations it keeps and then pulled to what lies within `reach` inches,
 * one landmark after another as long as it moves no farther than that. Without any pull, the wished pose within its freedom.
 */
export function snap(setting: PlaceSetting, held: readonly Registration[], wished: Laid, reach: number): Snapped {
  const outline = setting.shape.outline;
  const kept: Requirement[] = held.flatMap((registration) => {
    const read = requirementOf(registration, setting);
    return read.ok ? [read.value] : [];
  });
  let pose = kept.length > 0 ? (settle(kept, wished, outline)?.pose ?? wished) : wished;
  const made: Near[] = [];
  const from = pose;
  for (const near of nearThings(setting, pose, reach).slice(0, TRIED)) {
    if (says(held, near.registration) || says(made.map((m) => m.registration), near.registration)) continue;
    const read = requirementOf(near.registration, setting);
    if (!read.ok) continue;
    const tried = settle([...kept, read.value], pose, outline);
    if (!tried || tried.overfixed || !isSmallMove(from, tried.pose, setting, reach)) continue;
    pose = tried.pose;
    kept.push(read.value);
    made.push(near);
    if (tried.free === 0) break;
  }
  return { pose, made };
}

function says(all: readonly Registration[], one: Registration): boolean {
  return all.some((other) => other.put === one.put && other.on === one.on);
}

function isSmallMove(a: Laid, b: Laid, setting: PlaceSetting, reach: number): boolean {
  const middle = middleOfBounds<'template'>(boundsOf(setting.shape.outline)) ?? { x: 0, y: 0 };
  return distance(carry(a, middle), carry(b, middle)) <= 2 * reach && Math.abs(shortestTurn(a.angle - b.angle)) <= 2 * NEAR_ANGLE;
}
