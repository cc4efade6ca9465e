// A field words are typed into, kept when the hand leaves it: a name, or notes over several lines.

import { useId, useState } from 'react';

export interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onKeep: (text: string) => void;
  readonly lines?: number;
}

export function TextField({ label, value, onKeep, lines = 1 }: TextFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const keep = () => {
    if (typed !== undefined && typed !== value) onKeep(typed);
    setTyped(undefined);
  };
  const shared = { id, value: typed ?? value, onBlur: keep, autoComplete: 'off' } as const;
  return (
    <div className="typed-field">
      <label htmlFor={id}>{label}</label>
      <div className="typed-row words">
        {lines > 1 ? (
          <textarea {...shared} rows={lines} onChange={({ target }) => setTyped(target.value)} onKeyDown={(event) => event.key === 'Escape' && setTyped(undefined)} />
        ) : (
          <input
            {...shared}
            type="text"
            maxLength={200}
            onChange={({ target }) => setTyped(target.value)}
            onKeyDown={(event) => {
              if (event.key === 'Enter') keep();
              if (event.key === 'Escape') setTyped(undefined);
            }}
          />
        )}
      </div>
    </div>
  );
}
