// Words with true fractions: "3 3/16 in" with a thin space and a set fraction, spoken as it is written.

import { Fragment } from 'react';

const FRACTION = /(?:(\d+) )?(?<![\d/.])(\d+\/\d+)(?![\d/])/g;

/** A sentence or a measure, its fractions set as fractions. */
export function Said({ children }: { readonly children: string }) {
  const parts: React.ReactNode[] = [];
  let done = 0;
  for (const found of children.matchAll(FRACTION)) {
    const [all, whole, fraction] = found;
    parts.push(children.slice(done, found.index));
    parts.push(
      <Fragment key={found.index}>
        {whole !== undefined && `${whole}\u2009`}
        <span className="fraction">{fraction}</span>
      </Fragment>,
    );
    done = found.index + all.length;
  }
  parts.push(children.slice(done));
  return <>{parts}</>;
}
