// Words with true fractions: "3 3/16 in" with a thin space and a set fraction, spoken as it is written.

import type { ReactNode } from 'react';

/** A measure and its unit stay on one line. */
const MEASURE = /(\d) (in|cm|mm|yd|m|ft)\b/g;
const NO_BREAK = '\u00a0';
const FRACTION = /(?:(\d+) )?(?<![\d/.])(\d+\/\d+)(?![\d/])/g;

/** A sentence or a measure, its fractions set as fractions. */
export function Said({ children }: { readonly children: string }) {
  const text = children.replace(MEASURE, `$1${NO_BREAK}$2`);
  const parts: ReactNode[] = [];
  let done = 0;
  for (const found of text.matchAll(FRACTION)) {
    const [all, whole, fraction] = found;
    if (!isProper(fraction!)) continue;
    parts.push(text.slice(done, found.index));
    const set = <span key={found.index} className="fraction">{fraction}</span>;
    // A whole number and its fraction stay on one line.
    parts.push(whole === undefined ? set : <span key={found.index} className="mixed-number">{`${whole}\u2009`}{set}</span>);
    done = found.index + all.length;
  }
  parts.push(text.slice(done));
  return <>{parts}</>;
}

/** Less than one: what is not (an 80/20 batting) is no fraction. */
function isProper(fraction: string): boolean {
  const [over, under] = fraction.split('/').map(Number);
  return over! < under!;
}
