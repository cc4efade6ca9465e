// The tape of facts under the table: what would be measured by hand, always in sight.

import type { ReactNode } from 'react';
import { Said } from '../words/Said.tsx';
import { ViewControls } from './ViewControls.tsx';
import './tape.css';

export interface Fact {
  readonly name: string;
  /** "60 1/2 in": everything after the number is set small. */
  readonly value: string;
}

export function Tape({ facts, children }: { readonly facts: readonly Fact[]; readonly children?: ReactNode }) {
  return (
    <div className="tape">
      <dl className="facts">
        {facts.map(({ name, value }) => (
          <div key={name} className="fact">
            <dt>{name}</dt>
            <dd><Measure>{value}</Measure></dd>
          </div>
        ))}
      </dl>
      {children}
      <ViewControls />
    </div>
  );
}

/** A measure with its number large and what follows it small; words without a number stay small. */
function Measure({ children }: { readonly children: string }) {
  const found = /^([\d,. /]*\d)(?: ([^\d]*))?$/.exec(children);
  if (!found) return <span className="fact-words"><Said>{children}</Said></span>;
  return (
    <>
      <span className="fact-number"><Said>{found[1]!}</Said></span>
      {found[2] !== undefined && <span className="fact-unit"> {found[2]}</span>}
    </>
  );
}
