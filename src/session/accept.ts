// What the quilter has seen and leaves so: her reasons in the plan, by the finding's key. A reason outlives its finding, so that
// it still holds when the same thing is found again; until then it is shown apart and can be forgotten.

import { CODES } from '../check/codes.ts';
import { findingKey } from '../check/finding-key.ts';
import type { Finding } from '../check/finding.ts';
import type { Plan } from '../model/plan.ts';
import { changePlan } from './change-plan.ts';
import { type Session, planOf } from './store.ts';

/** Leaves a finding so, for a reason in words; with it all that bear the same key. A reason of nothing but spaces is not taken. */
export function leaveSo(session: Session, finding: Finding, reason: string): void {
  const words = reason.trim();
  if (words === '') return;
  const key = findingKey(finding);
  changePlan(session, finding.accepted === undefined ? 'Leave it so' : 'Give another reason', (plan) => {
    const accepted = (plan.accepted ??= {});
    accepted[key] = { ...(Object.hasOwn(accepted, key) && accepted[key]), reason: words };
  });
}

/** Takes a finding up again that was left so: it counts as before. */
export function takeUpAgain(session: Session, finding: Finding): void {
  dropReason(session, findingKey(finding), 'Take it up again');
}

/** Forgets a reason, by its key, whose finding is gone. A key that is not there changes nothing. */
export function forgetReason(session: Session, key: string): void {
  dropReason(session, key, 'Forget a reason');
}

function dropReason(session: Session, key: string, label: string): void {
  if (!Object.hasOwn(planOf(session.getState()).accepted ?? {}, key)) return;
  changePlan(session, label, (plan) => {
    delete plan.accepted![key];
    if (Object.keys(plan.accepted!).length === 0) delete plan.accepted;
  });
}

/** How many findings one reason would leave so, this one included. */
export function alike(findings: readonly Finding[], finding: Finding): number {
  const key = findingKey(finding);
  return findings.filter((other) => findingKey(other) === key).length;
}

export interface LeftoverReason {
  readonly key: string;
  readonly reason: string;
  /** What it was given for, in words: "Too near to a seam, on Tide". */
  readonly about: string;
}

/** Reasons of the plan for what is not found any more, in the order of the plan. */
export function leftoverReasons(plan: Plan, findings: readonly Finding[]): readonly LeftoverReason[] {
  const found = new Set(findings.map(findingKey));
  return Object.entries(plan.accepted ?? {}).flatMap(([key, { reason }]) => (found.has(key) ? [] : [{ key, reason, about: aboutKey(plan, key) }]));
}

/** A key in words; a sheet that is not there any more is named as such. */
function aboutKey({ sheets }: Plan, key: string): string {
  const [code = '', sheet = ''] = key.split('/');
  const title = Object.hasOwn(CODES, code) ? CODES[code as keyof typeof CODES].title : 'Something this version does not look for';
  if (sheet === '') return title;
  return `${title}, on ${Object.hasOwn(sheets, sheet) ? sheets[sheet]!.name : 'a sheet that is gone'}`;
}
