// The hands in Audition: what is under them decides what a press becomes. Where nothing is, the quilt is looked at as anywhere else.

import { areaAt } from '../area-at.ts';
import { flipPicked, removePicked } from '../lay/edit.ts';
import { type Hit, hitAt, lineUnder } from '../lay/hit.ts';
import { onTable, pickedOn, workOn } from '../lay/on-table.ts';
import { pickNext, pickPlacement } from '../lay/pick.ts';
import { pinPicked } from '../lay/edit.ts';
import { fitTop, placeUnder, pointAt, select, selectNothing, zoomToArea } from '../look.ts';
import type { Session } from '../store.ts';
import type { ScreenPoint } from '../view.ts';
import { gathering } from './gathering.ts';
import { HAND_KEYS } from './keys.ts';
import { type Down, type Home, type Tap, hasMoved, isSecondTap, looking, pressing, waiting } from './looking.ts';
import { beginMove, graspPicked, reachNow, sliding, turning } from './moving.ts';
import type { GestureNode, Hand, TableEvent } from './node.ts';
import { nudging } from './nudging.ts';
import { beginRun, beginTrace, runOfEnd, traceRound, tracing } from './tracing.ts';
import { runFoot, tracingByKeys } from './tracing-by-keys.ts';

/** Nothing is held. The node is named after what the hand is over, so that the pointer can show what it would take. */
export function auditioning(session: Session, lastTap?: Tap, over: Hit['kind'] = 'nothing'): GestureNode {
  const look = looking(session);
  let by: Hand = 'mouse';
  const home: Home = {
    rest: (tap) => auditioning(session, tap),
    tapped: (at) => tappedTable(session, at, by),
    tappedTwice: (at) => tappedTableTwice(session, at),
  };
  const node: GestureNode = {
    name: over === 'nothing' ? 'looking' : `over-${over}`,
    on: (event) => {
      switch (event.kind) {
        case 'down':
          by = event.by;
          return taken(session, home, event, lastTap);
        case 'move': {
          look.on(event);
          if (event.by === 'touch') return node;
          const hit = hitAt(session.getState(), event.at, event.by);
          standFoot(session, hit);
          return hit.kind === over ? node : auditioning(session, lastTap, hit.kind);
        }
        case 'lost':
          look.on(event);
          return over === 'nothing' ? node : auditioning(session, lastTap);
        case 'wheel':
          look.on(event);
          return node;
        case 'key':
          return keyed(session, home, node, event);
        case 'up':
        case 'keys-up':
          return node;
      }
    },
  };
  return node;
}

/** A mouse over the needle line brings the foot there. */
function standFoot(session: Session, hit: Hit): void {
  if (hit.kind !== 'needle') return;
  session.setState({ foot: { placement: hit.placement, needleLine: hit.needleLine, along: hit.along, at: undefined } });
}

/** What a press becomes. */
function taken(session: Session, home: Home, down: Down, lastTap: Tap | undefined): GestureNode {
  const hit = hitAt(session.getState(), down.at, down.by);
  if (down.held?.shift && hit.kind === 'nothing') return gathering(session, home, down);
  switch (hit.kind) {
    case 'nothing':
      return pressing(session, down, lastTap, home);
    case 'handle': {
      const grasp = graspPicked(session, hit.placement);
      if (!grasp) return pressing(session, down, lastTap, home);
      return pressingOn('pressing-handle', session, home, down, lastTap, {
        move: () => {
          beginMove(session, 'Turn', grasp);
          return turning(session, home, down, grasp);
        },
      });
    }
    case 'end':
      return pressingOn('pressing-end', session, home, down, lastTap, {
        move: () => {
          const run = runOfEnd(session, hit);
          if (!run) return undefined;
          beginRun(session, run, 'Change a pass along');
          return tracing(session, home, down, run);
        },
        tap: () => {
          const sheet = onTable(session.getState())?.sheet?.id;
          if (sheet !== undefined) select(session, { kind: 'placement', sheet, placement: hit.placement, pass: hit.pass });
        },
      });
    case 'needle':
      standFoot(session, hit);
      return pressingOn('pressing-needle', session, home, down, lastTap, {
        move: () => {
          const run = beginTrace(session, hit, down.held);
          return run && tracing(session, home, down, run);
        },
        tapTwice: () => traceRound(session, hit),
      });
    case 'template':
      return pressingTemplate(session, home, down, lastTap, hit);
  }
}

