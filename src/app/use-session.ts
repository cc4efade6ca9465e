// The session within React: one for the page, read by parts.

import { createContext, useContext, useSyncExternalStore } from 'react';
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
  return useStore(useContext(SeenContext) ?? session, part);
}

/** The findings, looked for in spare moments after each change; nothing while a plan newly laid on the table has not been checked. */
export function useFindingsAtLeisure(): readonly Finding[] | undefined {
  const { get, subscribe } = findingsAtLeisure(useTheSession());
  return useSyncExternalStore(subscribe, get);
}
