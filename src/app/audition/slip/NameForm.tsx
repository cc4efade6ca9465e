// A name typed where it stands: Enter keeps it, Escape leaves it so.

import { useId, useState } from 'react';

export interface NameFormProps {
  readonly label: string;
  readonly name: string;
  /** Told the name, or undefined when it is left so. */
  readonly onDone: (name: string | undefined) => void;
}

export function NameForm({ label, name, onDone }: NameFormProps) {
  const id = useId();
  const [typed, setTyped] = useState(name);
  return (
    <form
      className="name-form typed-field"
      onSubmit={(event) => {
        event.preventDefault();
        onDone(typed);
      }}
    >
      <label htmlFor={id}>{label}</label>
      <div className="typed-row words">
        <input
          id={id}
          type="text"
          value={typed}
          maxLength={200}
          autoComplete="off"
          autoFocus
          onFocus={({ target }) => target.select()}
          onChange={({ target }) => setTyped(target.value)}
          onBlur={() => onDone(typed)}
          onKeyDown={(event) => {
            if (event.key !== 'Escape') return;
            event.stopPropagation();
            onDone(undefined);
          }}
        />
      </div>
    </form>
  );
}
