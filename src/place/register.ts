// Solving registrations: from "put the cross on the centre line, the tip on the diagonal" to the pose of the template.
// Maths: damped Gauss-Newton on three unknowns from several starts (see least-squares.ts); the freedom that is left is the null
// space of the equations at the solution, tried with a finite move so that only true slides and turns are called so.

import { TURN, shortestTurn } from '../num/angle.ts';
import { MET, SAME_ANGLE, SAME_NUMBER, SAME_POINT } from '../num/tolerances.ts';
import { boundsOf, middleOfBounds } from '../geometry/bounds.ts';
import { type Point, type Vec, between, cross, distance, dot, moved, plus, quarterTurned, scaled, unit } from '../geometry/point.ts';
import { type Pose, after, carry, mirrorAcross, turnAbout } from '../geometry/pose.ts';
import type { Path } from '../geometry/path.ts';
import { type Row, type Triple, freeWays, step } from './least-squares.ts';
import { type Requirement, equationsOf } from './requirement.ts';

type Laid = Pose<'template', 'area'>;

/** What a placement can still do without leaving its registrations. */
export type Freedom =
  | { readonly kind: 'anywhere' }
  | { readonly kind: 'slide'; readonly along: Vec<'area'> }
  | { readonly kind: 'turn'; readonly about: Point<'area'> }
  /** It can slide and turn at once, along no simple path. */
  | { readonly kind: 'slide-and-turn' }
  /** Two ways of moving are open: it can slide along and turn. */
  | { readonly kind: 'slide-or-turn'; readonly along: Vec<'area'> }
  /** It can slide any way but not turn. */
  | { readonly kind: 'slide-anyhow' };

export type Registered =
  /** `poses` are ranked by nearness to where the template lay; the first is the one to take. */
  | { readonly kind: 'free'; readonly poses: readonly Laid[]; readonly freedom: Freedom }
  | { readonly kind: 'fixed' | 'overfixed'; readonly poses: readonly Laid[] }
  /** `against`: the smallest set of registrations (by index) that cannot all be met; `gap`: by how many inches the best try misses one of them. */
  | { readonly kind: 'impossible'; readonly against: readonly number[]; readonly gap: number; readonly pose: Laid };

export interface RegisterOptions {
  /** Where the template lies now. */
  readonly from: Laid;
  /** The template's outline, so that nearness is measured by how far its body moves. */
  readonly outline: Path<'template'>;
  /** `nearest` takes the first pose the search comes to from where the template lies; `all` looks for every distinct one. */
  readonly search?: 'nearest' | 'all';
  /** With `either`, poses with the other face up are looked for as well; otherwise the face stays as it lies. */
  readonly faces?: 'as-laid' | 'either';
}

/** The poses that meet all requirements, in inches and radians, or which of them stand in each other's way. */
export function register(requirements: readonly Requirement[], options: RegisterOptions): Registered {
  const body = bodyOf(options.outline);
  const laid = solve(requirements, options.from, body, options.search === 'nearest');
  const over = options.faces === 'either' && (options.search !== 'nearest' || laid.length === 0) ? solve(requirements, turnedOver(options.from, body), body, options.search === 'nearest') : [];
  const solutions = nearestFirst([...laid, ...over], options.from, body);
  const first = solutions[0];
  if (!first) return conflict(requirements, options.from, body);
  const freedom = freedomAt(requirements, first, body);
  if (freedom) return { kind: 'free', poses: solutions, freedom };
  return { kind: rowsAt(requirements, first, body).length > 3 ? 'overfixed' : 'fixed', poses: solutions };
}

// ---- the search ----

/** The middle of a template and how far its body reaches, so that turning and sliding are weighed by how far the body moves. */
export interface Body {
  readonly middle: Point<'template'>;
  readonly reach: number;
  readonly corners: readonly Point<'template'>[];
}

/** The middle of an outline's extent and how far it reaches from there, in inches. */
export function bodyOf(outline: Path<'template'>): Body {
  const b = boundsOf(outline);
  const middle = middleOfBounds<'template'>(b) ?? { x: 0, y: 0 };
  const reach = Math.max(0.5, Math.hypot(b.maxX - b.minX, b.maxY - b.minY) / 2);
  return { middle, reach, corners: [{ x: b.minX, y: b.minY }, { x: b.maxX, y: b.minY }, { x: b.maxX, y: b.maxY }, { x: b.minX, y: b.maxY }] };
}

