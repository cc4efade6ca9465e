// A template from an outline of the quilter's own: SVG path data pasted from a drawing, in the drawing's unit. Where the data
// draws several closed paths, the one round all others is the outline and the rest are windows.

import { boundsOf, middleOfBounds } from '../../geometry/bounds.ts';
import { carryPath } from '../../geometry/change.ts';
import { signedArea } from '../../geometry/measure.ts';
import type { Path } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { poseOf } from '../../geometry/pose.ts';
import { readPathData } from '../../geometry/svg/read.ts';
import { writePathData } from '../../geometry/svg/write.ts';
import type { TemplateShape } from '../../model/kit/shape.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import type { OutlineTemplate } from '../../model/plan.ts';
import { MM_PER_INCH } from '../../num/inches.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import { FIT } from '../../num/tolerances.ts';

/** Inches in one unit of a drawing; a CSS pixel is 1/96 in (CSS Values and Units, 6.2). */
export const DRAWING_UNITS = { in: 1, cm: 10 / MM_PER_INCH, mm: 1 / MM_PER_INCH, px: 1 / 96 } as const;

export type DrawingUnit = keyof typeof DRAWING_UNITS;

export interface OwnOutline {
  readonly outline: OutlineTemplate['outline'];
  readonly windows: NonNullable<OutlineTemplate['windows']>;
  readonly shape: TemplateShape;
}

export interface OwnOutlineProblem {
  readonly message: string;
  /** What could be read all the same, and where it goes wrong, in inches from the middle of it all. */
  readonly paths: readonly Path<'template'>[];
  readonly at?: Point<'template'>;
}

/** Outline and windows in inches, their middle at the centre of measures; or what is wrong with them, and where. */
export function readOwnOutline(data: string, unit: DrawingUnit): Outcome<OwnOutline, OwnOutlineProblem> {
  const inches = DRAWING_UNITS[unit];
  const read = readPathData<'template'>(data, FIT / inches);
  if (!read.ok) return fail({ message: read.problem.message, paths: [] });
  const paths = centred(read.value.map((path) => scaled(path, inches)));
  const largest = paths.reduce((best, path) => (Math.abs(signedArea(path)) > Math.abs(signedArea(best)) ? path : best));
  const others = paths.filter((path) => path !== largest);
  const outline = writePathData(largest);
  const windows = Object.fromEntries(others.map((path, i) => [others.length === 1 ? 'window' : `window-${i + 1}`, writePathData(path)]));
  const shape = shapeOf({ name: '', thickness: 1, grips: 'none', outline, windows });
  if (shape.ok) return ok({ outline, windows, shape: shape.value });
  const { message, at } = shape.problem;
  return fail({ message, paths, ...(at && { at }) });
}

function scaled(path: Path<'template'>, times: number): Path<'template'> {
  return times === 1 ? path : { closed: path.closed, vertices: path.vertices.map(({ x, y, bulge }) => ({ x: x * times, y: y * times, bulge })) };
}

function centred(paths: readonly Path<'template'>[]): readonly Path<'template'>[] {
  const all = paths.map(boundsOf);
  const middle = middleOfBounds<'template'>({
    minX: Math.min(...all.map(({ minX }) => minX)),
    minY: Math.min(...all.map(({ minY }) => minY)),
    maxX: Math.max(...all.map(({ maxX }) => maxX)),
    maxY: Math.max(...all.map(({ maxY }) => maxY)),
  });
  return middle ? paths.map((path) => carryPath(poseOf<'template', 'template'>(-middle.x, -middle.y), path)) : paths;
}
