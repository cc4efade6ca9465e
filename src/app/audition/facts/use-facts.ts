// The facts, reckoned once a frame at most and after the frame's own work, so that they follow the hand without holding it up.

import { useEffect, useState } from 'react';
import { type Facts, factsOf } from '../../../session/measure/facts.ts';
import { useTheSession } from '../../use-session.ts';

/** The facts about what lies on the table now, at most a frame late. */
export function useFacts(): Facts | undefined {
  const session = useTheSession();
  const [facts, setFacts] = useState(() => factsOf(session.getState()));
  useEffect(() => {
    let asked = 0;
    let later: ReturnType<typeof setTimeout> | undefined;
    const reckon = () => {
      asked = 0;
      setFacts(factsOf(session.getState()));
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
