// A line etched at a distance inside the edge: the edge offset inward, less what would lie over a window.

import { splitPath } from '../../geometry/change.ts';
import { whereIs } from '../../geometry/inside.ts';
import { pathLength, pointAlong } from '../../geometry/measure.ts';
import { meetPaths } from '../../geometry/meet-paths.ts';
import { offsetClosed } from '../../geometry/offset/offset-closed.ts';
import type { Path } from '../../geometry/path.ts';
import type { TemplateShape } from '../../model/kit/shape.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import { SLIVER } from '../../num/tolerances.ts';

/** The lines that run `distance` inches inside the outline; `no-room` where the template is nowhere wide enough. */
export function innerLines(shape: TemplateShape, distance: number): Outcome<readonly Path<'template'>[], 'no-room'> {
  const offset = offsetClosed(shape.outline, distance, 'inside');
  if (offset.kind === 'collapsed') return fail('no-room');
  const lines = offset.loops.flatMap(({ path }) => shape.windows.reduce<readonly Path<'template'>[]>((pieces, window) => pieces.flatMap((piece) => clearOf(piece, window.path)), [path]));
  return lines.length === 0 ? fail('no-room') : ok(lines);
}

function clearOf(path: Path<'template'>, window: Path<'template'>): readonly Path<'template'>[] {
  const cuts = meetPaths(path, window).flatMap((meeting) => (meeting.kind === 'overlap' ? [...meeting.alongA] : [meeting.alongA]));
  const pieces = cuts.length === 0 ? [path] : splitPath(path, cuts);
  return pieces.filter((piece) => pathLength(piece) > SLIVER && whereIs(window, pointAlong(piece, pathLength(piece) / 2).point) !== 'inside');
}
