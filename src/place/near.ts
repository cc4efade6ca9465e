// What lies near what: the features of a laid template that are almost on a landmark of the area, nearest first.
// A hand that lets go there means it; the nearest becomes a registration.

import { NEAR_ANGLE } from '../num/tolerances.ts';
import { shortestTurn } from '../num/angle.ts';
import { boundsHold, boundsOf, unionBounds } from '../geometry/bounds.ts';
import { nearestOnPath } from '../geometry/nearest.ts';
import { endOf, segmentsOf, startOf } from '../geometry/path.ts';
import { type Point, angleOf, between, distance, moved, scaled } from '../geometry/point.ts';
import { type Pose, carry, carryVec } from '../geometry/pose.ts';
import type { Registration } from '../model/plan.ts';
import type { TemplateShape } from '../model/kit/shape.ts';
import { type Landmarks, landmarks } from './landmarks.ts';
import { featureOf } from './feature.ts';
import type { PlaceSetting } from './place.ts';
import { equationsOf } from './requirement.ts';
import { type Target, lineTarget, targetMoved } from './target.ts';
import { tipsOf } from './tips.ts';

export interface Near {
  readonly registration: Registration;
  /** Where on the template, and where on the area, in the area's own axes. */
  readonly feature: Point<'area'>;
  readonly landmark: Point<'area'>;
  /** Between the two, in inches. */
  readonly distance: number;
}

type Laid = Pose<'template', 'area'>;

/**
 * The registrations a template laid in a pose all but keeps, within `reach` inches: points on places, points on lines, etched
 * lines along lines, the needle line through a place or touching a line. The most telling and nearest first.
 */
export function nearThings(setting: PlaceSetting, pose: Laid, reach: number): readonly Near[] {
  const land = landmarks(setting.lines, setting.stitched);
  const points = pointFeatures(setting.shape).map(({ put, at }) => ({ put, at: carry(pose, at) }));
  const onPlaces = pointsOnPlaces(points, land, reach);
  // A point near a place is near the lines through it as well: the place says more.
  const placed = new Set(onPlaces.map((near) => near.registration.put));
  const onLines = pointsOnLines(points.filter(({ put }) => !placed.has(put)), land, reach);
  const found = [...onPlaces, ...onLines, ...linesAlongLines(setting, pose, land, reach), ...needleLineOn(setting, pose, land, reach)];
  return found.sort((a, b) => rank(a) - rank(b) || a.distance - b.distance);
}

/**
 * Places before lines, and what was etched to be lined up by before the tips of the outline, of which some lie near a line wherever
 * the template lies; last the needle line, which is always near something.
 */
function rank({ registration: { put, on } }: Near): number {
  if (put.startsWith('needle-line')) return 3;
  return isPlace(on) ? 0 : put.startsWith('tip:') ? 2 : 1;
}

function isPlace(on: string): boolean {
  return on === 'centre' || on.startsWith('crossing:') || on.startsWith('end:') || on.startsWith('point:');
}

interface PointFeature<At> {
  readonly put: string;
  readonly at: At;
}

function pointFeatures(shape: TemplateShape): readonly PointFeature<Point<'template'>>[] {
  const etched = shape.etchings.flatMap((etching) => (etching.kind === 'point' || etching.kind === 'cross' ? [{ put: `etching:${etching.id}`, at: etching.at }] : []));
  return [...etched, ...tipsOf(shape.outline).map(({ id, at }) => ({ put: id, at }))];
}

function pointsOnPlaces(points: readonly PointFeature<Point<'area'>>[], land: Landmarks, reach: number): readonly Near[] {
  return points.flatMap(({ put, at }) =>
    land.places.flatMap((place) => {
      const away = distance(at, place.at);
      return away <= reach ? [{ registration: { put, on: place.on }, feature: at, landmark: place.at, distance: away }] : [];
    }),
  );
}

function pointsOnLines(points: readonly PointFeature<Point<'area'>>[], land: Landmarks, reach: number): readonly Near[] {
  return points.flatMap(({ put, at }) =>
    land.lines.flatMap((line) => {
      const near = nearestOnPath(line.path, at);
      return near.distance <= reach ? [{ registration: { put, on: line.on }, feature: at, landmark: near.point, distance: near.distance }] : [];
    }),
  );
}

function linesAlongLines({ shape }: PlaceSetting, pose: Laid, land: Landmarks, reach: number): readonly Near[] {
  return shape.etchings.flatMap((etching) => {
    if (etching.kind !== 'line' || segmentsOf(etching.path).length !== 1) return [];
    const from = startOf(etching.path)!;
    const to = endOf(etching.path)!;
    const way = angleOf(carryVec(pose, between(from, to)));
    const ends = [carry(pose, from), carry(pose, to)] as const;
    return land.lines.flatMap((line) => {
      const only = segmentsOf(line.path);
      const straight = only.every((s) => s.kind === 'line');
      const first = startOf(line.path);
      const last = endOf(line.path);
      if (!straight || !first || !last || !line.on.startsWith('line:')) return [];
      if (Math.abs(shortestTurn(2 * (way - angleOf(between(first, last))))) / 2 > NEAR_ANGLE) return [];
      const near = ends.map((end) => nearestOnPath(line.path, end));
      const nearer = near[0]!.distance <= near[1]!.distance ? 0 : 1;
      const farthest = Math.max(near[0]!.distance, near[1]!.distance);
      if (farthest > reach) return [];
      return [{ registration: { put: `etching:${etching.id}`, on: line.on }, feature: ends[nearer], landmark: near[nearer]!.point, distance: (near[0]!.distance + near[1]!.distance) / 2 }];
    });
  });
}

function needleLineOn(setting: PlaceSetting, pose: Laid, land: Landmarks, reach: number): readonly Near[] {
  const puts = [...new Set(setting.needle.lines.map((line) => (line.from === 'outline' ? 'needle-line' : `needle-line:${line.from}`)))];
  const toFoot = scaled(setting.needleOffset ?? { x: 0, y: 0 }, -1);
  const places = land.places.map(({ on, at }) => ({ on, target: { kind: 'point', at, name: on } satisfies Target }));
  const lines = setting.lines.map((line) => ({ on: `line:${line.id}`, target: lineTarget(line) }));
  const here = unionBounds(setting.lines.map(({ path }) => boundsOf(path)));
  return puts.flatMap((put) => {
    const feature = featureOf(put, setting.shape, setting.needle);
    if (!feature.ok) return [];
    return [...places, ...lines].flatMap(({ on, target }) => {
      if (target.kind === 'curve') return [];
      const [equation] = equationsOf({ feature: feature.value, target: targetMoved(target, toFoot) }, pose);
      if (!equation || Math.abs(equation.value) > reach) return [];
      const landmark = target.kind === 'point' ? target.at : moved(equation.at, { x: equation.by[0], y: equation.by[1] }, -equation.value);
      if (!boundsHold(here, landmark, reach)) return [];
      return [{ registration: { put, on }, feature: equation.at, landmark, distance: Math.abs(equation.value) }];
    });
  });
}
