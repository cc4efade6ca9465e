// By what a finding is known again after the plan has changed: what it says of which part of the plan, not how much.

import type { Finding } from './finding.ts';

/** The key under which a plan remembers that a finding is left so: code, sheets, placements, passes and field, without measures and places. */
export function findingKey({ code, where }: Finding): string {
  const { sheet = '', placement = '', pass = '', field = '', other } = where;
  const parts = [code, sheet, placement, pass, field];
  return [...parts, ...(other ? [other.sheet, other.placement ?? '', other.pass ?? ''] : [])].join('/');
}
