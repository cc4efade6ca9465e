// Commands on the templates of the kit. Each is one step of undo; none of them loses a placement without being told to.

import { castDraft } from 'immer';
import type { Template } from '../../model/plan.ts';
import { changePlan } from '../change-plan.ts';
import { freeId, idFrom } from '../free-id.ts';
import { type Session, planOf } from '../store.ts';
import { pickInKit } from './pick.ts';

/** Adds a template to the kit and picks it out; answers with its id. */
export function addTemplate(session: Session, template: Template): string {
  const { kit } = planOf(session.getState());
  const id = freeId(kit.templates, idFrom(template.name, 'template'));
  changePlan(session, `Add ${template.name}`, (plan) => {
    plan.kit.templates[id] = castDraft(template);
  });
  pickInKit(session, { kind: 'template', template: id });
  return id;
}

/** Adds a copy of a template beside it, under a name of its own, and picks it out; answers with its id, if there is such a template. */
export function duplicateTemplate(session: Session, id: string): string | undefined {
  const { kit } = planOf(session.getState());
  const template = kit.templates[id];
  if (!template) return undefined;
  const { hidden: _, ...copy } = template;
  const names = new Set(Object.values(kit.templates).map(({ name }) => name));
  return addTemplate(session, { ...copy, name: freeName(names, template.name) });
}

/** Takes a template off the board and the shelf, or brings it back; what was laid with it stays. */
export function hideTemplate(session: Session, id: string, hidden: boolean): void {
  const template = planOf(session.getState()).kit.templates[id];
  if (!template) return;
  changePlan(session, `${hidden ? 'Hide' : 'Show'} ${template.name}`, (plan) => {
    if (hidden) plan.kit.templates[id]!.hidden = true;
    else delete plan.kit.templates[id]!.hidden;
  });
}

/**
 * Takes a template out of the kit. The placements laid with it get `instead`, another template of the kit, or are taken
 * off their sheets with it.
 */
export function deleteTemplate(session: Session, id: string, instead?: string): void {
  const { kit } = planOf(session.getState());
  const template = kit.templates[id];
  if (!template || instead === id || (instead !== undefined && !kit.templates[instead])) return;
  changePlan(session, `Delete ${template.name}`, (plan) => {
    for (const { placements } of Object.values(plan.sheets)) {
      for (const [placementId, placement] of Object.entries(placements)) {
        if (placement.template !== id) continue;
        if (instead === undefined) delete placements[placementId];
        else placement.template = instead;
      }
    }
    delete plan.kit.templates[id];
  });
}

/** Puts a template's name; a name of nothing but spaces is not taken. */
export function nameTemplate(session: Session, id: string, name: string): void {
  const trimmed = name.trim();
  const template = planOf(session.getState()).kit.templates[id];
  if (!template || trimmed === '') return;
  changePlan(session, `Name ${trimmed}`, (plan) => {
    plan.kit.templates[id]!.name = trimmed;
  });
}

export type Grips = Template['grips'];

/** Says which faces of a template carry grips. */
export function gripTemplate(session: Session, id: string, grips: Grips): void {
  const template = planOf(session.getState()).kit.templates[id];
  if (!template) return;
  changePlan(session, `Grips of ${template.name}`, (plan) => {
    plan.kit.templates[id]!.grips = grips;
  });
}

/** Keeps notes on a template; empty notes are taken away. */
export function noteTemplate(session: Session, id: string, notes: string): void {
  const template = planOf(session.getState()).kit.templates[id];
  if (!template) return;
  changePlan(session, `Notes on ${template.name}`, (plan) => {
    if (notes.trim() === '') delete plan.kit.templates[id]!.notes;
    else plan.kit.templates[id]!.notes = notes;
  });
}

function freeName(taken: ReadonlySet<string>, name: string): string {
  const base = name.replace(/, copy( \d+)?$/, '');
  for (let number = 1; ; number++) {
    const next = number === 1 ? `${base}, copy` : `${base}, copy ${number}`;
    if (!taken.has(next)) return next;
  }
}
