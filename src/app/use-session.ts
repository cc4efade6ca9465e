// The session within React: one for the page, read by parts.

import { createContext, useContext, useLayoutEffect, useReducer, useRef, useSyncExternalStore } from 'react';
import { useStore } from 'zustand';
import type { Finding } from '../check/finding.ts';
import type { SeenSession } from './at-leisure.ts';
import { findingsAtLeisure } from './findings-at-leisure.ts';
import type { Session, SessionState } from '../session/store.ts';

export const SessionContext = createContext<Session | undefined>(undefined);

/** The session as a part of the screen sees it that follows a moving hand at leisure; as it is when left out. */
export const SeenContext = createContext<SeenSession | undefined>(undefined);

/** The session itself, to send commands to. */
export function useTheSession(): Session {
  const session = useContext(SessionContext);
  if (!session) throw new Error('Nothing is on the table: a part of the screen was used outside the app.');
  return session;
}

/** A part of the session's state; the component is drawn again when that part changes. */
export function useSession<Part>(part: (state: SessionState) => Part): Part {
  const session = useTheSession();
  const seen = useContext(SeenContext);
  // Which of the two a component has is settled by where it stands and does not change as long as it stands there.
  return seen ? useSeen(seen, part) : useStore(session, part);
}

/**
 * The same for those who see the session at leisure. React makes what follows from a store at once and in one piece; told by a change of
 * its own state, it may make it bit by bit.
 */
function useSeen<Part>(seen: SeenSession, part: (state: SessionState) => Part): Part {
  const [, drawAgain] = useReducer((times: number) => times + 1, 0);
  const value = part(seen.getState());
  const drawn = useRef({ part, value });
  useLayoutEffect(() => {
    drawn.current = { part, value };
  });
  useLayoutEffect(() => {
    const look = (state: SessionState) => {
      if (!isSamePart(drawn.current, state)) drawAgain();
    };
    // What has changed since it was drawn and before it listened.
    look(seen.getState());
    return seen.subscribe(look);
  }, [seen]);
  return value;
}

/** A part that cannot be had any more, such as that of something deleted, is not the same. */
function isSamePart<Part>({ part, value }: { readonly part: (state: SessionState) => Part; readonly value: Part }, state: SessionState): boolean {
  try {
    return Object.is(part(state), value);
  } catch {
    return false;
  }
}

/** The findings, looked for in spare moments after each change; nothing while a plan newly laid on the table has not been checked. */
export function useFindingsAtLeisure(): readonly Finding[] | undefined {
  const { get, subscribe } = findingsAtLeisure(useTheSession());
  return useSyncExternalStore(subscribe, get);
}
