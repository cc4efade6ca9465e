// Small decisions: the plan's name, the unit it is shown in, which sheets are sewn; and what is to be printed, which is no part of the plan.

import { changePlan } from './change-plan.ts';
import type { PrintChoice } from './print-choice.ts';
import { type Session, planOf } from './store.ts';

/** Names the plan; a name of nothing but spaces is not taken. */
export function namePlan(session: Session, name: string): void {
  const trimmed = name.trim();
  if (trimmed === '') return;
  changePlan(session, 'Name the plan', (plan) => {
    plan.name = trimmed;
  });
}

/** The unit lengths are shown in; the plan itself stays in inches. */
export function showIn(session: Session, unit: 'in' | 'cm'): void {
  changePlan(session, unit === 'in' ? 'Show inches' : 'Show centimetres', (plan) => {
    plan.shownIn = unit;
  });
}

/** Sews a tracing sheet, or leaves it out; an id that is not there changes nothing. */
export function chooseSheet(session: Session, id: string, chosen: boolean): void {
  const sheet = planOf(session.getState()).sheets[id];
  if (!sheet) return;
  changePlan(session, chosen ? `Sew ${sheet.name}` : `Leave out ${sheet.name}`, (plan) => {
    plan.sheets[id]!.chosen = chosen;
  });
}

/** Changes some of what is chosen for printing; an area of `undefined` is the whole top. No step of undo. */
export function choosePrint(session: Session, change: Partial<PrintChoice>): void {
  session.setState(({ print }) => ({ print: { ...print, ...change } }));
}
