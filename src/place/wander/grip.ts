// How a set of registrations grips a template: what a small error of each does to the pose.
// Maths: with J the equations' derivatives at the pose and e the errors, the pose that lines up best moves by J+ e, the pseudo-inverse
// (J^T J)+ J^T, which also is what a Gauss-Newton search comes to when the errors are small (propagation of error, first order).

import { FREE_WAY } from '../../num/tolerances.ts';
import { nearestOnPath } from '../../geometry/nearest.ts';
import { pointAlong } from '../../geometry/measure.ts';
import { type Point, type Vec, quarterTurned, scaled } from '../../geometry/point.ts';
import { type Pose, carry, carryVec, inverse } from '../../geometry/pose.ts';
import type { NeedleLine } from '../../needle/needle-line.ts';
import { type Row, type Triple, freeWays, spreadOf } from '../least-squares.ts';
import { type Body, rowsAt } from '../register.ts';
import { type Requirement, equationsOf } from '../requirement.ts';
import { type Slack, slackOf } from './slack.ts';

/** Motions are (x, y, turn times reach) of the template about its middle, in inches. */
export interface Grip {
  readonly middle: Point<'area'>;
  readonly reach: number;
  /** Motions the registrations do not hinder, as unit vectors. */
  readonly free: readonly Triple[];
  /** For each equation, the motion that its slack makes. */
  readonly byMarks: readonly Triple[];
  /** The motion made by a needle line that lies farther out by the foot's slack, where registrations line up the needle line. */
  readonly byFoot: Triple;
}

/** One equation of a registration at the pose, with what is known of its error. */
export interface GripPart {
  readonly row: Row;
  /** 95 % half-width of the value's error, in inches. */
  readonly slack: number;
  /** How the value changes as the needle line moves one inch away from the edge: 0 for marks on the face. */
  readonly outward: number;
}

/** The equations of a requirement that the pose meets, ready to be put together with others of the same pose. */
export function gripParts(held: Requirement, pose: Pose<'template', 'area'>, body: Body, needle: readonly NeedleLine[], slack: Slack): readonly GripPart[] {
  const slacks = slackOf(held, slack);
  const outward = outwardOf(held, pose, needle);
  return rowsAt([held], pose, body).map((row, i) => ({ row, slack: slacks[i] ?? slack.mark, outward: outward[i] ?? 0 }));
}

/** The grip of equations taken together; without any, everything is free. */
export function gripOf(parts: readonly GripPart[], pose: Pose<'template', 'area'>, body: Body, slack: Slack): Grip {
  const rows = parts.map(({ row }) => row);
  const columns = pseudoInverse(rows);
  const byMarks = columns.map((column, i) => times(column, parts[i]!.slack));
  const byFoot = columns.reduce<Triple>((sum, column, i) => plus(sum, times(column, -parts[i]!.outward * slack.foot)), [0, 0, 0]);
  return { middle: carry(pose, body.middle), reach: body.reach, free: freeWays(rows), byMarks, byFoot };
}

/** How far a place of the template goes in a direction when the template makes a motion, in inches. */
export function goes([x, y, turn]: Triple, { middle, reach }: Grip, at: Point<'area'>, way: Vec<'area'>): number {
  return x * way.x + y * way.y + (turn / reach) * ((at.x - middle.x) * way.y - (at.y - middle.y) * way.x);
}

/** Columns of (J^T J)+ J^T, one for each row of J. */
function pseudoInverse(rows: readonly Row[]): readonly Triple[] {
  const { sizes, ways } = spreadOf(rows);
  return rows.map(({ by }) =>
    ways.reduce<Triple>((sum, way, i) => {
      const size = sizes[i]!;
      if (Math.sqrt(Math.max(0, size)) <= FREE_WAY) return sum;
      return plus(sum, times(way, (way[0] * by[0] + way[1] * by[1] + way[2] * by[2]) / size));
    }, [0, 0, 0]),
  );
}

function outwardOf(held: Requirement, pose: Pose<'template', 'area'>, needle: readonly NeedleLine[]): readonly number[] {
  return equationsOf(held, pose).map(({ at, by: [x, y] }) => {
    if (held.feature.kind !== 'needle-line') return 0;
    const { paths } = held.feature;
    const lines = needle.filter((line) => paths.includes(line.path));
    const away = awayFromEdge(lines, pose, at);
    return away ? x * away.x + y * away.y : 0;
  });
}

function awayFromEdge(lines: readonly NeedleLine[], pose: Pose<'template', 'area'>, at: Point<'area'>): Vec<'area'> | undefined {
  const place = carry(inverse(pose), at);
  let best: { readonly distance: number; readonly away: Vec<'template'> } | undefined;
  for (const line of lines) {
    const near = nearestOnPath(line.path, place);
    if (!best || near.distance < best.distance) best = { distance: near.distance, away: awayAt(line, pointAlong(line.path, near.along).tangent) };
  }
  return best && carryVec(pose, best.away);
}

/** Away from the edge, on the etched face: needle lines run clockwise, outside an outline and inside a window. */
export function awayAt(line: NeedleLine, tangent: Vec<'template'>): Vec<'template'> {
  return scaled(quarterTurned(tangent), line.from === 'outline' ? -1 : 1);
}

function plus(a: Triple, b: Triple): Triple {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

function times(a: Triple, by: number): Triple {
  return [a[0] * by, a[1] * by, a[2] * by];
}
