// Fields whose value is handed on when the hand leaves them, so that what was typed is one step of undo.

import { useState } from 'react';
import { LengthField } from '../../words/LengthField.tsx';
import { NumberField } from '../../words/NumberField.tsx';

export interface KeptFieldProps {
  readonly label: string;
  readonly value: number;
  readonly onKeep: (value: number) => void;
  readonly hint?: string;
}

/** A length in inches. */
export function KeptLength({ value, onKeep, ...field }: KeptFieldProps) {
  const typing = useTyped(value, onKeep);
  return <LengthField {...field} {...typing} />;
}

/** A number, such as degrees. */
export function KeptNumber({ value, onKeep, ...field }: KeptFieldProps & { readonly unit?: string; readonly least?: number; readonly most?: number; readonly whole?: boolean; readonly decimals?: number }) {
  const typing = useTyped(value, onKeep);
  return <NumberField {...field} {...typing} />;
}

function useTyped(value: number, onKeep: (value: number) => void) {
  const [typed, setTyped] = useState<number>();
  return {
    value: typed ?? value,
    onValue: setTyped,
    onKeep: () => {
      if (typed !== undefined && typed !== value) onKeep(typed);
      setTyped(undefined);
    },
    onGiveUp: () => setTyped(undefined),
  };
}
