// The signs of Audition: a pin, filled when it holds, dashed when it is only asked for, a triangle when it stands in the way; flip and turn.

export type PinState = 'held' | 'asked' | 'in-the-way';

const SAID: { readonly [state in PinState]: string } = { held: 'Held: ', asked: 'Not held yet: ', 'in-the-way': 'In the way: ' };

export function PinSign({ state }: { readonly state: PinState }) {
  return (
    <>
      <svg className={`pin-sign ${state}`} viewBox="0 0 22 22" width="22" height="22" aria-hidden="true">
        {state === 'in-the-way' ? <path d="M11 3 20 19H2Z" /> : <><path d="M12.5 9.5 4 18.5" /><circle cx="14.5" cy="7" r="4.2" /></>}
      </svg>
      <span className="only-heard">{SAID[state]}</span>
    </>
  );
}

/** Two facing triangles on a dashed line. */
export function FlipSign() {
  return (
    <svg className="plain-sign" viewBox="0 0 20 18" width="20" height="18" aria-hidden="true">
      <path d="M8 3v12L2 15ZM12 3v12l6 0Z" />
      <path className="dashed" d="M10 1v16" />
    </svg>
  );
}

/** An open arc with a head. */
export function TurnSign() {
  return (
    <svg className="plain-sign" viewBox="0 0 20 18" width="20" height="18" aria-hidden="true">
      <path d="M4 13a6.5 6.5 0 1 1 11.5-1" />
      <path d="M18 8.5 15.4 12.4 11.4 10" />
    </svg>
  );
}
