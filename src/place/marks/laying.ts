// What the choice of marks reads: a template as it is laid, with the lines there are to line it up on.

import { JOIN, SAME_MARK, SAME_NUMBER } from '../../num/tolerances.ts';
import { type Point, type Vec, angleOf, between, cross, dot, quarterTurned } from '../../geometry/point.ts';
import { type Pose, carry, carryVec } from '../../geometry/pose.ts';
import { type Path, segmentsOf } from '../../geometry/path.ts';
import type { NeedleLine } from '../../needle/needle-line.ts';
import type { ReferenceLine } from '../../top/area.ts';
import { extended } from '../../top/extended.ts';
import { shortestTurn, toDegrees } from '../../num/angle.ts';
import type { SewnStretch } from '../wander/wander.ts';

/** One laying of a template, and the images the repeat makes of it. */
export interface Laying {
  /** Told back with what is found for it. */
  readonly id: string;
  readonly pose: Pose<'template', 'area'>;
  /** The reference lines of its area or, of a repeat along it, of one division. */
  readonly lines: readonly ReferenceLine[];
  /** Of a repeat along the area, the length of one division, in inches: upright lines come again after it. */
  readonly period?: number;
  /** Different ways in which it comes to lie among its lines; the first is the laying itself. */
  readonly images: readonly LaidImage[];
  /** All needle lines of the template with its foot, and what is sewn of them. */
  readonly needle: readonly NeedleLine[];
  readonly sewn: readonly SewnStretch[];
  /** Whether the needle is in the middle of the foot; where it is not, the needle line does not turn with the template and nothing is lined up by it. */
  readonly centred: boolean;
}

export interface LaidImage {
  readonly motion: Pose<'area', 'area'>;
  /** Which images of the repeat lie this way. */
  readonly numbers: readonly number[];
}

/** A straight reference line, ready for measuring. */
export interface Rule {
  readonly line: ReferenceLine;
  readonly at: Point<'area'>;
  readonly way: Vec<'area'>;
  readonly length: number;
  /** A seam or the raw edge: there to be seen, nothing to draw. */
  readonly seen: boolean;
  /** As far as people line up on it: what is drawn with a long ruler goes on beyond its ends, a seam does not. */
  readonly path: Path<'area'>;
  /** The same for every line that is drawn at one go: all division lines are one. */
  readonly key: string;
}

/** The straight lines of a laying; nothing is marked by curved ones. */
export function rulesOf({ lines, period }: Pick<Laying, 'lines' | 'period'>): readonly Rule[] {
  return lines.flatMap((line): readonly Rule[] => {
    const segments = segmentsOf(line.path);
    const only = segments[0];
    if (segments.length !== 1 || only?.kind !== 'line') return [];
    const way = between(only.from, only.to);
    const length = Math.hypot(way.x, way.y);
    if (length <= JOIN) return [];
    const seen = line.kind === 'edge';
    return [{ line, at: only.from, way: { x: way.x / length, y: way.y / length }, length, seen, path: seen ? line.path : extended(line.path), key: keyOf(line, period) }];
  });
}

function keyOf(line: ReferenceLine, period: number | undefined): string {
  if (line.kind === 'division') return 'division';
  return period !== undefined && line.id === 'vertical-centre' ? 'division-middle' : line.id;
}

/** How far to the right of a rule a place lies, in inches. */
export function heightOver(rule: Pick<Rule, 'at' | 'way'>, p: Point<'area'>): number {
  return dot(quarterTurned(rule.way), between(rule.at, p));
}

/** Whether a place lies on a rule as nearly as a mark is drawn; of a seam, between its ends. */
export function liesOn(rule: Rule, p: Point<'area'>): boolean {
  if (Math.abs(heightOver(rule, p)) > SAME_MARK) return false;
  const along = dot(rule.way, between(rule.at, p));
  return !rule.seen || (along >= -JOIN && along <= rule.length + JOIN);
}

/** Whether two rules run the same way or against each other. */
export function areParallel(a: Vec<'area'>, b: Vec<'area'>): boolean {
  return Math.abs(cross(a, b)) <= Math.sqrt(SAME_NUMBER);
}

/** A rule as one image has it: a line that is there already, or one more to draw. */
export interface RuleImage {
  readonly key: string;
  readonly name: string;
  readonly seen: boolean;
  readonly at: Point<'area'>;
  readonly way: Vec<'area'>;
}

/** Which line an image brings a rule onto. */
export function imageOfRule(rule: Rule, motion: Pose<'area', 'area'>, rules: readonly Rule[], period?: number): RuleImage {
  const at = carry(motion, rule.at);
  const way = carryVec(motion, rule.way);
  const upright = Math.abs(way.x) <= Math.sqrt(SAME_NUMBER);
  const parallel = rules.filter((other) => areParallel(other.way, way));
  const offBy = (other: Rule) => Math.abs(heightOver(other, at));
  const comesAgain = (other: Rule) => period !== undefined && upright && !other.seen && Math.abs(offBy(other) - Math.round(offBy(other) / period) * period) <= SAME_MARK;
  const same = parallel.find((other) => offBy(other) <= SAME_MARK) ?? parallel.find(comesAgain);
  if (same) return { key: same.key, name: same.line.name, seen: same.seen, at, way };
  const lean = toDegrees(shortestTurn(2 * angleOf(way)) / 2);
  const off = dot(quarterTurned(way), between({ x: 0, y: 0 }, at));
  const degrees = Math.round(Math.abs(toDegrees(shortestTurn(motion.angle))) * 100) / 100;
  const name = motion.flipped ? `mirror image of the ${rule.line.name}` : `${rule.line.name} turned ${degrees} degrees`;
  return { key: `${Math.round(lean * 100)}/${Math.round(Math.abs(off) * 1000)}/${lean > 0 === off > 0 ? '+' : '-'}`, name, seen: false, at, way };
}
