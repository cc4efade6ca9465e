// What the foot can reach of a template: the curves of its edges with what becomes of them at the needle, the stretches of edge that
// are missed, with a number and a rough place for each, and the windows it does not fit into.

import { boundsOf } from '../../geometry/bounds.ts';
import { pathLength, pointAlong } from '../../geometry/measure.ts';
import { nearestIndex } from '../../geometry/nearest.ts';
import { type Path, segmentsOf } from '../../geometry/path.ts';
import { type Point, type Vec, between, unit } from '../../geometry/point.ts';
import { segmentLength } from '../../geometry/segment.ts';
import type { TemplateShape } from '../../model/kit/shape.ts';
import type { EdgeName } from '../../needle/needle-line.ts';
import { needleLines } from '../../needle/needle-lines.ts';
import { EYE, SAME_POINT } from '../../num/tolerances.ts';

export interface Reach {
  /** In inches from the edge. */
  readonly away: number;
  /** Windows the foot runs inside, by id. */
  readonly windows: readonly string[];
  /** Round curves of the edges that the foot follows, longest first; those no eye could tell apart are one. */
  readonly curves: readonly ReachedCurve[];
  readonly missed: readonly MissedPlace[];
  /** Windows the foot does not fit into, by id. */
  readonly closed: readonly string[];
  readonly edgeLength: number;
  /** Of the line outside the outline, all the way round. */
  readonly needleLength: number;
}

export interface ReachedCurve {
  /** On the edge and at the needle, in inches. */
  readonly radius: number;
  readonly atNeedle: number;
  /** Inches of edge curved so. */
  readonly length: number;
}

export interface MissedPlace {
  readonly number: number;
  readonly from: EdgeName;
  readonly length: number;
  /** Its middle. */
  readonly at: Point<'template'>;
  /** The way from the foot into the acrylic there, one inch long. */
  readonly into: Vec<'template'>;
  /** Of the edge, in inches along it; end < start where it runs over the edge's start. */
  readonly start: number;
  readonly end: number;
  /** "upper left", as the template is drawn. */
  readonly where: string;
}

export function reachOf(shape: TemplateShape, footDiameter: number): Reach {
  const found = needleLines(shape, footDiameter);
  const radius = footDiameter / 2;
  const outside = curvesOf(shape.outline, (sweep, edge) => (sweep > 0 ? edge + radius : edge - radius));
  const inside = shape.windows.filter(({ id }) => !found.collapsed.includes(`window:${id}`)).flatMap(({ path }) => curvesOf(path, (sweep, edge) => (sweep > 0 ? edge - radius : edge + radius)));
  return {
    away: radius,
    windows: shape.windows.map(({ id }) => id).filter((id) => !found.collapsed.includes(`window:${id}`)),
    curves: gathered([...outside, ...inside]),
    missed: found.missed
      .filter(({ from, length }) => length > SAME_POINT && !found.collapsed.includes(from))
      .map((stretch, i): MissedPlace => {
        const edge = edgeNamed(shape, stretch.from);
        const { point } = pointAlong(edge, stretch.start + stretch.length / 2);
        const nearest = nearestIndex(found.lines.filter(({ from }) => from === stretch.from).map(({ path }) => path))(point);
        const into: Vec<'template'> = nearest ? unit(between(nearest.point, point)) : { x: 0, y: 0 };
        return { number: i + 1, ...stretch, at: point, into, where: whereOn(shape, point) };
      }),
    closed: shape.windows.map(({ id }) => id).filter((id) => found.collapsed.includes(`window:${id}`)),
    edgeLength: pathLength(shape.outline),
    needleLength: found.lines.find(({ from }) => from === 'outline')?.length ?? 0,
  };
}

/** The outline or a window of a shape. */
export function edgeNamed(shape: TemplateShape, name: EdgeName): Path<'template'> {
  return shape.windows.find(({ id }) => name === `window:${id}`)?.path ?? shape.outline;
}

/** The arcs of an edge that leave the needle a curve of its own. */
function curvesOf(edge: Path<'template'>, atNeedle: (sweep: number, radius: number) => number): readonly ReachedCurve[] {
  return segmentsOf(edge).flatMap((segment) => {
    if (segment.kind !== 'arc') return [];
    const needle = atNeedle(segment.sweep, segment.radius);
    return needle > SAME_POINT ? [{ radius: segment.radius, atNeedle: needle, length: segmentLength(segment) }] : [];
  });
}

function gathered(curves: readonly ReachedCurve[]): readonly ReachedCurve[] {
  const groups: ReachedCurve[] = [];
  for (const curve of [...curves].sort((a, b) => b.length - a.length)) {
    const like = groups.findIndex(({ radius, atNeedle }) => Math.abs(radius - curve.radius) < EYE && Math.abs(atNeedle - curve.atNeedle) < EYE);
    const before = groups[like];
    if (before) groups[like] = { ...before, length: before.length + curve.length };
    else groups.push(curve);
  }
  return groups.sort((a, b) => b.length - a.length);
}

/** In which ninth of the template a place lies. */
function whereOn(shape: TemplateShape, at: Point<'template'>): string {
  const { minX, minY, maxX, maxY } = boundsOf(shape.outline);
  const third = (value: number, from: number, to: number) => Math.min(2, Math.floor((3 * (value - from)) / (to - from || 1)));
  const row = ['upper', '', 'lower'][third(at.y, minY, maxY)] ?? '';
  const column = ['left', '', 'right'][third(at.x, minX, maxX)] ?? '';
  if (row === '' && column === '') return 'middle';
  if (column === '') return row === 'upper' ? 'top' : 'bottom';
  return row === '' ? column : `${row} ${column}`;
}
