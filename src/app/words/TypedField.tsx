// A field a number is typed into. What can be read is handed on at every letter; what cannot is said beside the field, and
// nothing happens. On leaving, the field says again, tidily, what it holds.

import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import type { Outcome } from '../../num/outcome.ts';
import { Said } from './Said.tsx';
import './typed-field.css';

export interface TypedFieldProps {
  readonly label: string;
  /** Undefined for an empty field. */
  readonly value: number | undefined;
  readonly onValue: (value: number) => void;
  /** Given where the field may be left empty: told when it is emptied. */
  readonly onEmpty?: () => void;
  /** What is wrong with the value beside others, said in place of a problem of its own. */
  readonly problem?: string | undefined;
  /** What to know about the field; said below it while nothing is wrong. */
  readonly hint?: string;
  /** Beside the field: the unit, a button. */
  readonly beside?: ReactNode;
  /** Told when the hand leaves the field or presses Enter. */
  readonly onKeep?: () => void;
  /** Told when Escape is pressed after typing; without it, the value from before is handed on again. */
  readonly onGiveUp?: () => void;
}

interface Kind {
  readonly read: (text: string) => Outcome<number, { readonly message: string }>;
  readonly write: (value: number) => string;
  readonly inputMode: 'text' | 'numeric' | 'decimal';
}

export function TypedField({ label, value, onValue, onEmpty, problem, hint, beside, onKeep, onGiveUp, read, write, inputMode }: TypedFieldProps & Kind) {
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const before = useRef<number>(undefined);
  const unread = typed === undefined ? undefined : unreadable(typed, read, onEmpty !== undefined);
  const wrong = unread ?? problem;
  const said = wrong ?? hint;

  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // What is wrong is no use below the edge of the paper.
    if (wrong !== undefined && place.current?.contains(document.activeElement)) place.current.scrollIntoView({ block: 'nearest' });
  }, [wrong]);

  const take = (text: string) => {
    setTyped(text);
    if (text.trim() === '') return onEmpty?.();
    const number = read(text);
    if (number.ok) onValue(number.value);
  };
  const giveUp = () => {
    setTyped(undefined);
    if (onGiveUp) onGiveUp();
    else if (before.current !== undefined) onValue(before.current);
    else onEmpty?.();
  };

  return (
    <div className="typed-field" ref={place}>
      <label htmlFor={id}>{label}</label>
      <div className="typed-row">
        <input
          id={id}
          type="text"
          inputMode={inputMode}
          autoComplete="off"
          spellCheck={false}
          value={typed ?? (value === undefined ? '' : write(value))}
          aria-invalid={wrong !== undefined}
          aria-describedby={said === undefined ? undefined : `${id}-said`}
          onFocus={({ target }) => {
            before.current = value;
            target.select();
          }}
          onChange={({ target }) => take(target.value)}
          onBlur={() => {
            setTyped(undefined);
            onKeep?.();
          }}
          onKeyDown={(event) => {
            if (event.key === 'Enter') {
              setTyped(undefined);
              before.current = value;
              onKeep?.();
            }
            if (event.key === 'Escape' && typed !== undefined) {
              event.stopPropagation();
              giveUp();
            }
          }}
        />
        {beside}
      </div>
      {said !== undefined && <p id={`${id}-said`} className={wrong === undefined ? 'typed-hint' : 'typed-wrong'}><Said>{said}</Said></p>}
    </div>
  );
}

function unreadable(text: string, read: Kind['read'], mayBeEmpty: boolean): string | undefined {
  if (mayBeEmpty && text.trim() === '') return undefined;
  const number = read(text);
  return number.ok ? undefined : number.problem.message;
}
