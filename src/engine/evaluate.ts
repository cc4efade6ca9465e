// The pipeline, composed: a plan goes in, an evaluation comes out. Each stage remembers what it made of the immutable
// parts it read, so a change costs only what follows from it.

import { check } from '../check/check.ts';
import type { Finding } from '../check/finding.ts';
import type { Plan, Top } from '../model/plan.ts';
import { expand } from '../stitch/expand.ts';
import { laySheet } from '../stitch/lay.ts';
import { chosenSheets, sheetIds } from '../stitch/sheet-areas.ts';
import type { Area, LaidTop } from '../top/area.ts';
import { layTop } from '../top/lay-top.ts';
import { withDivisions } from '../stitch/divisions.ts';
import type { Evaluation } from './evaluation.ts';

/** All that follows from a plan but its findings; never throws. For a moving hand, which cannot wait for the checks. */
export function setOut(plan: Plan): Omit<Evaluation, 'findings'> {
  const top = divided(plan);
  const areaById = new Map(top.areas.map((area) => [area.id, area] as const));
  const placements = sheetIds(plan).flatMap((id) => laySheet(id, plan.sheets[id]!, plan.kit, top.areas));
  const chosen = new Set(chosenSheets(plan).map(([id]) => id));
  const lines = placements.filter((laid) => chosen.has(laid.sheet)).flatMap((laid) => expand(laid, areaById));
  return { plan, top, placements, lines };
}

const findingsOf = new WeakMap<Plan, readonly Finding[]>();

/** All that follows from a plan, findings included; never throws. */
export function evaluate(plan: Plan): Evaluation {
  const laid = setOut(plan);
  const known = findingsOf.get(plan);
  const findings = known ?? check(laid);
  if (!known) findingsOf.set(plan, findings);
  return { ...laid, findings };
}

const topsLaid = new WeakMap<Top, LaidTop>();
const topsDivided = new WeakMap<LaidTop, { readonly key: string; readonly areas: readonly Area[] }>();

/** The top with the division lines of the chosen repeats among the reference lines of the areas they run along. */
function divided(plan: Plan): LaidTop {
  const laid = topsLaid.get(plan.top) ?? layTop(plan.top);
  topsLaid.set(plan.top, laid);
  const chosen = chosenSheets(plan).map(([, sheet]) => sheet);
  const key = JSON.stringify(chosen.map((sheet) => [sheet.for, sheet.repeat, Object.values(sheet.placements).map((p) => p.repeat)]));
  const before = topsDivided.get(laid);
  const areas = before?.key === key ? before.areas : withDivisions(laid.areas, chosen);
  topsDivided.set(laid, { key, areas });
  return { ...laid, areas };
}
