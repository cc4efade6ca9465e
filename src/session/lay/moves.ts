// How a template goes where the hand wishes: held by its registrations, let go by a pull, drawn to what lies near.

import { mirrorAcross, after, carry, turnAbout } from '../../geometry/pose.ts';
import { type Point, distance } from '../../geometry/point.ts';
import { boundsOf, middleOfBounds } from '../../geometry/bounds.ts';
import { MET, NOT_LEFT } from '../../num/tolerances.ts';
import type { TemplateShape } from '../../model/kit/shape.ts';
import type { Registration } from '../../model/plan.ts';
import { type Near, nearThings } from '../../place/near.ts';
import { type PlaceSetting, requirementOf } from '../../place/place.ts';
import { settle } from '../../place/register.ts';
import { equationsOf } from '../../place/requirement.ts';
import { snap } from '../../place/snap.ts';
import type { Laid } from './placed.ts';

export interface Wish {
  /** Where the hand would have the template. */
  readonly pose: Laid;
  /** Where it lay when the hand took it. */
  readonly from: Laid;
  /** The place of the template the hand holds it by. */
  readonly grip: Point<'template'>;
  /** Landmarks within so many inches draw it; 0 lays by eye. */
  readonly reach: number;
  /** A registration is let go when the hand is so many inches away from where it holds the template. */
  readonly pull: number;
}

export interface Moved {
  readonly pose: Laid;
  /** What still holds it of the registrations it had. */
  readonly held: readonly Registration[];
  /** What it was drawn to; these become registrations when the hand lets go. */
  readonly made: readonly Near[];
  /** What is close but does not draw it yet. */
  readonly near: Near | undefined;
}

/** A landmark is told of from so many times as far as it draws. */
const TOLD_FROM = 2;

/** Where a template goes for a wish, in the axes it is laid in. */
export function moveTo(setting: PlaceSetting, registrations: readonly Registration[], wish: Wish): Moved {
  const held = stillHeld(setting, registrations, wish);
  if (wish.reach <= 0) return { pose: held.pose, held: held.by, made: [], near: undefined };
  if (held.by.length > 0 && (!held.isMet || held.isFixed)) return { pose: held.pose, held: held.by, made: [], near: undefined };
  const { pose, made } = snap(setting, held.by, wish.pose, wish.reach);
  const told = made.length > 0 ? undefined : nearThings(setting, pose, TOLD_FROM * wish.reach).find((near) => isTold(near, held.by));
  return { pose, held: held.by, made, near: told };
}

/** The needle line is always near something; what already holds needs no telling. */
function isTold({ registration }: Near, held: readonly Registration[]): boolean {
  return !registration.put.startsWith('needle-line') && !held.some(({ put, on }) => put === registration.put && on === registration.on);
}

interface Holding {
  readonly by: readonly Registration[];
  readonly pose: Laid;
  readonly isMet: boolean;
  /** It cannot move at all. */
  readonly isFixed: boolean;
}

/** The registrations that a pull does not tear, and the pose they keep the template in. */
function stillHeld(setting: PlaceSetting, registrations: readonly Registration[], wish: Wish): Holding {
  let holding = heldBy(setting, registrations, wish);
  while (holding.by.length > 0 && pullOf(holding, wish) > wish.pull) {
    const without = holding.by.map((_, i) => heldBy(setting, holding.by.filter((__, j) => j !== i), wish));
    // The one that stood most in the way goes; of several, the one made last.
    holding = without.reduce((best, next) => (pullOf(next, wish) <= pullOf(best, wish) + MET ? next : best));
  }
  return holding;
}

function heldBy({ shape, ...rest }: PlaceSetting, registrations: readonly Registration[], wish: Wish): Holding {
  if (registrations.length === 0) return { by: registrations, pose: wish.pose, isMet: true, isFixed: false };
  const requirements = registrations.map((registration) => requirementOf(registration, { shape, ...rest }));
  const read = requirements.flatMap((one) => (one.ok ? [one.value] : []));
  const readable = read.length === requirements.length;
  // What is fixed stays: a hand that moves far does not mean another pose that would do as well.
  const still = readable ? settle(read, wish.from, shape.outline) : undefined;
  if (still?.free === 0 && liesSame(still.pose, wish.from, shape)) return { by: registrations, pose: wish.from, isMet: true, isFixed: true };
  const settled = readable ? settle(read, wish.pose, shape.outline) : undefined;
  // What cannot be met holds the template where it last could lie.
  return settled ? { by: registrations, pose: settled.pose, isMet: true, isFixed: false } : { by: registrations, pose: wish.from, isMet: false, isFixed: false };
}

function liesSame(a: Laid, b: Laid, { outline }: TemplateShape): boolean {
  const { minX, minY, maxX, maxY } = boundsOf(outline);
  return [{ x: minX, y: minY }, { x: maxX, y: maxY }].every((end) => distance(carry(a, end), carry(b, end)) <= NOT_LEFT);
}

function pullOf({ pose }: Holding, { pose: wished, grip }: Wish): number {
  return distance(carry(pose, grip), carry(wished, grip));
}

/** The registrations that a pose keeps. */
export function keptIn(setting: PlaceSetting, registrations: readonly Registration[], pose: Laid): readonly Registration[] {
  return registrations.filter((registration) => {
    const read = requirementOf(registration, setting);
    return read.ok && equationsOf(read.value, pose).every(({ value }) => Math.abs(value) <= NOT_LEFT);
  });
}

/** The middle of a template's extent, about which it turns when nothing else holds it. */
export function middleOf(shape: TemplateShape): Point<'template'> {
  return middleOfBounds<'template'>(boundsOf(shape.outline)) ?? { x: 0, y: 0 };
}

/** The place of the template that a turn leaves where it is: one that is pinned, or else its middle. */
export function turningPlace(setting: PlaceSetting, registrations: readonly Registration[]): Point<'template'> {
  for (const registration of registrations) {
    const read = requirementOf(registration, setting);
    if (read.ok && read.value.feature.kind === 'point') return read.value.feature.at;
  }
  return middleOf(setting.shape);
}

/** Turned clockwise by an angle in radians about a place of the template. */
export function turned(pose: Laid, about: Point<'template'>, angle: number): Laid {
  return after(pose, turnAbout(carry(pose, about), angle));
}

/** Turned over about its own upright axis: what lay on the axis stays where it is. */
export function flipped(shape: TemplateShape, pose: Laid): Laid {
  return after(mirrorAcross<'template'>(middleOf(shape), Math.PI / 2), pose);
}
