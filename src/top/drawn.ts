// What the quilter draws on the top: areas of her own, and shapes no stitching may enter.

import { boundsOf, middleOfBounds, sizeOfBounds } from '../geometry/bounds.ts';
import { carryPath } from '../geometry/change.ts';
import { type Path, segmentsOf, straight } from '../geometry/path.ts';
import { type Pose, carry, inverse, poseOf } from '../geometry/pose.ts';
import { segmentLength } from '../geometry/segment.ts';
import { checkSimple } from '../geometry/simple.ts';
import { readPathData } from '../geometry/svg/read.ts';
import type { ById, DrawnArea, KeepOut, PathData } from '../model/plan.ts';
import { fromDegrees } from '../num/angle.ts';
import { type LengthStyle, writeLength } from '../num/inches.ts';
import { EYE, SAME_POINT } from '../num/tolerances.ts';
import type { Area, LaidKeepOut, ReferenceLine, TopProblem } from './area.ts';
import { centreLines, diagonals } from './reference-lines.ts';

/** An outline of no more stretches than this has its straight ones as reference lines; a traced curve would drown the rest. */
const MOST_NAMED_SIDES = 24;

export interface DrawnOnTop {
  readonly areas: readonly Area[];
  readonly keepOuts: readonly LaidKeepOut[];
  readonly problems: readonly TopProblem[];
}

/** Drawn areas and keep-outs on a top of a size in inches. Outlines that are none are left out and reported. */
export function drawnOnTop(drawn: ById<DrawnArea>, keepOuts: ById<KeepOut>, width: number, height: number, style: LengthStyle): DrawnOnTop {
  const problems: TopProblem[] = [];
  const cannot = (field: string, message: string) => problems.push({ field, kind: 'cannot-be', message });
  const areas = Object.entries(drawn).flatMap(([id, area]) => {
    const outline = outlineOf(area.outline, `top.drawnAreas.${id}.outline`, area.name, cannot);
    if (!outline) return [];
    reportOutside(outline, `top.drawnAreas.${id}.outline`, area.name, width, height, style, problems);
    const angle = Number.isFinite(area.angle ?? 0) ? fromDegrees(area.angle ?? 0) : 0;
    return [drawnArea(id, area.name, outline, angle)];
  });
  const laid = Object.entries(keepOuts).flatMap(([id, keepOut]) => {
    const outline = outlineOf(keepOut.outline, `top.keepOuts.${id}.outline`, keepOut.name, cannot);
    if (!outline) return [];
    const asked = keepOut.clearance ?? 0;
    const sound = asked >= 0 && Number.isFinite(asked);
    if (!sound) cannot(`top.keepOuts.${id}.clearance`, `The clearance of ${keepOut.name} is less than nothing. None is kept.`);
    return [{ id, name: keepOut.name, outline, clearance: sound ? asked : 0 }];
  });
  return { areas, keepOuts: laid, problems };
}

type Report = (field: string, message: string) => void;

function outlineOf(data: PathData, field: string, name: string, cannot: Report): Path<'quilt'> | undefined {
  const read = readPathData<'quilt'>(data);
  if (!read.ok) {
    cannot(field, `The outline of ${name} cannot be read: ${read.problem.message} It is left out.`);
    return undefined;
  }
  const [first, second] = read.value;
  if (!first) {
    cannot(field, `The outline of ${name} is empty. It is left out.`);
    return undefined;
  }
  if (second) cannot(field, `The outline of ${name} has ${read.value.length} parts. Only the first is laid.`);
  if (!first.closed) cannot(field, `The outline of ${name} is open. It is closed with a straight line.`);
  const simple = checkSimple<'quilt'>({ closed: true, vertices: first.vertices });
  if (simple.ok) return simple.value;
  cannot(field, `The outline of ${name} cannot be laid: ${simple.problem.message} It is left out.`);
  return undefined;
}

function reportOutside(outline: Path<'quilt'>, field: string, name: string, width: number, height: number, style: LengthStyle, problems: TopProblem[]): void {
  const { minX, minY, maxX, maxY } = boundsOf(outline);
  const over = Math.max(-minX, -minY, maxX - width, maxY - height);
  if (over <= SAME_POINT) return;
  problems.push({ field, kind: 'cannot-be', message: `${name} reaches ${writeLength(over, style)} beyond the edge of the top. It is kept as drawn.`, measured: over, limit: 0 });
}

/** The area in its own axes, turned by the angle, with its origin at the middle of its extent there. */
function drawnArea(id: string, name: string, outline: Path<'quilt'>, angle: number): Area {
  const turn: Pose<'quilt', 'area'> = poseOf(0, 0, -angle);
  const middle = middleOfBounds<'area'>(boundsOf(carryPath(turn, outline))) ?? { x: 0, y: 0 };
  const at = carry(inverse(turn), middle);
  const frame: Pose<'area', 'quilt'> = poseOf(at.x, at.y, angle);
  const boundary = carryPath(inverse(frame), outline);
  const { width, height } = sizeOfBounds(boundsOf(boundary));
  const [x, y] = [width / 2, height / 2];
  return {
    id: `drawn:${id}`,
    kind: 'drawn',
    name,
    frame,
    width,
    height,
    boundary,
    seams: [],
    referenceLines: [...centreLines(-x, -y, x, y), ...diagonals(width, height, true), ...straightSides(boundary)],
    shape: `drawn ${id}`,
  };
}

function straightSides(boundary: Path<'area'>): readonly ReferenceLine[] {
  const segments = segmentsOf(boundary);
  if (segments.length > MOST_NAMED_SIDES) return [];
  return segments.flatMap((s, i): readonly ReferenceLine[] =>
    s.kind === 'line' && segmentLength(s) > EYE ? [{ id: `edge-${i + 1}`, kind: 'edge', name: `side ${i + 1}`, path: straight(s.from, s.to) }] : [],
  );
}
