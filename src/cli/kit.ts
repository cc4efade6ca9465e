// The kit a command works with: the one of a plan, or the built-in one.

import { BUILT_IN_KIT } from '../model/kit/built-in.ts';
import { FAMILIES, familyById } from '../model/kit/families.ts';
import type { Kit, Template } from '../model/plan.ts';
import { type Outcome, fail, ok } from '../num/outcome.ts';
import { readPlanFile } from './files.ts';

/** The kit of a plan file, or the built-in kit when none is named. */
export function kitFor(planFile: string | undefined): Outcome<Kit, string> {
  if (planFile === undefined) return ok(BUILT_IN_KIT);
  const plan = readPlanFile(planFile);
  return plan.ok ? ok(plan.value.kit) : plan;
}

/** The template of that id, or the family of that id at its usual sizes. */
export function templateIn(kit: Kit, id: string): Outcome<Template, string> {
  const template = Object.hasOwn(kit.templates, id) ? kit.templates[id] : undefined;
  if (template) return ok(template);
  const family = familyById(id);
  if (family) return ok({ name: family.name, family: family.id, sizes: {}, thickness: 0.25, grips: 'none' });
  return fail(`There is no template "${id}". The kit has ${Object.keys(kit.templates).join(', ') || 'none'}; the built-in families are ${FAMILIES.map((each) => each.id).join(', ')}.`);
}