/** A template is pressed: moved, it slides; tapped, it is picked; tapped twice, it turns over; a second finger turns it. */
function pressingTemplate(session: Session, home: Home, down: Down, lastTap: Tap | undefined, hit: Extract<Hit, { kind: 'template' }>): GestureNode {
  const sheet = onTable(session.getState())?.sheet?.id;
  const from = placeUnder(session, down.at);
  const slide = (): GestureNode | undefined => {
    if (sheet === undefined) return undefined;
    if (!pickedOn(session.getState().selection, sheet).includes(hit.placement)) pickPlacement(session, sheet, hit.placement);
    const grasp = graspPicked(session, hit.placement);
    if (!grasp) return undefined;
    beginMove(session, 'Slide', grasp);
    return sliding(session, home, down, grasp, from);
  };
  return pressingOn('pressing-template', session, home, down, lastTap, {
    move: slide,
    second: slide,
    tap: () => {
      if (sheet !== undefined) pickPlacement(session, sheet, hit.placement, down.held?.shift);
    },
    tapTwice: () => {
      if (sheet !== undefined) pickPlacement(session, sheet, hit.placement);
      flipPicked(session);
    },
  });
}

interface Presses {
  /** The node a move goes on in; undefined when nothing comes of it. */
  readonly move: () => GestureNode | undefined;
  /** The same for a second finger put down. */
  readonly second?: () => GestureNode | undefined;
  readonly tap?: () => void;
  readonly tapTwice?: () => void;
}

/** A pointer is down on something and has not moved. */
function pressingOn(name: string, session: Session, home: Home, down: Down, lastTap: Tap | undefined, on: Presses): GestureNode {
  const node: GestureNode = {
    name,
    on: (event) => {
      if (event.kind === 'key' && event.key === 'Escape') return waiting(home, down.pointer);
      if (event.kind === 'down' && event.pointer !== down.pointer) return on.second?.()?.on(event) ?? node;
      if (!('pointer' in event) || event.pointer !== down.pointer) return node;
      if (event.kind === 'lost') return home.rest();
      if (event.kind === 'move' && hasMoved(down, event.at)) return on.move()?.on(event) ?? waiting(home, down.pointer);
      if (event.kind !== 'up') return node;
      const tap = { at: event.at, time: event.time };
      pointAt(session, event.at);
      if (!isSecondTap(lastTap, tap)) {
        on.tap?.();
        return home.rest(tap);
      }
      on.tapTwice?.();
      return home.rest();
    },
  };
  return node;
}

/** A tap on the bare table: a line picks the template it was sewn along, nothing lets go of what is picked. */
function tappedTable(session: Session, at: ScreenPoint, by: Hand): void {
  const line = lineUnder(session.getState(), at, by);
  if (line) select(session, { kind: 'placement', ...line });
  else selectNothing(session);
}

/** Twice: the area under the hand is shown large and, where the sheet is for it, worked on. */
function tappedTableTwice(session: Session, at: ScreenPoint): void {
  const state = session.getState();
  const area = areaAt(state.evaluation.top, placeUnder(session, at));
  const on = onTable(state);
  const already = typeof state.framing === 'object' && state.framing.area === area?.id;
  if (!area || already) return fitTop(session);
  if (on?.areas.includes(area)) workOn(session, { area: area.id });
  zoomToArea(session, area.id);
}

const OF_THE_HAND: ReadonlySet<string> = new Set(HAND_KEYS);

function keyed(session: Session, home: Home, node: GestureNode, event: Extract<TableEvent, { readonly kind: 'key' }>): GestureNode {
  const state = session.getState();
  const { key } = event;
  const isPicked = pickedOn(state.selection, onTable(state)?.sheet?.id).length > 0;
  if (isPicked) {
    const nudged = nudging(session, home, event);
    if (nudged) return nudged;
    if (key === 'Enter') return tracingByKeys(session, home) ?? node;
  }
  if (!OF_THE_HAND.has(key)) {
    looking(session).on(event);
    return node;
  }
  switch (key) {
    case 'f':
    case 'F':
      flipPicked(session);
      break;
    case 'p':
    case 'P':
      pinPicked(session, reachNow(session, undefined));
      break;
    case '[':
    case '{':
      runFoot(session, key === '{' ? 'last' : -footStep(event.held.alt));
      break;
    case ']':
    case '}':
      runFoot(session, key === '}' ? 'next' : footStep(event.held.alt));
      break;
    case 'Home':
      runFoot(session, 'last');
      break;
    case 'End':
      runFoot(session, 'next');
      break;
    case 'PageDown':
      pickNext(session, 1);
      break;
    case 'PageUp':
      pickNext(session, -1);
      break;
    case 'Delete':
    case 'Backspace':
      removePicked(session);
      break;
    default:
  }
  return node;
}

function footStep(fine: boolean): number {
  return fine ? 1 / 64 : 1 / 16;
}
