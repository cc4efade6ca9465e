// When a repeat along a border gets another count, the division that is worked on lies elsewhere: the table goes there, so that the
// template does not slip out of sight.

import { useEffect, useRef } from 'react';
import { axesFor, onTable } from '../../../session/lay/on-table.ts';
import { zoomToWork } from '../../../session/lay/view.ts';
import type { SessionState } from '../../../session/store.ts';
import { useSession, useTheSession } from '../../use-session.ts';

export function useDivisionInSight(): void {
  const session = useTheSession();
  const area = useSession((state) => onTable(state)?.area.id);
  const division = useSession(whereWorked);
  const before = useRef({ area, division });
  useEffect(() => {
    const last = before.current;
    before.current = { area, division };
    // Another area is shown by the table itself.
    if (last.area === area && last.division !== division) zoomToWork(session);
  }, [session, area, division]);
}

/** Where the axes lie that are worked in, as one text. */
function whereWorked(state: SessionState): string {
  const on = onTable(state);
  if (!on) return '';
  const { x, y } = axesFor(on);
  return `${x} ${y}`;
}
