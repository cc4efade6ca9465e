// The facts, reckoned after a frame's own work and as often as leaves the hand most of the time, so that they follow it without
// holding it up.

import { startTransition, useEffect, useState } from 'react';
import { type Facts, factsOf } from '../../../session/measure/facts.ts';
import { useTheSession } from '../../use-session.ts';

/** Reckoning rests so many times as long as it took, and no shorter than this while the hand moves, in milliseconds. */
const REST_TIMES = 4;
const LEAST_REST = 60;

/** The facts about what lies on the table now, a moment late. */
export function useFacts(): Facts | undefined {
  const session = useTheSession();
  const [facts, setFacts] = useState(() => factsOf(session.getState()));
  useEffect(() => {
    let asked = 0;
    let later: ReturnType<typeof setTimeout> | undefined;
    let restedAt = 0;
    const reckon = () => {
      const rest = restedAt - performance.now();
      if (rest > 0 && session.getState().gesture) {
        later = setTimeout(reckon, rest);
        return;
      }
      asked = 0;
      const began = performance.now();
      const facts = factsOf(session.getState());
      startTransition(() => setFacts(facts));
      const ended = performance.now();
      restedAt = ended + Math.max(LEAST_REST, REST_TIMES * (ended - began));
    };
    const ask = () => {
      // Behind the picture of the next frame, not before it.
      if (asked === 0) asked = requestAnimationFrame(() => { later = setTimeout(reckon); });
    };
    const stop = session.subscribe((now, before) => {
      if (now.evaluation !== before.evaluation || now.working !== before.working || now.selection !== before.selection || now.pointer !== before.pointer || now.inHand !== before.inHand || now.view !== before.view) ask();
    });
    ask();
    return () => {
      stop();
      cancelAnimationFrame(asked);
      clearTimeout(later);
    };
  }, [session]);
  return facts;
}