const TURNS_TRIED = 12;
const STEPS_TRIED = 60;
/** A step that gains less than this part of what is left leads to no solution. */
const SLOW = 1e-4;

/** The distinct poses that meet the requirements and can be reached from the starts, nearest first; or the first found. */
function solve(requirements: readonly Requirement[], from: Laid, body: Body, firstWillDo: boolean): readonly Laid[] {
  const found: Laid[] = [];
  for (const start of starts(requirements, from, body)) {
    const { pose, gap } = descend(requirements, start, body);
    if (gap > MET) continue;
    const freedom = freedomAt(requirements, pose, body);
    // With ways left free, every start ends in a pose of its own: those that differ by a slide or turn are one solution, told by
    // its pose nearest to where the template lay.
    if (firstWillDo || (freedom && freedom.kind !== 'slide' && freedom.kind !== 'turn')) return [pose];
    const nearest = nearestInFreedom(pose, freedom, from, body);
    const meant = largest(rowsAt(requirements, nearest, body)) <= MET ? nearest : pose;
    if (!found.some((other) => moveBetween(other, meant, body) < SAME_SOLUTION)) found.push(meant);
  }
  return nearestFirst(found, from, body);
}

/** Two poses that move the body by less than this are one solution, in inches: what double solutions are found to. */
const SAME_SOLUTION = 1e4 * MET;

function nearestFirst(poses: readonly Laid[], from: Laid, body: Body): readonly Laid[] {
  return [...poses].sort((a, b) => moveBetween(from, a, body) - moveBetween(from, b, body));
}

/** Turned over about its own upright middle line, which stays where it is. */
function turnedOver(pose: Laid, body: Body): Laid {
  return after(mirrorAcross<'template'>(body.middle, Math.PI / 2), pose);
}

/** The pose slid or turned as it is free to, so as to lie as it did before as nearly as can be. */
function nearestInFreedom(pose: Laid, freedom: Freedom | undefined, from: Laid, body: Body): Laid {
  if (freedom?.kind === 'turn') return after(pose, turnAbout(freedom.about, from.angle - pose.angle));
  if (freedom?.kind !== 'slide') return pose;
  const back = dot(between(carry(pose, body.middle), carry(from, body.middle)), freedom.along);
  return { ...pose, x: pose.x + freedom.along.x * back, y: pose.y + freedom.along.y * back };
}

function* starts(requirements: readonly Requirement[], from: Laid, body: Body): Generator<Laid> {
  yield from;
  const middle = carry(from, body.middle);
  const startAt = (place: Point<'area'>, turn: number): Laid => {
    const turned = after(from, turnAbout(middle, turn));
    return { ...turned, x: turned.x + place.x - middle.x, y: turned.y + place.y - middle.y };
  };
  const places = [middle, ...requirements.flatMap(({ target }) => (target.kind === 'curve' ? [] : [target.at]))];
  for (const place of places) {
    for (let i = 0; i < TURNS_TRIED; i++) if (i > 0 || place !== middle) yield startAt(place, (i * TURN) / TURNS_TRIED);
  }
  for (const place of placesBeside(requirements, middle, body.reach)) {
    for (let i = 0; i < TURNS_TRIED / 2; i++) yield startAt(place, (2 * i * TURN) / TURNS_TRIED);
  }
}

/**
 * Places on either side of every line and in every angle between two lines: a needle line or curve that touches a line may lie on
 * either side, and no search goes from one side to the other.
 */
