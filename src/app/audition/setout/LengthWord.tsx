// A dotted word for a wished length, or for leaving it free.

import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { LengthField } from '../../words/LengthField.tsx';
import { useLengths } from '../../words/lengths.ts';
import { WordForm } from '../slip/WordForm.tsx';

export interface LengthWordProps {
  readonly label: string;
  /** What the word says when nothing is wished: "any length". */
  readonly free: string;
  /** Said before the length: "about". */
  readonly before?: string;
  /** Inches. */
  readonly value: number | undefined;
  readonly least: number;
  readonly most: number;
  readonly onValue: (value: number | undefined) => void;
}

export function LengthWord({ label, free, before, value, least, most, onValue }: LengthWordProps) {
  const length = useLengths();
  const text = value === undefined ? free : `${before === undefined ? '' : `${before} `}${length(value)}`;
  return (
    <WordForm label={label} text={text}>
      {(close) => <LengthForm label={label} free={free} value={value} least={least} most={most} onDone={(to) => { onValue(to); close(); }} />}
    </WordForm>
  );
}

function LengthForm({ label, free, value, least, most, onDone }: Omit<LengthWordProps, 'onValue' | 'before'> & { readonly onDone: (value: number | undefined) => void }) {
  const [typed, setTyped] = useState(value);
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        onDone(typed);
      }}
    >
      <LengthField label={label} value={typed} onValue={setTyped} least={least} most={most} />
      <div className="form-foot wide">
        <Button className="button" onPress={() => onDone(undefined)}>{sentenceCase(free)}</Button>
        <Button className="button main" type="submit">Done</Button>
      </div>
    </form>
  );
}

function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
