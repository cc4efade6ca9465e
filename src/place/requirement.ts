// Registrations as equations: what each asks of a pose, in inches, and how that changes as the template moves.
// The unknowns are the template's place (x, y) and its angle. For a feature P carried to the area, moving the template by
// (dx, dy) and turning it by da moves P by (dx, dy) + da * (P - origin) turned a quarter. Every value is a length, so that
// registrations of different kinds weigh alike: an angle counts by the lever it acts on.

import { fromDegrees, shortestTurn } from '../num/angle.ts';
import { SAME_NUMBER, SAME_POINT } from '../num/tolerances.ts';
import { pathLength, pointAlong } from '../geometry/measure.ts';
import { nearestOnPath } from '../geometry/nearest.ts';
import { type Path, segmentsOf } from '../geometry/path.ts';
import { type Frame, type Point, type Vec, angleOf, between, distance, dot, moved, quarterTurned, scaled, unit } from '../geometry/point.ts';
import { type Pose, carry, carryVec, inverse } from '../geometry/pose.ts';
import { partOfAngle, tangentOnSegment } from '../geometry/segment.ts';
import type { Feature } from './feature.ts';
import type { Target } from './target.ts';

/** One registration, read: put a feature on a target, perhaps at a distance or an angle. */
export interface Requirement {
  readonly feature: Feature;
  readonly target: Target;
  readonly distance?: number;
  /** Degrees clockwise from the target's direction to the feature's. */
  readonly angle?: number;
  /** Where the feature points on the template, when an angle is asked. */
  readonly direction?: Vec<'template'>;
}

/** How far from met a pose leaves one equation, in inches, and how that changes with x, y and the angle. */
export interface Equation {
  readonly value: number;
  readonly by: readonly [x: number, y: number, angle: number];
  /** Where the template is measured. */
  readonly at: Point<'area'>;
}

type Laid = Pose<'template', 'area'>;

/** The equations a requirement asks of a pose; none when the two cannot be put together (see `canMeet`). */
export function equationsOf(required: Requirement, pose: Laid): readonly Equation[] {
  const equations: Equation[] = [];
  const { feature, target } = required;
  const turning = required.angle !== undefined || (feature.kind === 'line' && target.kind === 'line');
  if (turning && target.kind === 'line') equations.push(turned(required, target, pose));
  if (required.angle !== undefined && required.distance === undefined && feature.kind === 'line') return equations;
  const off = required.distance ?? 0;
  switch (target.kind) {
    case 'point':
      return [...equations, ...onPoint(feature, target.at, off, pose)];
    case 'line':
      return [...equations, ...onLine(feature, target, off, pose)];
    case 'curve':
      return [...equations, ...onCurve(feature, target.path, off, pose)];
  }
}

/** Whether the two kinds can be put on each other; if not, why, in words. */
export function canMeet({ feature, target, angle, direction }: Requirement): string | undefined {
  if (angle !== undefined && target.kind !== 'line') return `An angle can only be asked of a straight line, and the ${target.name} is none.`;
  if (angle !== undefined && !direction) return `The ${feature.name} points nowhere, so it cannot be turned to an angle.`;
  if (target.kind === 'curve' && feature.kind === 'line') return `The ${feature.name} is straight and cannot lie along the ${target.name}.`;
  if (target.kind === 'curve' && feature.kind === 'needle-line') return `Use an echo to bring the needle line along the ${target.name}.`;
  return undefined;
}

// ---- onto a point ----

function onPoint(feature: Feature, q: Point<'area'>, off: number, pose: Laid): readonly Equation[] {
  switch (feature.kind) {
    case 'point': {
      const p = carry(pose, feature.at);
      if (off === 0) return [alongNormal(p.x - q.x, { x: 1, y: 0 }, p, pose), alongNormal(p.y - q.y, { x: 0, y: 1 }, p, pose)];
      const away = distance(p, q);
      return [alongNormal(away - Math.abs(off), away > SAME_POINT ? unit(between(q, p)) : { x: 1, y: 0 }, p, pose)];
    }
    case 'line': {
      const n = quarterTurned(carryVec(pose, feature.way));
      return [fromFixed(dot(n, between(carry(pose, feature.at), q)) - off, n, q, pose)];
    }
    case 'curve':
      return [curveThrough([feature.path], q, off, pose)];
    case 'needle-line':
      return [curveThrough(feature.paths, q, off, pose)];
  }
}

function curveThrough(paths: readonly Path<'template'>[], q: Point<'area'>, off: number, pose: Laid): Equation {
  // Asked on the template, so that the paths need not be carried to the area at every step.
  const near = nearestOf(paths, carry(inverse(pose), q));
  const place = carry(pose, near.point);
  // Outside the line counts as positive, whichever face is up: the line runs clockwise on the etched face.
  const outward = carryVec(pose, scaled(quarterTurned(near.tangent), -1));
  const n = near.distance > SAME_POINT ? unit(between(place, q)) : outward;
  const side = dot(n, outward) < 0 ? -1 : 1;
  return fromFixed(side * near.distance - off, scaled(n, side), place, pose);
}

// ---- onto a line ----