function placesBeside(requirements: readonly Requirement[], middle: Point<'area'>, reach: number): readonly Point<'area'>[] {
  if (!requirements.some(({ feature: { kind } }) => kind === 'needle-line' || kind === 'curve')) return [];
  const lines = requirements.flatMap(({ target }) => (target.kind === 'line' ? [target] : []));
  const beside = lines.flatMap(({ at, way }) => {
    const foot = moved(at, way, dot(between(at, middle), way));
    return [-1, 1].map((side) => moved(foot, quarterTurned(way), side * reach));
  });
  const inAngles = lines.flatMap((a, i) =>
    lines.slice(i + 1).flatMap((b) => {
      const sine = cross(a.way, b.way);
      if (Math.abs(sine) <= SAME_ANGLE) return [];
      const crossing = moved(a.at, a.way, cross(between(a.at, b.at), b.way) / sine);
      return [[1, 1], [1, -1], [-1, 1], [-1, -1]].map(([f, g]) => moved(crossing, unit(plus(scaled(a.way, f!), scaled(b.way, g!))), reach));
    }),
  );
  return [...inAngles, ...beside];
}

/** Goes down to the nearest least of the requirements' gaps from a start; `gap` is the largest left, in inches. */
function descend(requirements: readonly Requirement[], start: Laid, body: Body, rowsOf = rowsAt, slow = SLOW): { readonly pose: Laid; readonly gap: number } {
  let pose = start;
  let rows = rowsOf(requirements, pose, body);
  let cost = costOf(rows);
  let damping = 1e-3;
  for (let i = 0; i < STEPS_TRIED && cost > 0; i++) {
    const tried = movedBy(pose, step(rows, damping), body);
    const triedRows = rowsOf(requirements, tried, body);
    const triedCost = costOf(triedRows);
    if (triedCost < cost) {
      const gain = cost - triedCost;
      pose = tried;
      rows = triedRows;
      cost = triedCost;
      damping = Math.max(damping * 0.01, 1e-18);
      if (gain <= cost * slow && largest(rows) > MET) break;
    } else if (largest(rows) <= MET && damping <= 1e-15) {
      break;
    } else {
      damping = Math.max(damping * 10, 1e-6);
      if (damping > 1e6) break;
    }
  }
  return { pose, gap: largest(rows) };
}

/** The equations with the angle weighed by the reach of the body, turning about the template's middle. */
export function rowsAt(requirements: readonly Requirement[], pose: Laid, body: Body): readonly Row[] {
  const middle = carry(pose, body.middle);
  return requirements.flatMap((required) =>
    equationsOf(required, pose).map(({ value, by: [x, y, angle] }) => {
      const aboutMiddle = angle - (x * -(middle.y - pose.y) + y * (middle.x - pose.x));
      return { value, by: [x, y, aboutMiddle / body.reach] as const };
    }),
  );
}

function movedBy(pose: Laid, [x, y, turn]: Triple, body: Body): Laid {
  const turned = after(pose, turnAbout(carry(pose, body.middle), turn / body.reach));
  return { ...turned, x: turned.x + x, y: turned.y + y };
}

function costOf(rows: readonly Row[]): number {
  return rows.reduce((sum, { value }) => sum + value * value, 0);
}

function largest(rows: readonly Row[]): number {
  return rows.reduce((most, { value }) => Math.max(most, Math.abs(value)), 0);
}

/** How far the body moves from one pose to another, at its farthest corner, in inches. */
function moveBetween(a: Laid, b: Laid, body: Body): number {
  return Math.max(...body.corners.map((corner) => distance(carry(a, corner), carry(b, corner))));
}

// ---- what is left free ----

/** The ways a pose that meets the requirements can still move; undefined when it cannot. */
function freedomAt(requirements: readonly Requirement[], pose: Laid, body: Body): Freedom | undefined {
  const ways = freeWays(rowsAt(requirements, pose, body));
  return ways.length === 0 ? undefined : freedomOf(requirements, pose, ways, body);
}

function freedomOf(requirements: readonly Requirement[], pose: Laid, ways: readonly Triple[], body: Body): Freedom {
  if (ways.length === 3) return { kind: 'anywhere' };
  if (ways.length === 2) return twoWays(ways);
  const way = ways[0]!;
  const stays = (tried: Laid) => largest(rowsAt(requirements, tried, body)) <= 1e3 * MET;
  const [x, y, turn] = way;
  if (Math.abs(turn) <= Math.sqrt(SAME_POINT)) {
    const along = unit<'area'>({ x, y });
    const slid = { ...pose, x: pose.x + along.x / 4, y: pose.y + along.y / 4 };
    return stays(slid) ? { kind: 'slide', along } : { kind: 'slide-and-turn' };
  }
  const rate = turn / body.reach;
  const middle = carry(pose, body.middle);
  const about: Point<'area'> = { x: middle.x - y / rate, y: middle.y + x / rate };
  return stays(after(pose, turnAbout(about, 0.25))) ? { kind: 'turn', about } : { kind: 'slide-and-turn' };
}

