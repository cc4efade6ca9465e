// What lies on the table, read again when the plan, the choice or what is picked changes, and not at every move of the pointer.

import { useMemo } from 'react';
import { type OnTable, onTable } from '../../session/lay/on-table.ts';
import { type Stack, stackOf } from '../../session/sheet/stack.ts';
import { useSession, useTheSession } from '../use-session.ts';

/** The sheet and the area on the table; undefined when the top has no area. */
export function useOnTable(): OnTable | undefined {
  const session = useTheSession();
  const evaluation = useSession((state) => state.evaluation);
  const working = useSession((state) => state.working);
  // The two are all that it is read from.
  return useMemo(() => onTable({ ...session.getState(), evaluation, working }), [session, evaluation, working]);
}

/** The stack of sheets for the area on the table. */
export function useStack(): Stack | undefined {
  const session = useTheSession();
  const evaluation = useSession((state) => state.evaluation);
  const working = useSession((state) => state.working);
  return useMemo(() => stackOf({ ...session.getState(), evaluation, working }), [session, evaluation, working]);
}
