// What the layout of the top could not do as asked, or doubts.

import type { Finding } from '../finding.ts';
import type { CheckInput } from '../input.ts';
import { finding } from '../report.ts';

/** One finding for each problem of the layout. */
export function topProblems({ top }: CheckInput): readonly Finding[] {
  return top.problems.map(({ field, kind, message, measured, limit }) =>
    finding(kind === 'doubtful' ? 'measure-doubtful' : 'top-cannot-be', message, { field }, { ...(measured !== undefined && { measured }), ...(limit !== undefined && { limit }) }),
  );
}
