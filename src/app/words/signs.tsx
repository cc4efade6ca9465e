// The few signs, drawn with one line. They always stand beside words.

import type { Severity } from '../../check/finding.ts';

/** What each severity asks for, in words. */
export const ASKS: { readonly [severity in Severity]: string } = {
  error: 'Mend before sewing',
  warning: 'Look at it and decide',
  note: 'Good to know',
};

/** A filled diamond, an open triangle or an open ring. */
export function FindingSign({ severity }: { readonly severity: Severity }) {
  return (
    <svg className={`finding-sign ${severity}`} viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
      {severity === 'error' && <path d="M10 1.5 18.5 10 10 18.5 1.5 10Z" />}
      {severity === 'warning' && <path d="M10 2.5 18.5 17.5H1.5Z" />}
      {severity === 'note' && <circle cx="10" cy="10" r="7.5" />}
    </svg>
  );
}

/** The foot: a ring with the needle in its middle. */
export function FootSign({ size = 20 }: { readonly size?: number }) {
  return (
    <svg className="foot-sign" viewBox="0 0 24 24" width={size} height={size} aria-hidden="true">
      <circle cx="12" cy="12" r="10.4" />
      <circle className="needle-dot" cx="12" cy="12" r="2.4" />
    </svg>
  );
}
