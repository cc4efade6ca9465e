// A medallion of n parts round the centre: where the template lies so that the ring closes, or how far it misses.
//
// The rule "cross on this line, tip on the next" (or "this etched line along this line") leaves one thing open: how far from the centre.
// Maths: the poses of the rule in closed form (round-poses.ts); along them what is wanted - neighbours that just touch, ends that come equally
// far out on both lines, a needle line square on its mirror - is looked for on a row of places and closed in on by halving.

import { TURN } from '../../num/angle.ts';
import { SAME_NUMBER, SAME_POINT } from '../../num/tolerances.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import { meetPaths } from '../../geometry/meet-paths.ts';
import { pointAlong } from '../../geometry/measure.ts';
import { carryPath } from '../../geometry/change.ts';
import type { Path } from '../../geometry/path.ts';
import { dot, heading } from '../../geometry/point.ts';
import { turnAbout } from '../../geometry/pose.ts';
import type { NeedleLine } from '../../needle/needle-line.ts';
import type { PlaceSetting } from '../place.ts';
import { footLine, roundOutline } from './laid-line.ts';
import { type Ring, type RoundRepeat, crossingsOut, ringOf } from './ring.ts';
import { type RoundPoses, THIS_LINE, roundPoses } from './round-poses.ts';

export interface MedallionRule {
  /** How many parts; with `mirror-and-turn`, each with its mirror image. */
  readonly count: number;
  readonly repeat: RoundRepeat;
  /** What lies on this line, straight up from the centre: a mark, or an etched line along it; as a registration's `put`. */
  readonly put: string;
  /** A mark on the next line: a part of the round further, or half a part with `mirror-and-turn`. */
  readonly tip?: string;
  /** From the centre to `put` (of an etched line, to its middle), in inches; where it is left out, the distances that close are found. */
  readonly from?: number;
  /** No farther from the centre than this, in inches. */
  readonly reach: number;
}

/**
 * Rings that close, or for a given distance the rings as they are, those that close first and then by how little they miss (or kink);
 * or a sentence saying what of the rule cannot be. No ring at all is an empty list.
 */
export function medallion(rule: MedallionRule, setting: PlaceSetting): Outcome<readonly Ring[], string> {
  const line = roundOutline(setting);
  if (!line) return fail('The template gives no needle line with this foot.');
  if (!Number.isInteger(rule.count) || rule.count < 2) return fail('A medallion has at least two parts.');
  const families = roundPoses(rule.put, rule.tip, stepTo(rule), setting);
  if (!families.ok) return families;
  const found = families.value.flatMap((poses) => (rule.from === undefined ? closings(rule, line, poses) : [rule.from]).flatMap((from) => ringAt(rule, line, poses, from) ?? []));
  return ok([...distinct(found)].sort((a, b) => Number(a.closes === 'apart') - Number(b.closes === 'apart') || Math.abs(a.apart) - Math.abs(b.apart) || (a.kink ?? 0) - (b.kink ?? 0)));
}

/** How a medallion does with other counts, at the same rule. */
export interface CountTried {
  readonly count: number;
  readonly closes: boolean;
  /** The best ring there is. */
  readonly ring: Ring | undefined;
}

/** Which counts close, of those given (3 to 24 when left out). */
export function countsTried(rule: MedallionRule, setting: PlaceSetting, counts: readonly number[] = Array.from({ length: 22 }, (_, i) => i + 3)): readonly CountTried[] {
  return counts.map((count) => {
    const rings = medallion({ ...rule, count }, setting);
    const ring = rings.ok ? rings.value[0] : undefined;
    return { count, closes: ring !== undefined && ring.closes !== 'apart', ring };
  });
}

function stepTo({ count, repeat }: MedallionRule): number {
  return repeat === 'turn' ? TURN / count : TURN / (2 * count);
}

function ringAt({ count, repeat }: MedallionRule, line: NeedleLine, poses: RoundPoses, from: number): Ring | undefined {
  const pose = poses(from);
  return pose && ringOf(footLine(line, pose), pose, from, count, repeat);
}

/** How many places are looked at from the centre outward. */
const PLACES = 96;
const HALVINGS = 60;

