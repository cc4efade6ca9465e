// Looks for the ways beside the page, so that the page stays quick: the plan and the question come in, the offers go out.

import { expose } from 'comlink';
import type { Plan } from '../../../model/plan.ts';
import type { Asked } from '../../../session/setout/asked.ts';
import type { Offers } from '../../../session/setout/offer.ts';
import { offersFor } from '../../../session/setout/offers.ts';

const solver = { offers: (plan: Plan, asked: Asked): Offers => offersFor(plan, asked) };

export type Solver = typeof solver;

expose(solver);
