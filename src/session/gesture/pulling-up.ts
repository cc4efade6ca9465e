// A template pulled up from the shelf: it comes to the table under the hand and slides on as any other; let go outside the table, it
// goes back to the shelf.

import { carry, inverse } from '../../geometry/pose.ts';
import { abandonGesture, beginGesture, moveGesture } from '../change-plan.ts';
import { broughtIn, nameOfTemplate, writeBroughtIn } from '../lay/bring-in.ts';
import { axesFor, onTable } from '../lay/on-table.ts';
import { placeUnder, select } from '../look.ts';
import type { Session } from '../store.ts';
import type { ScreenPoint } from '../view.ts';
import { type Down, type Home, waiting } from './looking.ts';
import { graspPicked, sliding } from './moving.ts';
import type { GestureNode } from './node.ts';

/** The hand that pressed a template on the shelf has brought it over the table; undefined when it cannot be laid there. */
export function pullingUp(session: Session, home: Home, template: string, down: Down): GestureNode | undefined {
  const state = session.getState();
  const on = onTable(state);
  if (!on) return undefined;
  const hand = placeUnder(session, down.at);
  const brought = broughtIn(state, template, carry(inverse(axesFor(on)), hand));
  if (!brought) return undefined;
  beginGesture(session, `Lay ${nameOfTemplate(state, template)}`);
  moveGesture(session, (plan) => writeBroughtIn(plan, brought));
  select(session, { kind: 'placement', sheet: brought.sheet, placement: brought.id });
  const grasp = graspPicked(session, brought.id);
  if (!grasp) {
    abandonGesture(session);
    return undefined;
  }
  return overTable(session, home, down, sliding(session, home, down, { ...grasp, first: (plan) => writeBroughtIn(plan, brought) }, hand));
}

/** Slides as long as the hand is over the table when it lets go. */
function overTable(session: Session, home: Home, down: Down, inner: GestureNode): GestureNode {
  let at: ScreenPoint = down.at;
  const node: GestureNode = {
    name: inner.name,
    on: (event) => {
      if ('at' in event && 'pointer' in event && event.pointer === down.pointer) at = event.at;
      if (event.kind === 'up' && event.pointer === down.pointer && !isOn(session, at)) {
        abandonGesture(session);
        return waiting(home, down.pointer).on(event);
      }
      const next = inner.on(event);
      return next === inner ? node : next;
    },
  };
  return node;
}

function isOn(session: Session, { x, y }: ScreenPoint): boolean {
  const { width, height } = session.getState().table;
  return x >= 0 && y >= 0 && x <= width && y <= height;
}