/** The distances at which the ring closes in one of the ways wanted of it. */
function closings(rule: MedallionRule, line: NeedleLine, poses: RoundPoses): readonly number[] {
  const lineAt = (from: number): Path<'area'> | undefined => {
    const pose = poses(from);
    return pose && footLine(line, pose);
  };
  const froms = Array.from({ length: PLACES + 1 }, (_, i) => (i * rule.reach) / PLACES);
  if (rule.repeat === 'mirror-and-turn') return zeros(froms, (from) => squareness(lineAt(from)));
  const touching = changes(froms, (from) => neighboursMeet(lineAt(from), rule.count));
  return rule.tip === undefined ? touching : [...touching, ...zeros(froms, (from) => endsOut(lineAt(from), rule.count))];
}

function neighboursMeet(line: Path<'area'> | undefined, count: number): boolean | undefined {
  return line && meetPaths(line, carryPath(turnAbout({ x: 0, y: 0 }, TURN / count), line)).length > 0;
}

/** How much farther out each crossing of the next line lies than each of this line. */
function endsOut(line: Path<'area'> | undefined, count: number): readonly number[] {
  if (!line) return [];
  const starts = crossingsOut(line, THIS_LINE);
  return crossingsOut(line, THIS_LINE + TURN / count).flatMap((stop) => starts.map((start) => stop.out - start.out));
}

/** How far each crossing of this line is from square on it. */
function squareness(line: Path<'area'> | undefined): readonly number[] {
  return line ? crossingsOut(line, THIS_LINE).map(({ along }) => dot(pointAlong(line, along).tangent, heading(THIS_LINE))) : [];
}

/** Where some of several values passes nought; stretches over which values come or go are left out, and those on which a value stays nought. */
function zeros(places: readonly number[], valuesAt: (place: number) => readonly number[]): readonly number[] {
  const all = places.map(valuesAt);
  return places.slice(1).flatMap((b, i) => {
    const a = places[i]!;
    const [first, last] = [all[i]!, all[i + 1]!];
    if (first.length !== last.length) return [];
    return first.flatMap((value, k) => {
      if (Math.abs(value) <= SAME_POINT || value * last[k]! > 0 || Math.abs(last[k]!) <= SAME_POINT) return Math.abs(value) > SAME_POINT && Math.abs(last[k]!) <= SAME_POINT && notStill(all[i + 2]?.[k]) ? [b] : [];
      let [low, high] = [a, b];
      for (let n = 0; n < HALVINGS; n++) {
        const middle = (low + high) / 2;
        const now = valuesAt(middle);
        if (now.length !== first.length) return [];
        if (now[k]! * value > 0) low = middle;
        else high = middle;
      }
      return Math.abs(valuesAt(high)[k] ?? Infinity) <= Math.sqrt(SAME_NUMBER) ? [high] : [];
    });
  });
}

function notStill(value: number | undefined): boolean {
  return value === undefined || Math.abs(value) > SAME_POINT;
}

/** Where an answer changes, told by the last place with the answer yes. */
function changes(places: readonly number[], answer: (place: number) => boolean | undefined): readonly number[] {
  const all = places.map(answer);
  return places.slice(1).flatMap((b, i) => {
    const [first, last] = [all[i], all[i + 1]];
    if (first === undefined || last === undefined || first === last) return [];
    let [low, high] = [places[i]!, b];
    for (let n = 0; n < HALVINGS; n++) {
      const middle = (low + high) / 2;
      if (answer(middle) === first) low = middle;
      else high = middle;
    }
    return [first ? low : high];
  });
}

/** Symmetric templates give the same ring in several poses: of rings that sew the same, the first. */
function distinct(rings: readonly Ring[]): readonly Ring[] {
  return rings.filter((ring, i) => !rings.slice(0, i).some((other) => isSame(ring, other)));
}

function isSame(a: Ring, b: Ring): boolean {
  return (
    a.pose.flipped === b.pose.flipped && Math.abs(a.from - b.from) <= SLACK && Math.hypot(a.pose.x - b.pose.x, a.pose.y - b.pose.y) <= SLACK && Math.abs(Math.sin((a.pose.angle - b.pose.angle) / 2)) <= SLACK
  );
}

/** What two searches leave between one and the same ring, in inches. */
const SLACK = 1e3 * SAME_POINT;