function onLine(feature: Feature, line: Extract<Target, { kind: 'line' }>, off: number, pose: Laid): readonly Equation[] {
  const n = quarterTurned(line.way);
  const height = (p: Point<'area'>) => dot(n, between(line.at, p)) - off;
  switch (feature.kind) {
    case 'point':
    case 'line': {
      const p = carry(pose, feature.at);
      return [alongNormal(height(p), n, p, pose)];
    }
    case 'curve':
    case 'needle-line': {
      const paths = feature.kind === 'curve' ? [feature.path] : feature.paths;
      let best: Point<'area'> | undefined;
      for (const path of paths) {
        for (const turning of turningPoints(path, carryVec(inverse(pose), line.way))) {
          const p = carry(pose, turning);
          if (!best || Math.abs(height(p)) < Math.abs(height(best))) best = p;
        }
      }
      return best ? [alongNormal(height(best), n, best, pose)] : [];
    }
  }
}

/** The places of a path where it turns back from a direction, smoothly or at a corner: where a line that way can touch it. */
function turningPoints(path: Path<'template'>, way: Vec<'template'>): readonly Point<'template'>[] {
  const n = quarterTurned(way);
  const segments = segmentsOf(path);
  return segments.flatMap((s, i) => {
    const before = segments[i > 0 ? i - 1 : path.closed ? segments.length - 1 : 0]!;
    const climbing = dot(tangentOnSegment(before, 1), n);
    const falling = dot(tangentOnSegment(s, 0), n);
    const corner = climbing * falling <= 0 && Math.abs(climbing - falling) > SAME_NUMBER ? [s.from] : [];
    if (s.kind === 'line') return corner;
    const smooth = [angleOf(n), angleOf(scaled(n, -1))]
      .filter((angle) => partOfAngle(s, angle) <= 1)
      .map((angle) => moved(s.centre, { x: Math.cos(angle), y: Math.sin(angle) }, s.radius));
    return [...corner, ...smooth];
  });
}

function turned(required: Requirement, line: Extract<Target, { kind: 'line' }>, pose: Laid): Equation {
  const { feature } = required;
  const direction = feature.kind === 'line' ? feature.way : (required.direction ?? { x: 1, y: 0 });
  const lever = feature.kind === 'line' ? Math.max(1, feature.lever) : 1;
  const now = angleOf(carryVec(pose, direction)) - angleOf(line.way);
  // Lines have no head: an etching turned half round lies on the line as well.
  const off = shortestTurn(2 * (now - fromDegrees(required.angle ?? 0))) / 2;
  return { value: off * lever, by: [0, 0, lever], at: { x: pose.x, y: pose.y } };
}

// ---- onto a curve ----

function onCurve(feature: Feature, path: Path<'area'>, off: number, pose: Laid): readonly Equation[] {
  if (feature.kind === 'point') return [pointOnCurve(carry(pose, feature.at), path, off, pose)];
  if (feature.kind !== 'curve') return [];
  // Three places of the shorter of the two on the other hold it there, as three fingers would.
  const length = pathLength(feature.path);
  const sewn = pathLength(path);
  if (sewn < length) return [0.1, 0.5, 0.9].map((part) => curveBeside(feature.path, path, part * sewn, off, pose));
  return [0.1, 0.5, 0.9].map((part) => pointOnCurve(carry(pose, pointAlong(feature.path, part * length).point), path, off, pose));
}

/** How far the etched curve runs to the right of a sewn line at a distance along that line. */
function curveBeside(etched: Path<'template'>, sewn: Path<'area'>, along: number, off: number, pose: Laid): Equation {
  const { point: q, tangent } = pointAlong(sewn, along);
  const near = nearestOf([etched], carry(inverse(pose), q));
  const p = carry(pose, near.point);
  const right = quarterTurned(tangent);
  const square = quarterTurned(carryVec(pose, near.tangent));
  const n = near.distance > SAME_POINT ? unit(between(q, p)) : dot(square, right) < 0 ? scaled(square, -1) : square;
  const side = dot(n, right) < 0 ? -1 : 1;
  return alongNormal(side * near.distance - off, scaled(n, side), p, pose);
}

function pointOnCurve(p: Point<'area'>, path: Path<'area'>, off: number, pose: Laid): Equation {
  const near = nearestOf([path], p);
  const right = quarterTurned(near.tangent);
  const n = near.distance > SAME_POINT ? unit(between(near.point, p)) : right;
  const side = dot(n, right) < 0 ? -1 : 1;
  return alongNormal(side * near.distance - off, scaled(n, side), p, pose);
}

function nearestOf<F extends Frame>(paths: readonly Path<F>[], q: Point<F>): { readonly point: Point<F>; readonly tangent: Vec<F>; readonly distance: number } {
  let best: { point: Point<F>; tangent: Vec<F>; distance: number } = { point: q, tangent: { x: 1, y: 0 }, distance: Infinity };
  for (const path of paths) {
    const near = nearestOnPath(path, q);
    if (near.distance < best.distance) best = { point: near.point, tangent: pointAlong(path, near.along).tangent, distance: near.distance };
  }
  return best;
}

// ---- how a value changes ----

/** A value that grows by the normal as the place `p` of the template moves. */
function alongNormal(value: number, n: Vec<'area'>, p: Point<'area'>, pose: Laid): Equation {
  return { value, by: [n.x, n.y, dot(n, quarterTurned(between({ x: pose.x, y: pose.y }, p)))], at: p };
}

/** A value measured from the template to a fixed place, which shrinks by the normal as the template moves. */
function fromFixed(value: number, n: Vec<'area'>, at: Point<'area'>, pose: Laid): Equation {
  return { value, by: [-n.x, -n.y, -dot(n, quarterTurned(between({ x: pose.x, y: pose.y }, at)))], at };
}
