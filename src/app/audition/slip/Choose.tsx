// One of many, chosen from the system's own list: quick by keyboard, large by touch.

import { useId } from 'react';

export interface ChooseProps {
  readonly label: string;
  readonly options: readonly { readonly id: string; readonly name: string }[];
  readonly value: string;
  readonly onChoose: (id: string) => void;
  /** Stands first and means that nothing is chosen. */
  readonly none?: string;
}

export function Choose({ label, options, value, onChoose, none }: ChooseProps) {
  const id = useId();
  return (
    <div className="choose">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={({ target }) => onChoose(target.value)}>
        {none !== undefined && <option value="">{none}</option>}
        {options.map((option) => <option key={option.id} value={option.id}>{option.name}</option>)}
      </select>
    </div>
  );
}
