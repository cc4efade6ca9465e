// All inner seams of a top, each once. Neighbours share seams, and seams in line with each other make one line.

import { type Path, straight } from '../geometry/path.ts';
import { type Point, point } from '../geometry/point.ts';
import { SAME_ANGLE, SAME_POINT } from '../num/tolerances.ts';

export interface StraightSeam {
  readonly from: Point<'quilt'>;
  readonly to: Point<'quilt'>;
}

/** The union of straight seams, in quilt coordinates: whatever overlaps or touches end to end in one line becomes one path. */
export function mergedSeams(seams: readonly StraightSeam[]): readonly Path<'quilt'>[] {
  const rules = seams.map(onItsRule).sort((a, b) => a.angle - b.angle || a.offset - b.offset || a.start - b.start);
  return groupsOf(rules, (a, b) => b.angle - a.angle <= SAME_ANGLE).flatMap((parallel) => {
    const inOrder = [...parallel].sort((a, b) => a.offset - b.offset);
    return groupsOf(inOrder, (a, b) => b.offset - a.offset <= SAME_POINT).flatMap(unionOnRule);
  });
}

/** A stretch of an endless straight line, which is told by its direction and its distance from the origin. */
interface OnRule {
  /** In [0, pi). */
  readonly angle: number;
  readonly offset: number;
  readonly start: number;
  readonly end: number;
}

function onItsRule({ from, to }: StraightSeam): OnRule {
  let angle = Math.atan2(to.y - from.y, to.x - from.x);
  if (angle < -SAME_ANGLE) angle += Math.PI;
  if (angle > Math.PI - SAME_ANGLE) angle -= Math.PI;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const a = cos * from.x + sin * from.y;
  const b = cos * to.x + sin * to.y;
  return { angle, offset: cos * from.y - sin * from.x, start: Math.min(a, b), end: Math.max(a, b) };
}

/** Runs of neighbours in a sorted list that belong together. */
function groupsOf<Item>(items: readonly Item[], together: (a: Item, b: Item) => boolean): readonly (readonly Item[])[] {
  const groups: Item[][] = [];
  items.forEach((item, i) => {
    const last = groups[groups.length - 1];
    if (last && together(items[i - 1]!, item)) last.push(item);
    else groups.push([item]);
  });
  return groups;
}

function unionOnRule(stretches: readonly OnRule[]): readonly Path<'quilt'>[] {
  const rule = stretches[0];
  if (!rule) return [];
  const [cos, sin] = [Math.cos(rule.angle), Math.sin(rule.angle)];
  const at = (along: number): Point<'quilt'> => point(cos * along - sin * rule.offset, sin * along + cos * rule.offset);
  const paths: Path<'quilt'>[] = [];
  const inOrder = [...stretches].sort((a, b) => a.start - b.start);
  let { start, end } = inOrder[0]!;
  for (const next of inOrder) {
    if (next.start > end + SAME_POINT) {
      paths.push(straight(at(start), at(end)));
      start = next.start;
      end = next.end;
    } else end = Math.max(end, next.end);
  }
  return [...paths, straight(at(start), at(end))];
}
