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
    if (made.length > 0 && isChance(near.registration)) continue;
    const found = drawn(near);
    if (!found) continue;
    const { tried } = found;
    pose = tried.pose;
    kept.push(found.requirement);
    made.push({ ...near, registration: found.registration });
    if (tried.free === 0) break;
  }
  return { pose, made };

  /** What of a pull adds to what holds already: all of it or, of a line that runs through a place that is held, the way it points. */
  function drawn({ registration }: Near) {
    for (const asked of registration.put.startsWith('etching:') ? [registration, { ...registration, angle: 0 }] : [registration]) {
      const read = requirementOf(asked, setting);
      const tried = read.ok ? settle([...kept, read.value], pose, outline, true) : undefined;
      if (!read.ok || !tried || tried.overfixed || !isSmallMove(from, tried.pose, setting, reach)) continue;
      if (asked === registration || read.value.feature.kind === 'line') return { registration: asked, requirement: read.value, tried };
    }
    return undefined;
  }
}

/**
 * The needle line, or a tip near a line, when something else was lined up already: more often chance than meant, and it would turn
 * the template in a hand that only slides it.
 */
function isChance({ put, on }: Registration): boolean {
  return put.startsWith('needle-line') || (put.startsWith('tip:') && (on.startsWith('line:') || on.startsWith('stitched:')));
}

function says(all: readonly Registration[], one: Registration): boolean {
  return all.some((other) => other.put === one.put && other.on === one.on);
}

function isSmallMove(a: Laid, b: Laid, setting: PlaceSetting, reach: number): boolean {
  const middle = middleOfBounds<'template'>(boundsOf(setting.shape.outline)) ?? { x: 0, y: 0 };
  return distance(carry(a, middle), carry(b, middle)) <= 2 * reach && Math.abs(shortestTurn(a.angle - b.angle)) <= 2 * NEAR_ANGLE;
}
