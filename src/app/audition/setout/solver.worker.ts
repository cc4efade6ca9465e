// Looks for ways and marks beside the page, so that the page stays quick: the plan and the question come in, the answer goes out.

import { expose } from 'comlink';
import type { Plan } from '../../../model/plan.ts';
import type { Asked } from '../../../session/setout/asked.ts';
import type { Offers } from '../../../session/setout/offer.ts';
import { type MarksTold, marksTold } from '../../../session/marks/marks-told.ts';
import { offersFor } from '../../../session/setout/offers.ts';

const solver = {
  offers: (plan: Plan, asked: Asked): Offers => offersFor(plan, asked),
  marks: (plan: Plan, sheet: string, placement: string): MarksTold | undefined => marksTold(plan, sheet, placement),
};

export type Solver = typeof solver;

expose(solver);
