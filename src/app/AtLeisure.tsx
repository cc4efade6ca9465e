// Parts of the screen that follow a moving hand at leisure: words and small pictures, a few times a second, made bit by bit between
// the frames in which the hand is followed.

import { type ReactNode, startTransition, useMemo } from 'react';
import { atLeisure } from './at-leisure.ts';
import { SeenContext, useTheSession } from './use-session.ts';

/** As fast as words can be read, in milliseconds. */
const PAUSE = 150;

export function AtLeisure({ children }: { readonly children: ReactNode }) {
  const session = useTheSession();
  const seen = useMemo(() => atLeisure(session, PAUSE, startTransition), [session]);
  return <SeenContext value={seen}>{children}</SeenContext>;
}

/** Parts within those that must keep up with the hand after all. */
export function AtOnce({ children }: { readonly children: ReactNode }) {
  return <SeenContext value={undefined}>{children}</SeenContext>;
}
