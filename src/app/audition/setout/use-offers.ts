// The ways something can be set out, looked for beside the page; the last ones stay in sight until the next are there.

import { useEffect, useState } from 'react';
import { wrap } from 'comlink';
import type { Asked } from '../../../session/setout/asked.ts';
import type { Offers } from '../../../session/setout/offer.ts';
import { planOf } from '../../../session/store.ts';
import { useSession, useTheSession } from '../../use-session.ts';
import type { Solver } from './solver.worker.ts';

export interface Found {
  readonly offers: Offers;
  readonly isLooking: boolean;
}

const NOTHING_YET: Offers = { kind: 'offers', offers: [] };
const BROKEN: Offers = { kind: 'none', why: ['Something went wrong inside while looking. Your plan is untouched; ask again, or ask for something else.'] };

/** Looks again whenever the kit, the top or what is asked changes; not when only sheets do, as they do when an offer is chosen. */
export function useOffers(asked: Asked): Found {
  const session = useTheSession();
  const kit = useSession((state) => state.evaluation.plan.kit);
  const top = useSession((state) => state.evaluation.plan.top);
  const shownIn = useSession((state) => state.evaluation.plan.shownIn);
  const [found, setFound] = useState<Found>({ offers: NOTHING_YET, isLooking: true });
  useEffect(() => {
    let isWanted = true;
    setFound((before) => ({ ...before, isLooking: true }));
    const worker = new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module', name: 'set-out' });
    const end = (offers: Offers) => {
      if (isWanted) setFound({ offers, isLooking: false });
      worker.terminate();
    };
    worker.onerror = () => end(BROKEN);
    wrap<Solver>(worker).offers({ ...planOf(session.getState()), kit, top, shownIn }, asked).then(end, () => end(BROKEN));
    return () => {
      isWanted = false;
      worker.terminate();
    };
  }, [session, asked, kit, top, shownIn]);
  return found;
}
