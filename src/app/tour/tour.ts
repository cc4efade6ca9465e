// The tour: which slip is up, and that it was seen. What she looked at before comes back when it ends.

import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { enterRoom } from '../../session/look.ts';
import type { Session, SessionState } from '../../session/store.ts';

interface TourState {
  /** Counted from 0; undefined while there is no tour. */
  readonly at: number | undefined;
  readonly before: Pick<SessionState, 'room' | 'view' | 'framing' | 'shown' | 'selection' | 'working' | 'laid'> | undefined;
}

const KEPT_AS = 'needlefall.tour';
const tour = createStore<TourState>(() => ({ at: undefined, before: undefined }));

/** The slip that is up, within React. */
export function useTourAt(): number | undefined {
  return useStore(tour, ({ at }) => at);
}

/** True when the tour was taken or skipped on this computer; a browser that keeps nothing does not ask twice. */
export function isTourSeen(): boolean {
  try {
    return localStorage.getItem(KEPT_AS) !== null;
  } catch {
    return true;
  }
}

/** Puts up the slip of this number; the first time, remembers what is looked at. */
export function showSlip(session: Session, at: number): void {
  const { room, view, framing, shown, selection, working, laid } = session.getState();
  tour.setState((state) => ({ at, before: state.before ?? { room, view, framing, shown, selection, working, laid } }));
}

/** Takes the slip away and lays everything as it was looked at before, unless another plan came onto the table meanwhile. */
export function endTour(session: Session): void {
  const { before } = tour.getState();
  tour.setState({ at: undefined, before: undefined });
  try {
    localStorage.setItem(KEPT_AS, 'seen');
  } catch {
    // It is offered again next time.
  }
  if (!before || session.getState().laid !== before.laid) return;
  const { room, view, framing, shown, selection, working } = before;
  goToRoom(session, room);
  session.setState({ view, framing, shown, selection, working });
}

/** Walks into a room so that the browser's address says so too. */
export function goToRoom(session: Session, room: SessionState['room']): void {
  if (session.getState().room === room) return;
  enterRoom(session, room);
  location.hash = room;
}
