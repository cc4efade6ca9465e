// What every template must keep, from whichever source it came: an outline that can be cut and gone round, and windows
// that lie within it, apart from the edge and from each other.

import { whereIs } from '../../geometry/inside.ts';
import { meetPaths } from '../../geometry/meet-paths.ts';
import { type Path, startOf } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { checkSimple } from '../../geometry/simple.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import type { ShapeProblem, TemplateShape, TemplateWindow } from './shape.ts';

/**
 * The shape with outline and windows clockwise and without empty stretches; or the first thing wrong with them and, where
 * there is one, the place in template coordinates.
 */
export function checkedShape(shape: TemplateShape): Outcome<TemplateShape, ShapeProblem> {
  const outline = checkSimple(shape.outline);
  if (!outline.ok) return fail(problemAt('outline', sentence(outline.problem.message), outline.problem.at));
  const windows: TemplateWindow[] = [];
  for (const { id, path } of shape.windows) {
    const window = checkSimple(path);
    const field = `windows.${id}`;
    if (!window.ok) return fail(problemAt(field, sentence(window.problem.message).replace('The outline', `The window “${id}”`), window.problem.at));
    const problem = clashWithOutline(outline.value, id, window.value) ?? clashWithWindows(windows, id, window.value);
    if (problem) return fail(problem);
    windows.push({ id, path: window.value });
  }
  return ok({ ...shape, outline: outline.value, windows });
}

function clashWithOutline(outline: Path<'template'>, id: string, window: Path<'template'>): ShapeProblem | undefined {
  const meeting = meetPaths(window, outline)[0];
  if (meeting) {
    const at = meeting.kind === 'overlap' ? meeting.from : meeting.at;
    return problemAt(`windows.${id}`, `The window “${id}” meets the outline; it must lie within it.`, at);
  }
  const start = startOf(window);
  if (start && whereIs(outline, start) !== 'inside') return problemAt(`windows.${id}`, `The window “${id}” lies outside the outline.`, start);
  return undefined;
}

function clashWithWindows(others: readonly TemplateWindow[], id: string, window: Path<'template'>): ShapeProblem | undefined {
  for (const other of others) {
    const meeting = meetPaths(window, other.path)[0];
    if (meeting) {
      const at = meeting.kind === 'overlap' ? meeting.from : meeting.at;
      return problemAt(`windows.${id}`, `The window “${id}” meets the window “${other.id}”; windows must lie apart.`, at);
    }
    const start = startOf(window);
    const otherStart = startOf(other.path);
    const isWithin = start && whereIs(other.path, start) === 'inside';
    if (isWithin || (otherStart && whereIs(window, otherStart) === 'inside')) {
      const [inner, outer] = isWithin ? [id, other.id] : [other.id, id];
      return problemAt(`windows.${id}`, `The window “${inner}” lies within the window “${outer}”; windows must lie apart.`, start);
    }
  }
  return undefined;
}

function problemAt(field: string, message: string, at: Point<'template'> | undefined): ShapeProblem {
  return at ? { field, message, at } : { field, message };
}

function sentence(message: string): string {
  return `${message.charAt(0).toUpperCase()}${message.slice(1)}.`;
}
