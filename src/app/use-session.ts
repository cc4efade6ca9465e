// The session within React: one for the page, read by parts.

import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import type { Session, SessionState } from '../session/store.ts';

export const SessionContext = createContext<Session | undefined>(undefined);

/** The session itself, to send commands to. */
export function useTheSession(): Session {
  const session = useContext(SessionContext);
  if (!session) throw new Error('Nothing is on the table: a part of the screen was used outside the app.');
  return session;
}

/** A part of the session's state; the component is drawn again when that part changes. */
export function useSession<Part>(part: (state: SessionState) => Part): Part {
  return useStore(useTheSession(), part);
}
