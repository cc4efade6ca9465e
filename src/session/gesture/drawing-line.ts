// Drawing a line by hand on the table in Audition: from where the pencil comes down to where it lifts. Escape gives it up; otherwise
// hands do what they always do there.

import { writePathData } from '../../geometry/svg/write.ts';
import { carryPath } from '../../geometry/change.ts';
import { freehandPath } from '../../geometry/fit/freehand.ts';
import { pathLength } from '../../geometry/measure.ts';
import { inverse } from '../../geometry/pose.ts';
import { axesFor, onTable } from '../lay/on-table.ts';
import { placeUnder } from '../look.ts';
import { ask } from '../setout/setting-out.ts';
import type { Session } from '../store.ts';
import type { GestureNode, TableEvent } from './node.ts';

/** Nothing shorter than this was meant as a line to be sewn, in inches. */
const LEAST = 1;
/** How near the templates should come to a line drawn by hand, in inches: about as steady as a hand is. */
const WITHIN = 1 / 16;

/** Lets hands do what they do, until a line is to be drawn; then draws it. */
export function drawingLine(session: Session, hands: GestureNode): GestureNode {
  let inner = hands;
  let pointer: number | undefined;
  const stop = () => {
    pointer = undefined;
    session.setState({ pencil: undefined });
  };
  const draw = (event: TableEvent): boolean => {
    const { pencil = [] } = session.getState();
    switch (event.kind) {
      case 'key':
        if (event.key === 'Escape') stop();
        return event.key === 'Escape';
      case 'down':
        if (pointer !== undefined) return false;
        pointer = event.pointer;
        session.setState({ pencil: [placeUnder(session, event.at)] });
        return true;
      case 'move':
        if (pointer === event.pointer) session.setState({ pencil: [...pencil, placeUnder(session, event.at)] });
        return true;
      case 'up':
        if (pointer === event.pointer) {
          stop();
          askToSew(session, [...pencil, placeUnder(session, event.at)]);
        }
        return true;
      case 'lost':
        if (pointer === event.pointer) stop();
        return true;
      case 'wheel':
      case 'keys-up':
        return false;
    }
  };
  const node: GestureNode = {
    get name() {
      return session.getState().pencil ? 'drawing' : inner.name;
    },
    on: (event) => {
      if (!session.getState().pencil || !draw(event)) inner = inner.on(event);
      return node;
    },
  };
  return node;
}

/** Picks the pencil up: the next stroke on the table is a line to be sewn. */
export function pickPencilUp(session: Session): void {
  session.setState({ pencil: [] });
}

/** Puts it down with nothing drawn. */
export function putPencilDown(session: Session): void {
  session.setState({ pencil: undefined });
}

function askToSew(session: Session, points: Parameters<typeof freehandPath<'quilt'>>[0]): void {
  const on = onTable(session.getState());
  const path = freehandPath(points);
  if (!on || !path || pathLength(path) < LEAST) return;
  ask(session, { kind: 'match', area: on.area.id, ...(on.sheet && { sheet: on.sheet.id }), line: writePathData(carryPath(inverse(axesFor(on)), path)), within: WITHIN });
}
