// A switch: on or off, its whole row to press.

import type { ReactNode } from 'react';

export interface SwitchProps {
  readonly name: string;
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
  /** Stands at the end of the row. */
  readonly children?: ReactNode;
}

export function Switch({ name, on, onChange, children }: SwitchProps) {
  return (
    <label className="switch">
      <input type="checkbox" role="switch" checked={on} onChange={(event) => onChange(event.target.checked)} />
      <span className="switch-track" aria-hidden="true"><span /></span>
      <span className="switch-name">{name}</span>
      {children}
    </label>
  );
}
