// Commands on the etchings of a template. The etchings of a family are drawn by the family; one that is changed or renamed
// becomes the template's own under the same id, so that registrations go on holding, and one that is deleted is noted as not
// etched on the quilter's own template, and can be brought back.

import { castDraft, type Draft } from 'immer';
import { endOf, startOf } from '../../geometry/path.ts';
import { writePathData } from '../../geometry/svg/write.ts';
import { familyById } from '../../model/kit/families.ts';
import type { EtchedShape } from '../../model/kit/shape.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import type { Etching, Place, Template } from '../../model/plan.ts';
import { toDegrees } from '../../num/angle.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import type { Point } from '../../geometry/point.ts';
import { changePlan } from '../change-plan.ts';
import { freeId } from '../free-id.ts';
import { type Session, planOf } from '../store.ts';
import { innerLines } from './inner-line.ts';
import { pickInKit } from './pick.ts';
import { type as typeChange } from '../typing.ts';

const NAMES: { readonly [kind in Etching['kind']]: string } = { line: 'line', point: 'point', cross: 'cross', curve: 'curve' };

/** Etches something and picks it out; answers with its id, if there is such a template. */
export function etch(session: Session, templateId: string, etching: Etching): string | undefined {
  return etchAll(session, templateId, [etching], `Etch a ${NAMES[etching.kind]}`)[0];
}

/** Etches a line at a distance in inches inside the edge, in as many pieces as it falls into; `no-room` where there is none. */
export function etchInnerLine(session: Session, templateId: string, distance: number, name: string): Outcome<readonly string[], 'no-room' | 'no-template'> {
  const template = planOf(session.getState()).kit.templates[templateId];
  const shape = template && shapeOf(template);
  if (!shape?.ok) return fail('no-template');
  const lines = innerLines(shape.value, distance);
  if (!lines.ok) return lines;
  return ok(etchAll(session, templateId, lines.value.map((path) => ({ kind: 'curve', path: writePathData(path), name })), 'Etch an inner line'));
}

/** Shows a change to an etching while it is typed. */
export function typeEtching(session: Session, templateId: string, id: string, etching: Etching): void {
  typeChange(session, 'Change an etching', (plan) => {
    const template = plan.kit.templates[templateId];
    if (template) putEtching(template, id, etching);
  });
}

/** Renames an etching; a name of nothing but spaces is not taken. */
export function nameEtching(session: Session, templateId: string, id: string, name: string): void {
  const trimmed = name.trim();
  const etching = etchingOn(session, templateId, id);
  if (!etching || trimmed === '') return;
  changePlan(session, `Name ${trimmed}`, (plan) => putEtching(plan.kit.templates[templateId]!, id, { ...etching, name: trimmed }));
}

/** Takes an etching off the template. */
export function deleteEtching(session: Session, templateId: string, id: string): void {
  const template = planOf(session.getState()).kit.templates[templateId];
  if (!template) return;
  const isFamilys = familyEtchings(template).some((etching) => etching.id === id);
  changePlan(session, 'Delete an etching', (plan) => {
    const draft = plan.kit.templates[templateId]!;
    if (draft.etchings) {
      delete draft.etchings[id];
      if (Object.keys(draft.etchings).length === 0) delete draft.etchings;
    }
    if (isFamilys && !draft.notEtched?.includes(id)) draft.notEtched = [...(draft.notEtched ?? []), id];
  });
  pickInKit(session, { kind: 'etchings', template: templateId });
}

/** Brings back the etchings of the family that were deleted. */
export function bringBackEtchings(session: Session, templateId: string): void {
  const template = planOf(session.getState()).kit.templates[templateId];
  if (!template?.notEtched) return;
  changePlan(session, `Bring back the etchings of ${template.name}`, (plan) => {
    delete plan.kit.templates[templateId]!.notEtched;
  });
}

/** An etching as the plan writes it, from what lies on the template. */
export function etchingFrom(shape: EtchedShape): Etching {
  const { name } = shape;
  const place = ({ x, y }: Point<'template'>): Place => [x, y];
  switch (shape.kind) {
    case 'point':
      return { kind: 'point', at: place(shape.at), name };
    case 'cross':
      return { kind: 'cross', at: place(shape.at), angle: toDegrees(shape.angle), name };
    case 'line': {
      const [from, to] = [startOf(shape.path), endOf(shape.path)];
      return from && to && shape.path.vertices.length === 2 ? { kind: 'line', from: place(from), to: place(to), name } : { kind: 'curve', path: writePathData(shape.path), name };
    }
    case 'curve':
      return { kind: 'curve', path: writePathData(shape.path), name };
  }
}

/** The etchings the family itself draws on a template; none on an own outline. */
export function familyEtchings(template: Template): readonly EtchedShape[] {
  if (!('family' in template)) return [];
  const drawn = familyById(template.family)?.draw(template.sizes);
  return drawn?.ok ? drawn.value.etchings : [];
}

function etchAll(session: Session, templateId: string, etchings: readonly Etching[], label: string): readonly string[] {
  const template = planOf(session.getState()).kit.templates[templateId];
  const shape = template && shapeOf(template);
  if (!template || !shape?.ok) return [];
  const taken: { [id: string]: unknown } = { ...Object.fromEntries([...shape.value.etchings, ...familyEtchings(template)].map(({ id }) => [id, true])), ...template.etchings };
  const entries = etchings.map((etching): readonly [string, Etching] => {
    const id = freeId(taken, `my-${NAMES[etching.kind]}`);
    taken[id] = true;
    return [id, { ...etching, name: etching.name ?? nameFrom(id) }];
  });
  changePlan(session, label, (plan) => {
    for (const [id, etching] of entries) putEtching(plan.kit.templates[templateId]!, id, etching);
  });
  const [first] = entries;
  if (first) pickInKit(session, { kind: 'etchings', template: templateId, etching: first[0] });
  return entries.map(([id]) => id);
}

/** "my-line-2" is called "my line 2" until she names it. */
function nameFrom(id: string): string {
  return id.replaceAll('-', ' ');
}

function etchingOn(session: Session, templateId: string, id: string): Etching | undefined {
  const template = planOf(session.getState()).kit.templates[templateId];
  const shape = template && shapeOf(template);
  const found = shape?.ok ? shape.value.etchings.find((etching) => etching.id === id) : undefined;
  return found && (template?.etchings?.[id] ?? etchingFrom(found));
}

function putEtching(template: Draft<Template>, id: string, etching: Etching): void {
  template.etchings = { ...template.etchings, [id]: castDraft(etching) };
}
