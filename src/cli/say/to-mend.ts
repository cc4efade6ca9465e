// What is still to be mended, and a word about it beside a drawing that was made all the same.

import type { Finding } from '../../check/finding.ts';
import { counted } from './words.ts';

/** Whether it is to be mended before sewing: an error that the quilter has not said she leaves so. */
export function isToMend({ severity, accepted }: Finding): boolean {
  return severity === 'error' && accepted === undefined;
}

/** The reminder, or undefined when there is nothing to mend. */
export function toMendFirst(findings: readonly Finding[]): string | undefined {
  const errors = findings.filter(isToMend).length;
  return errors === 0 ? undefined : `${counted(errors, 'thing')} to mend before sewing; needlefall check says what.`;
}
