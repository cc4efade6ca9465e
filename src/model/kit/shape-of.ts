// The geometry of a template, from its family and sizes or from its own outline, with the etchings it carries.

import { closeUp } from '../../geometry/change.ts';
import { type Path, endOf, startOf, straight } from '../../geometry/path.ts';
import { distance, point } from '../../geometry/point.ts';
import { readPathData } from '../../geometry/svg/read.ts';
import { fromDegrees } from '../../num/angle.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import { JOIN } from '../../num/tolerances.ts';
import type { ById, Etching, FamilyTemplate, OutlineTemplate, Template } from '../plan.ts';
import { checkedShape } from './checked-shape.ts';
import { FAMILIES, familyById } from './families.ts';
import type { EtchedShape, ShapeProblem, TemplateShape, TemplateWindow } from './shape.ts';
import { inches } from './sizes.ts';

const known = new WeakMap<Template, Outcome<TemplateShape, ShapeProblem>>();

/**
 * The shape of a template in its own coordinates (inches, etched face up): outline and windows clockwise, simple and clear of
 * each other, the family's etchings less those the template does not have, its own taking the place of the family's of the same id. The problem names the field
 * below the template and, where outlines cross, the place. The same template always gives the same shape.
 */
export function shapeOf(template: Template): Outcome<TemplateShape, ShapeProblem> {
  const before = known.get(template);
  if (before) return before;
  const bare = 'family' in template ? shapeOfFamily(template) : shapeOfOutline(template);
  const shape = bare.ok ? etched(without(bare.value, template.notEtched ?? []), template.etchings ?? {}) : bare;
  known.set(template, shape);
  return shape;
}

function shapeOfFamily(template: FamilyTemplate): Outcome<TemplateShape, ShapeProblem> {
  const family = familyById(template.family);
  if (family) return family.draw(template.sizes);
  const ids = FAMILIES.map(({ id }) => id).join(', ');
  return fail({ field: 'family', message: `There is no family “${template.family}”; the families are ${ids}.` });
}

function shapeOfOutline(template: OutlineTemplate): Outcome<TemplateShape, ShapeProblem> {
  const outline = readLoop('outline', 'outline', template.outline);
  if (!outline.ok) return outline;
  const windows: TemplateWindow[] = [];
  for (const [id, data] of Object.entries(template.windows ?? {})) {
    const window = readLoop(`windows.${id}`, `window “${id}”`, data);
    if (!window.ok) return window;
    windows.push({ id, path: window.value });
  }
  return checkedShape({ outline: outline.value, windows, etchings: [] });
}

/** The one closed path of the data; ends that nearly meet are brought together. */
function readLoop(field: string, name: string, data: string): Outcome<Path<'template'>, ShapeProblem> {
  const path = readOne(field, name, data);
  if (!path.ok || path.value.closed) return path;
  const closed = closeUp(path.value, JOIN);
  if (closed.ok) return closed;
  const start = startOf(path.value);
  const end = endOf(path.value);
  const gap = start && end ? `; its ends are ${inches(distance(start, end))} apart` : '';
  return fail({ field, message: `The ${name} must be closed${gap}.`, ...(end ? { at: end } : {}) });
}

function readOne(field: string, name: string, data: string): Outcome<Path<'template'>, ShapeProblem> {
  const paths = readPathData<'template'>(data);
  if (!paths.ok) return fail({ field, message: `The ${name} could not be read: ${paths.problem.message}` });
  const [path, ...more] = paths.value;
  if (!path) return fail({ field, message: `The ${name} is empty.` });
  if (more.length > 0) {
    const second = startOf(more[0]!);
    return fail({ field, message: `The ${name} must be one path; this has ${paths.value.length}.`, ...(second ? { at: second } : {}) });
  }
  return ok(path);
}

/** The shape less the etchings its template does not have. */
function without(shape: TemplateShape, ids: readonly string[]): TemplateShape {
  return ids.length === 0 ? shape : { ...shape, etchings: shape.etchings.filter(({ id }) => !ids.includes(id)) };
}

/** The shape with the template's own etchings: those with an id it has already take its place, the others follow. */
function etched(shape: TemplateShape, own: ById<Etching>): Outcome<TemplateShape, ShapeProblem> {
  const entries = Object.entries(own);
  if (entries.length === 0) return ok(shape);
  const etchings = new Map(shape.etchings.map((etching) => [etching.id, etching]));
  for (const [id, etching] of entries) {
    const read = readEtching(id, etching);
    if (!read.ok) return read;
    etchings.set(id, read.value);
  }
  return ok({ ...shape, etchings: [...etchings.values()] });
}

function readEtching(id: string, etching: Etching): Outcome<EtchedShape, ShapeProblem> {
  const name = etching.name ?? id;
  switch (etching.kind) {
    case 'line':
      return ok({ kind: 'line', id, name, path: straight(point(...etching.from), point(...etching.to)) });
    case 'point':
      return ok({ kind: 'point', id, name, at: point(...etching.at) });
    case 'cross':
      return ok({ kind: 'cross', id, name, at: point(...etching.at), angle: fromDegrees(etching.angle) });
    case 'curve': {
      const path = readOne(`etchings.${id}`, `etched curve “${id}”`, etching.path);
      return path.ok ? ok({ kind: 'curve', id, name, path: path.value }) : path;
    }
  }
}
