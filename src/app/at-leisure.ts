// The session's state as those see it who need not keep up with a moving hand: words and small pictures follow it a few times a
// second, and at once when it lets go. What the hand itself moves has the time that this spares.

import type { Session, SessionState } from '../session/store.ts';

export interface SeenSession {
  readonly getState: () => SessionState;
  readonly getInitialState: () => SessionState;
  readonly subscribe: (listener: (state: SessionState, before: SessionState) => void) => () => void;
}

/**
 * The state at most every so many milliseconds while a gesture is under way, and at once otherwise. What a gesture changed is told within
 * `softly`, so that those who are told may take their time over it.
 */
export function atLeisure(session: Session, pause: number, softly: (tell: () => void) => void = (tell) => tell(), clock: () => number = () => performance.now()): SeenSession {
  let seen = session.getState();
  let seenAt = clock();
  let late: ReturnType<typeof setTimeout> | undefined;
  const listeners = new Set<(state: SessionState, before: SessionState) => void>();
  const look = () => {
    clearTimeout(late);
    late = undefined;
    const before = seen;
    seen = session.getState();
    seenAt = clock();
    if (seen === before) return;
    const tell = () => {
      for (const listener of [...listeners]) listener(seen, before);
    };
    if (seen.gesture || before.gesture) softly(tell);
    else tell();
  };
  const heard = () => {
    const { gesture } = session.getState();
    const wait = seenAt + pause - clock();
    if (!gesture || !seen.gesture || wait <= 0) look();
    else late ??= setTimeout(look, wait);
  };
  let stop: (() => void) | undefined;
  return {
    // Unheard, it is always as the session is.
    getState: () => (listeners.size === 0 ? session.getState() : seen),
    getInitialState: session.getInitialState,
    subscribe: (listener) => {
      if (listeners.size === 0) {
        seen = session.getState();
        stop = session.subscribe(heard);
      }
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
        if (listeners.size > 0) return;
        clearTimeout(late);
        late = undefined;
        stop?.();
      };
    },
  };
}
