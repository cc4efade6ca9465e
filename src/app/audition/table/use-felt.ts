// A light tap of the device, where it can, when a template is drawn to something or the foot comes to a place that draws it.

import { useEffect } from 'react';
import type { SessionState } from '../../../session/store.ts';
import { useTheSession } from '../../use-session.ts';

/** In milliseconds: felt, and not heard. */
const TAP = 8;

export function useFelt(): void {
  const session = useTheSession();
  useEffect(() => {
    // Only some devices can, and browsers that cannot have no such thing.
    if (typeof navigator.vibrate !== 'function') return undefined;
    return session.subscribe((now, before) => {
      const drawn = drawnTo(now);
      if (drawn !== '' && drawn !== drawnTo(before)) navigator.vibrate(TAP);
    });
  }, [session]);
}

/** What the hand is drawn to now, as one text; nothing when it is drawn to nothing. */
function drawnTo({ inHand, foot }: SessionState): string {
  if (!inHand) return '';
  if (inHand.does === 'trace') return foot?.at === undefined ? '' : `${foot.at} ${foot.along}`;
  return inHand.made.map(({ registration: { put, on } }) => `${put} ${on}`).join('\n');
}
