// A few choices side by side, one of them taken.

import { useId } from 'react';
import { Said } from '../words/Said.tsx';

export interface Choice<Value extends string> {
  readonly value: Value;
  readonly name: string;
}

export interface ChoicesProps<Value extends string> {
  readonly label: string;
  readonly choices: readonly Choice<Value>[];
  readonly value: Value | undefined;
  readonly onChoose: (value: Value) => void;
}

export function Choices<Value extends string>({ label, choices, value, onChoose }: ChoicesProps<Value>) {
  const group = useId();
  return (
    <fieldset className="choices">
      <legend>{label}</legend>
      <div className="choice-row">
        {choices.map((choice) => (
          <label key={choice.value} className="choice">
            <input type="radio" name={group} value={choice.value} checked={choice.value === value} onChange={() => onChoose(choice.value)} />
            <span><Said>{choice.name}</Said></span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

export interface TapsProps {
  readonly label: string;
  readonly taps: readonly { readonly name: string; readonly taken: boolean; readonly onTap: () => void }[];
}

/** Values worth having, each taken by one tap. */
export function Taps({ label, taps }: TapsProps) {
  const id = useId();
  return (
    <div className="choices" role="group" aria-labelledby={id}>
      <p id={id} className="choices-label">{label}</p>
      <div className="choice-row">
        {taps.map(({ name, taken, onTap }) => (
          <button key={name} type="button" className="tap" aria-pressed={taken} onClick={onTap}><Said>{name}</Said></button>
        ))}
      </div>
    </div>
  );
}
