// All needle lines of a template with a foot: round its outline outside, and round its windows inside.

import { type OffsetOutcome, offsetClosed } from '../geometry/offset/offset-closed.ts';
import type { TemplateShape } from '../model/kit/shape.ts';
import type { EdgeName, MissedEdge, NeedleLine, NeedleLines } from './needle-line.ts';

const known = new WeakMap<TemplateShape, Map<number, NeedleLines>>();

/**
 * The needle lines of a template and a foot of some diameter in inches, in template coordinates, with what of its edges the
 * foot misses. Edges in order, outline first; the lines of one edge longest first. Kept with the shape.
 */
export function needleLines(shape: TemplateShape, footDiameter: number): NeedleLines {
  const ofShape = known.get(shape) ?? new Map<number, NeedleLines>();
  known.set(shape, ofShape);
  const before = ofShape.get(footDiameter);
  if (before) return before;
  const found = linesOf(shape, footDiameter / 2);
  ofShape.set(footDiameter, found);
  return found;
}

function linesOf(shape: TemplateShape, radius: number): NeedleLines {
  const edges: { from: EdgeName; offset: OffsetOutcome<'template'> }[] = [
    { from: 'outline', offset: offsetClosed(shape.outline, radius, 'outside') },
    ...shape.windows.map(({ id, path }) => ({ from: `window:${id}` as const, offset: offsetClosed(path, radius, 'inside') })),
  ];
  return {
    lines: edges.flatMap(({ from, offset }) => (offset.kind === 'loops' ? offset.loops.map((line, loop): NeedleLine => ({ from, loop, ...line })) : [])),
    missed: edges.flatMap(({ from, offset }) => offset.missed.map((stretch): MissedEdge => ({ from, ...stretch }))),
    collapsed: edges.filter(({ offset }) => offset.kind === 'collapsed').map(({ from }) => from),
  };
}
