// Nudging and turning by keys. As long as keys are held it is one step of undo.

import { fromDegrees } from '../../num/angle.ts';
import { abandonGesture, keepGesture } from '../change-plan.ts';
import { slidBy } from '../lay/edit.ts';
import { middleOf, moveTo, turned, turningPlace } from '../lay/moves.ts';
import { liesTogether } from '../lay/together.ts';
import { pickedOn, onTable } from '../lay/on-table.ts';
import type { Session } from '../store.ts';
import { stepOf, turnOf } from './keys.ts';
import type { Home } from './looking.ts';
import { beginMove, graspPicked, writeMove } from './moving.ts';
import type { GestureNode, TableEvent } from './node.ts';

/** Begins with a key that nudges or turns what is picked out; undefined for any other key, or when nothing is picked. */
export function nudging(session: Session, home: Home, first: Extract<TableEvent, { readonly kind: 'key' }>): GestureNode | undefined {
  if (!stepOf(first.key, first.held) && turnOf(first.key, first.held) === undefined) return undefined;
  const state = session.getState();
  const [lead] = pickedOn(state.selection, onTable(state)?.sheet?.id);
  const grasp = lead === undefined ? undefined : graspPicked(session, lead);
  if (!grasp) return undefined;
  const { laying, from } = grasp.taken[0]!;
  beginMove(session, stepOf(first.key, first.held) ? 'Nudge' : 'Turn', grasp);
  let [dx, dy, degrees] = [0, 0, 0];
  const node: GestureNode = {
    name: 'nudging',
    on: (event) => {
      if (!session.getState().gesture) return home.rest().on(event);
      if (event.kind === 'key' && event.key === 'Escape') {
        abandonGesture(session);
        return home.rest();
      }
      const step = event.kind === 'key' ? stepOf(event.key, event.held) : undefined;
      const turn = event.kind === 'key' ? turnOf(event.key, event.held) : undefined;
      if (!step && turn === undefined) {
        if (event.kind === 'move' || event.kind === 'lost') return node;
        keepGesture(session);
        return event.kind === 'keys-up' ? home.rest() : home.rest().on(event);
      }
      dx += step?.dx ?? 0;
      dy += step?.dy ?? 0;
      degrees += turn ?? 0;
      const clockwise = laying.axes.flipped ? -degrees : degrees;
      const wished = turned(slidBy(laying, from, dx, dy), turningPlace(laying.setting, grasp.held), fromDegrees(clockwise));
      const moved = moveTo(laying.setting, grasp.held, { pose: wished, from, grip: middleOf(laying.setting.shape), reach: 0, pull: Infinity });
      writeMove(session, grasp, 'nudge', liesTogether(grasp.taken, moved), moved);
      return node;
    },
  };
  return node.on(first);
}
