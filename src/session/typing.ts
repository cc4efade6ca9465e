// Changes made while something is typed: all that is typed into one field, or one form, is one step of undo.

import { type Recipe, abandonGesture, beginGesture, keepGesture, moveGesture } from './change-plan.ts';
import type { Session } from './store.ts';

/** Shows what the typing comes to so far; the recipe tells the whole change since the typing began. */
export function type(session: Session, label: string, recipe: Recipe): void {
  if (session.getState().gesture?.label !== label) beginGesture(session, label);
  moveGesture(session, (plan) => {
    recipe(plan);
  });
}

/** The typing is done. */
export function keepTyped(session: Session): void {
  keepGesture(session);
}

/** The typing is given up: everything is as it was when it began. */
export function forgetTyped(session: Session): void {
  abandonGesture(session);
}
