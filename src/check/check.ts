// All checks, composed: what to mend before sewing, what to look at, what is good to know.

import { shapeOf } from '../model/kit/shape-of.ts';
import type { Finding, Severity } from './finding.ts';
import { findingKey } from './finding-key.ts';
import type { CheckInput, Rule } from './input.ts';
import { badTemplate } from './rules/bad-template.ts';
import { endsApart } from './rules/ends-apart.ts';
import { flipWithGrips } from './rules/flip-with-grips.ts';
import { keepOut } from './rules/keep-out.ts';
import { nearRawEdge } from './rules/near-raw-edge.ts';
import { nearSeam } from './rules/near-seam.ts';
import { nothingToRestOn } from './rules/nothing-to-rest-on.ts';
import { overMissedEdge } from './rules/over-missed-edge.ts';
import { passMissing } from './rules/pass-missing.ts';
import { placementHeld } from './rules/placement-held.ts';
import { repeatLeftOut } from './rules/repeat-left-out.ts';
import { sheets } from './rules/sheets.ts';
import { thickness } from './rules/thickness.ts';
import { topProblems } from './rules/top-problems.ts';
import { unknownIds } from './rules/unknown-ids.ts';

/** In the order of the job: the top, the kit, the sheets, how templates lie, what is sewn. */
const RULES: readonly Rule[] = [
  topProblems, badTemplate, unknownIds, sheets, thickness,
  placementHeld, passMissing, repeatLeftOut, nothingToRestOn, flipWithGrips,
  nearRawEdge, keepOut, nearSeam, endsApart, overMissedEdge,
];

const RANK: { readonly [severity in Severity]: number } = { error: 0, warning: 1, note: 2 };

/**
 * All findings about a plan, the gravest first and otherwise in the order of the job. What the quilter has seen and leaves so
 * carries her reason as `accepted` and comes last, so that what is left to decide is numbered from 1.
 */
export function check(input: CheckInput): readonly Finding[] {
  const steps = checkInSteps(input);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** The same, pausing after each part of the work, so that a screen can be drawn in between. */
export function* checkInSteps(input: CheckInput): Generator<undefined, readonly Finding[], undefined> {
  const accepted = input.plan.accepted ?? {};
  // Shapes are remembered once they are made, and take longest; made one by one they hold nobody up.
  for (const template of Object.values(input.plan.kit.templates)) {
    shapeOf(template);
    yield;
  }
  const found: Finding[] = [];
  for (const rule of RULES) {
    found.push(...rule(input));
    yield;
  }
  return found
    .map((one): Finding => {
      const key = findingKey(one);
      return Object.hasOwn(accepted, key) ? { ...one, accepted: accepted[key]!.reason } : one;
    })
    .sort((a, b) => Number(a.accepted !== undefined) - Number(b.accepted !== undefined) || RANK[a.severity] - RANK[b.severity]);
}
