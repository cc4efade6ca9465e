// The ways in which what is asked can be set out, best first.

import type { Plan } from '../../model/plan.ts';
import type { Asked } from './asked.ts';
import type { Offers } from './offer.ts';
import { echoOffers, matchOffers } from './offers-along.ts';
import { borderOffers } from './offers-border.ts';

/** Never throws; where nothing works, or what is asked about is not there, it says so in words. */
export function offersFor(plan: Plan, asked: Asked): Offers {
  switch (asked.kind) {
    case 'border':
      return borderOffers(plan, asked);
    case 'echo':
      return echoOffers(plan, asked);
    case 'match':
      return matchOffers(plan, asked);
  }
}
