// Picking several templates out with a rectangle drawn over the bare table.

import { boundsMeet, boundsOf, carryBounds } from '../../geometry/bounds.ts';
import { after } from '../../geometry/pose.ts';
import { axesOf, onTable, pickedOn } from '../lay/on-table.ts';
import { pickPlacements } from '../lay/pick.ts';
import type { Session, SessionState } from '../store.ts';
import { type ScreenPoint, onQuilt } from '../view.ts';
import { type Down, type Home, hasMoved, waiting } from './looking.ts';
import type { GestureNode } from './node.ts';

/** A pointer draws a rectangle; what it reaches is picked out with what was picked before. */
export function gathering(session: Session, home: Home, down: Down): GestureNode {
  const node: GestureNode = {
    name: 'gathering',
    on: (event) => {
      if (event.kind === 'key' && event.key === 'Escape') {
        session.setState({ gathering: undefined });
        return waiting(home, down.pointer);
      }
      if (!('pointer' in event) || event.pointer !== down.pointer) return node;
      if (event.kind === 'move') {
        if (hasMoved(down, event.at) || session.getState().gathering) session.setState({ gathering: [down.at, event.at] });
        return node;
      }
      const state = session.getState();
      session.setState({ gathering: undefined });
      const sheet = onTable(state)?.sheet?.id;
      if (event.kind === 'up' && state.gathering && sheet !== undefined) {
        pickPlacements(session, sheet, [...new Set([...pickedOn(state.selection, sheet), ...placementsIn(state, state.gathering)])]);
      }
      return home.rest();
    },
  };
  return node;
}

/** The placements of the sheet on the table whose templates a rectangle of the screen reaches. */
function placementsIn(state: SessionState, [a, b]: readonly [ScreenPoint, ScreenPoint]): readonly string[] {
  const on = onTable(state);
  if (!on?.sheet) return [];
  const p = onQuilt(state.view, { x: Math.min(a.x, b.x), y: Math.min(a.y, b.y) });
  const q = onQuilt(state.view, { x: Math.max(a.x, b.x), y: Math.max(a.y, b.y) });
  const { id } = on.sheet;
  return state.evaluation.placements.flatMap((laid) => {
    if (laid.sheet !== id || !laid.areas.includes(on.area.id)) return [];
    const there = carryBounds(after(laid.pose, axesOf(laid, on.area)), boundsOf(laid.template.outline));
    return boundsMeet(there, { minX: p.x, minY: p.y, maxX: q.x, maxY: q.y }) ? [laid.placement] : [];
  });
}
