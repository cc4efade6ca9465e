// The pipeline, composed: a plan goes in, an evaluation comes out. Each stage remembers what it made of the immutable
// parts it read, so a change costs only what follows from it.

import { check, checkInSteps } from '../check/check.ts';
import type { Finding } from '../check/finding.ts';
import { shapeOf } from '../model/kit/shape-of.ts';
import { styleOf } from '../model/length-style.ts';
import type { Plan, Top } from '../model/plan.ts';
import { needleLines } from '../needle/needle-lines.ts';
import { expand } from '../stitch/expand.ts';
import { laySheet } from '../stitch/lay.ts';
import { chosenSheets, sheetIds } from '../stitch/sheet-areas.ts';
import type { Area, LaidTop } from '../top/area.ts';
import { layTop } from '../top/lay-top.ts';
import { withDivisions } from '../stitch/divisions.ts';
import type { Evaluation } from './evaluation.ts';

/** All that follows from a plan but its findings; never throws. */
export function setOut(plan: Plan): Omit<Evaluation, 'findings'> {
  const laid = laidOut(plan);
  return { ...laid, lines: linesOf(laid) };
}

/** Sets a plan out bit by bit, so that a screen can be drawn in between; afterwards the stages remember it, and evaluating it takes little time. */
export function* setOutInSteps(plan: Plan): Generator<undefined, void, undefined> {
  const top = divided(plan);
  yield;
  for (const id of sheetIds(plan)) {
    const sheet = plan.sheets[id]!;
    for (const placement of Object.values(sheet.placements)) {
      const template = plan.kit.templates[placement.template];
      const foot = plan.kit.feet[placement.foot];
      const shape = template && shapeOf(template);
      if (!shape?.ok || !foot) continue;
      yield;
      needleLines(shape.value, foot.diameter);
      yield;
    }
    laySheet(id, sheet, plan.kit, top.areas);
    yield;
  }
}

/**
 * For a moving hand, which cannot wait for the checks: the findings are those of the evaluation it moves away from, and the lines, of
 * which there may be many thousand, are made only when somebody asks for them.
 */
export function setOutMoving(plan: Plan, from: Evaluation): Evaluation {
  const laid = laidOut(plan);
  let lines: Evaluation['lines'] | undefined;
  return {
    ...laid,
    get findings() {
      return from.findings;
    },
    get lines() {
      return (lines ??= linesOf(laid));
    },
  };
}

function laidOut(plan: Plan): Pick<Evaluation, 'plan' | 'top' | 'placements'> {
  const top = divided(plan);
  return { plan, top, placements: sheetIds(plan).flatMap((id) => laySheet(id, plan.sheets[id]!, plan.kit, top.areas)) };
}

function linesOf({ plan, top, placements }: Pick<Evaluation, 'plan' | 'top' | 'placements'>): Evaluation['lines'] {
  const areaById = new Map(top.areas.map((area) => [area.id, area] as const));
  const chosen = new Set(chosenSheets(plan).map(([id]) => id));
  return placements.filter((laid) => chosen.has(laid.sheet)).flatMap((laid) => expand(laid, areaById));
}

const findingsOf = new WeakMap<Plan, readonly Finding[]>();

/** All that follows from a plan; never throws. The findings are looked for when somebody first asks for them. */
export function evaluate(plan: Plan): Evaluation {
  const laid = setOut(plan);
  return {
    ...laid,
    get findings() {
      const known = findingsOf.get(plan) ?? check(laid);
      findingsOf.set(plan, known);
      return known;
    },
  };
}

/** The findings about a plan if they have been looked for already. */
export function knownFindings(plan: Plan): readonly Finding[] | undefined {
  return findingsOf.get(plan);
}

/** Looks for the findings of an evaluation step by step; when it is done they are known and asking for them takes no time. */
export function* findInSteps(evaluation: Evaluation): Generator<undefined, void, undefined> {
  if (findingsOf.has(evaluation.plan)) return;
  findingsOf.set(evaluation.plan, yield* checkInSteps(evaluation));
}

const topsLaid = new WeakMap<Top, Map<Plan['shownIn'], LaidTop>>();
const topsDivided = new WeakMap<LaidTop, { readonly key: string; readonly areas: readonly Area[] }>();

/** The top with the division lines of the chosen repeats among the reference lines of the areas they run along. */
function divided(plan: Plan): LaidTop {
  const inUnits = topsLaid.get(plan.top) ?? new Map<Plan['shownIn'], LaidTop>();
  topsLaid.set(plan.top, inUnits);
  const laid = inUnits.get(plan.shownIn) ?? layTop(plan.top, styleOf(plan));
  inUnits.set(plan.shownIn, laid);
  const chosen = chosenSheets(plan).map(([, sheet]) => sheet);
  const key = JSON.stringify(chosen.map((sheet) => [sheet.for, sheet.repeat, Object.values(sheet.placements).map((p) => p.repeat)]));
  const before = topsDivided.get(laid);
  const areas = before?.key === key ? before.areas : withDivisions(laid.areas, chosen);
  topsDivided.set(laid, { key, areas });
  return { ...laid, areas };
}