function twoWays([a, b]: readonly Triple[]): Freedom {
  // The mixture of the two ways that does not turn is the slide.
  const slide: Triple = [a![0] * b![2] - b![0] * a![2], a![1] * b![2] - b![1] * a![2], 0];
  if (Math.abs(a![2]) <= Math.sqrt(SAME_POINT) && Math.abs(b![2]) <= Math.sqrt(SAME_POINT)) return { kind: 'slide-anyhow' };
  return { kind: 'slide-or-turn', along: unit({ x: slide[0], y: slide[1] }) };
}

// ---- what stands in the way ----

function conflict(requirements: readonly Requirement[], from: Laid, body: Body): Registered {
  const against = smallestConflict(requirements, from, body);
  let best: { readonly pose: Laid; readonly gap: number } | undefined;
  const quarrel = against.map((i) => requirements[i]!);
  for (const start of starts(quarrel, from, body)) {
    const tried = descend(quarrel, start, body);
    if (!best || tried.gap < best.gap - MET) best = tried;
  }
  const gap = best ? descend(quarrel, best.pose, body, rowsAt, SAME_NUMBER).gap : 0;
  return { kind: 'impossible', against, gap, pose: from };
}

/** The smallest set of requirements that no pose meets; of several as small, the first. */
function smallestConflict(requirements: readonly Requirement[], from: Laid, body: Body): readonly number[] {
  const all = requirements.map((_, i) => i);
  for (let size = 1; size < all.length; size++) {
    for (const subset of subsets(all, size)) {
      if (solve(subset.map((i) => requirements[i]!), from, body, true).length === 0) return subset;
    }
  }
  return all;
}

function subsets(items: readonly number[], size: number): readonly (readonly number[])[] {
  if (size === 0) return [[]];
  return items.flatMap((item, i) => subsets(items.slice(i + 1), size - 1).map((rest) => [item, ...rest]));
}

/** Where one search from a pose ends. */
export interface Settled {
  readonly pose: Laid;
  /** Ways of moving that are still open, 0 to 3. */
  readonly free: number;
  /** More is asked than three unknowns can give, and all of it is met. */
  readonly overfixed: boolean;
}

/**
 * For a moving hand: the pose nearest to the wished one that meets the requirements, by one search from there and no other;
 * undefined when it ends anywhere else. A hand that slides does not mean to turn: where sliding alone does it and leaves a way to slide
 * on, the template is not turned; with `canStand`, also where it then stands still.
 */
export function settle(requirements: readonly Requirement[], wished: Laid, outline: Path<'template'>, canStand = false): Settled | undefined {
  const body = bodyOf(outline);
  const { pose, gap } = slidOnly(requirements, wished, body, canStand) ?? descend(requirements, wished, body);
  if (gap > MET) return undefined;
  const rows = rowsAt(requirements, pose, body);
  const free = freeWays(rows).length;
  return { pose: { ...pose, angle: shortestTurn(pose.angle) }, free, overfixed: rows.length > 3 - free };
}

/** Met by sliding alone; undefined when that is not enough or, unless it may come to stand, when it could then slide no more. */
function slidOnly(requirements: readonly Requirement[], wished: Laid, body: Body, canStand: boolean) {
  const slid = descend(requirements, wished, body, unturned);
  if (slid.gap > MET) return undefined;
  // Turning is among the ways that rows without it leave free.
  return canStand || freeWays(unturned(requirements, slid.pose, body)).length > 1 ? slid : undefined;
}

function unturned(requirements: readonly Requirement[], pose: Laid, body: Body): readonly Row[] {
  return rowsAt(requirements, pose, body).map(({ value, by: [x, y] }) => ({ value, by: [x, y, 0] as const }));
}
