// The foot run by keys: Enter sets where the needle goes down, arrows run the foot, Enter sets where it stops.

import { abandonGesture, keepGesture } from '../change-plan.ts';
import { UNDER_FOOT } from '../../num/tolerances.ts';
import { pickedOn, onTable } from '../lay/on-table.ts';
import { type Stop, apartAlong } from '../lay/trace.ts';
import type { NeedleLine } from '../../needle/needle-line.ts';
import type { Session } from '../store.ts';
import type { Home } from './looking.ts';
import { stepOf } from './keys.ts';
import type { GestureNode, TableEvent } from './node.ts';
import { type Edge, beginRun, edgeOf, newRun, withinRound, writeRun } from './tracing.ts';

type Key = Extract<TableEvent, { readonly kind: 'key' }>;

/** How the foot is run by a key, in signed inches along the needle line, clockwise positive; undefined for any other key. */
export function runOfKey({ key, held }: Key): number | 'next' | 'last' | undefined {
  if (key === 'PageDown') return 'next';
  if (key === 'PageUp') return 'last';
  const step = stepOf(key, held);
  return step && (step.dx + step.dy);
}

/** The needle line the foot stands on, or else the first of the template picked out. */
export function edgeUnderFoot(session: Session): { readonly edge: Edge; readonly along: number } | undefined {
  const state = session.getState();
  const [picked] = pickedOn(state.selection, onTable(state)?.sheet?.id);
  if (picked === undefined) return undefined;
  const foot = state.foot?.placement === picked ? state.foot : undefined;
  const edge = edgeOf(session, picked, foot?.needleLine ?? 0);
  return edge && { edge, along: foot?.along ?? edge.stops[0]?.along ?? 0 };
}

/** Runs the foot along the needle line without sewing, so that a pass can begin elsewhere. */
export function runFoot(session: Session, way: number | 'next' | 'last'): void {
  const standing = edgeUnderFoot(session);
  if (!standing) return;
  const { edge, along } = standing;
  const to = steppedTo(edge.line, along, edge.stops, way);
  const stop = stopAt(edge, to);
  session.setState({ foot: { placement: edge.laying.id, needleLine: edge.needleLine, along: stop?.along ?? along + to, at: stop?.name } });

  function stopAt({ line, stops }: Edge, ran: number): Stop | undefined {
    return stops.find((candidate) => Math.abs(apartAlong(line, along + ran, candidate.along)) <= UNDER_FOOT);
  }
}

/** The needle goes down where the foot stands; undefined when no template is picked. */
export function tracingByKeys(session: Session, home: Home): GestureNode | undefined {
  const standing = edgeUnderFoot(session);
  if (!standing) return undefined;
  const { edge, along } = standing;
  const start = edge.stops.find((stop) => Math.abs(apartAlong(edge.line, along, stop.along)) <= UNDER_FOOT);
  const run = newRun(session, edge, { along, stop: start });
  beginRun(session, run, 'Trace a pass along');
  writeRun(session, run, 0);
  let ran = 0;
  const node: GestureNode = {
    name: 'tracing-by-keys',
    on: (event) => {
      if (!session.getState().gesture) return home.rest();
      if (event.kind === 'down') {
        keepGesture(session);
        return home.rest().on(event);
      }
      if (event.kind !== 'key') return node;
      if (event.key === 'Enter') {
        keepGesture(session);
        return home.rest();
      }
      if (event.key === 'Escape') {
        abandonGesture(session);
        return home.rest();
      }
      const way = runOfKey(event);
      if (way === undefined) return node;
      ran = withinRound(edge.line, ran + steppedTo(edge.line, along + ran, edge.stops, way), along);
      writeRun(session, { ...run, ran }, UNDER_FOOT);
      return node;
    },
  };
  return node;
}

/**
 * How far the foot goes for a step: it halts at the first thing on its way that would draw it, so that crossings can be met exactly.
 * `next` and `last` go to the next such thing either way.
 */
function steppedTo(line: NeedleLine, along: number, stops: readonly Stop[], way: number | 'next' | 'last'): number {
  const forward = way === 'next' || (typeof way === 'number' && way > 0);
  const most = typeof way === 'number' ? Math.abs(way) : Infinity;
  let least = most;
  for (const stop of stops) {
    const apart = line.path.closed ? (((stop.along - along) % line.length) + line.length) % line.length : stop.along - along;
    const away = forward ? apart : line.path.closed ? (line.length - apart) % line.length : -apart;
    if (away > UNDER_FOOT && away < least) least = away;
  }
  if (!Number.isFinite(least)) return 0;
  return forward ? least : -least;
}
