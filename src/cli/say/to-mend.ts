// A word beside a drawing that was made although something is still to be mended.

import type { Finding } from '../../check/finding.ts';
import { counted } from './words.ts';

/** The reminder, or undefined when there is nothing to mend. */
export function toMendFirst(findings: readonly Finding[]): string | undefined {
  const errors = findings.filter((finding) => finding.severity === 'error').length;
  return errors === 0 ? undefined : `${counted(errors, 'thing')} to mend before sewing; needlefall check says what.`;
}
