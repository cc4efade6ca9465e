// The paper slip at the right: says aloud what a teacher would say. Its top edge is pinked; its one main button stays in sight.

import { type ReactNode, useLayoutEffect, useRef } from 'react';
import { Said } from '../words/Said.tsx';
import './slip.css';

export interface SlipProps {
  readonly title: string;
  readonly about?: string;
  readonly children: ReactNode;
  /** What stays at the foot of the slip: the buttons. */
  readonly foot?: ReactNode;
}

export function Slip({ title, about, children, foot }: SlipProps) {
  const text = useRef<HTMLDivElement>(null);
  // Words alone are come to with Tab, so that they can be scrolled by keyboard; where there is something to press, that is enough.
  useLayoutEffect(() => {
    text.current!.tabIndex = text.current!.querySelector('button, a, input, select, textarea, [tabindex="0"]') ? -1 : 0;
  });
  return (
    <section className="slip" aria-label={title}>
      <div className="slip-edge" aria-hidden="true" />
      <div ref={text} className="slip-text" tabIndex={-1}>
        <h1>{title}</h1>
        {about !== undefined && <p className="about"><Said>{about}</Said></p>}
        {children}
      </div>
      {foot !== undefined && <div className="slip-foot">{foot}</div>}
    </section>
  );
}

/** A part of the slip under its own small heading. */
export function SlipPart({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <section className="slip-part">
      <h2>{title}</h2>
      {children}
    </section>
  );
}

/** A sentence in the serif voice. */
export function Sentence({ children }: { readonly children: string }) {
  return <p className="sentence"><Said>{children}</Said></p>;
}

/** What follows a sentence, smaller and softer. */
export function Aside({ children }: { readonly children: string }) {
  return <p className="aside"><Said>{children}</Said></p>;
}
