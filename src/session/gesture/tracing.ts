// The gestures that trace: the foot rides the needle line after the hand, from where the needle goes down to where it stops.

import { SAME_POINT } from '../../num/tolerances.ts';
import { type Point, distance } from '../../geometry/point.ts';
import { carry } from '../../geometry/pose.ts';
import type { Pass, PassEnd } from '../../model/plan.ts';
import type { NeedleLine } from '../../needle/needle-line.ts';
import { abandonGesture, beginGesture, changePlan, keepGesture, moveGesture } from '../change-plan.ts';
import { lies, namedTogether } from '../lay/edit.ts';
import type { Hit } from '../lay/hit.ts';
import { laidHere } from '../lay/on-table.ts';
import type { Laid } from '../lay/placed.ts';
import { type Laying, layingOf } from '../lay/setting.ts';
import { type Ridden, type Stop, apartAlong, drawnTo, endAt, freePassId, roundPass, runTo, stopsAlong, toNeedleLine, tracedPass } from '../lay/trace.ts';
import { placeUnder, pointAt, select } from '../look.ts';
import type { Session } from '../store.ts';
import { type Down, type Home, waiting } from './looking.ts';
import { reachNow } from './moving.ts';
import type { GestureNode, Held } from './node.ts';

/** A needle line to trace on, with all that draws the foot along it. */
export interface Edge {
  readonly laying: Laying;
  readonly pose: Laid;
  readonly needleLine: number;
  readonly line: NeedleLine;
  readonly stops: readonly Stop[];
}

/** One needle line of a placement on the table, by its index; undefined when it is not there. */
export function edgeOf(session: Session, placement: string, needleLine: number): Edge | undefined {
  const state = session.getState();
  const laying = layingOf(state, placement);
  const line = laying?.setting.needle.lines[needleLine];
  if (!laying || !line) return undefined;
  const pose = lies(state, laying);
  return { laying, pose, needleLine, line, stops: stopsAlong(laying, pose, line) };
}

/** A pass under way: from a fixed end, the foot has run so many signed inches, clockwise positive. */
export interface Run {
  readonly edge: Edge;
  readonly pass: string;
  /** The end that stays, and which of the two it is. */
  readonly fixed: Ridden;
  readonly fixedEnd: PassEnd;
  readonly fixedIs: 'start' | 'stop';
  readonly ran: number;
}

/** A new pass that starts at a place. */
export function newRun(session: Session, edge: Edge, start: Ridden): Run {
  const passes = layingOf(session.getState(), edge.laying.id)?.placement.passes ?? {};
  return { edge, pass: freePassId(passes), fixed: start, fixedEnd: endAt(start), fixedIs: 'start', ran: 0 };
}

/** A pass of which one end is taken up again; undefined when the pass cannot be found or goes all round. */
export function runOfEnd(session: Session, { placement, pass, end }: Extract<Hit, { kind: 'end' }>): Run | undefined {
  const laid = laidHere(session.getState(), placement)?.passes.find((candidate) => candidate.pass === pass);
  const written = layingOf(session.getState(), placement)?.placement.passes[pass];
  if (laid?.kind !== 'found' || !written || written.stop === 'all-round') return undefined;
  const edge = edgeOf(session, placement, laid.needleLine);
  if (!edge) return undefined;
  const fixedIs = end === 'start' ? 'stop' : 'start';
  const forward = laid.way === 'clockwise' ? laid.length : -laid.length;
  const fixedEnd = fixedIs === 'start' ? written.start : written.stop;
  return { edge, pass, fixed: { along: laid[fixedIs], stop: undefined }, fixedEnd, fixedIs, ran: fixedIs === 'start' ? forward : -forward };
}

/** Writes the pass as far as the foot has run, drawn to what is within reach; nothing while it has no length. Gives the foot's place. */
export function writeRun(session: Session, { edge, pass, fixed, fixedEnd, fixedIs, ran }: Run, reach: number): Ridden {
  const { laying, line } = edge;
  const place = drawnTo(line, fixed.along + ran, edge.stops, reach);
  const drawn = ran + apartAlong(line, fixed.along + ran, place.along);
  const traced = Math.abs(drawn) > SAME_POINT ? passOf(line, fixed, fixedEnd, fixedIs, place, drawn) : undefined;
  moveGesture(session, (plan) => {
    const placement = plan.sheets[laying.sheet]?.placements[laying.id];
    if (!placement) return;
    if (traced) placement.passes[pass] = { ...placement.passes[pass], ...traced };
    else delete placement.passes[pass];
  });
  session.setState({
    foot: { placement: laying.id, needleLine: edge.needleLine, along: place.along, at: place.stop?.name },
    inHand: { does: 'trace', sheet: laying.sheet, placements: [laying.id], made: [], near: undefined },
  });
  return place;
}

function passOf(line: NeedleLine, fixed: Ridden, fixedEnd: PassEnd, fixedIs: 'start' | 'stop', place: Ridden, ran: number): Pass {
  if (fixedIs === 'start') return { ...tracedPass(line, fixed, place, ran), start: fixedEnd };
  const traced = tracedPass(line, place, fixed, -ran);
  return traced.stop === 'all-round' ? traced : { ...traced, stop: fixedEnd };
}

/** The foot follows the hand along the edge. */
export function tracing(session: Session, home: Home, down: Down, run: Run): GestureNode {
  const { edge } = run;
  const back = toNeedleLine(edge.laying, edge.pose);
  let hand: Point<'template'> = carry(back, placeUnder(session, down.at));
  let ran = run.ran;
  const node: GestureNode = {
    name: 'tracing',
    on: (event) => {
      if (!session.getState().gesture) return waiting(home, down.pointer);
      if (event.kind === 'key' && event.key === 'Escape') {
        abandonGesture(session);
        return waiting(home, down.pointer);
      }
      if (!('pointer' in event) || event.pointer !== down.pointer) return node;
      if (event.kind === 'lost') {
        abandonGesture(session);
        return home.rest();
      }
      if (event.kind === 'up') {
        keepGesture(session);
        return home.rest();
      }
      if (event.kind !== 'move') return node;
      pointAt(session, event.at);
      const to = carry(back, placeUnder(session, event.at));
      ran = withinRound(edge.line, ran + runTo(edge.line, run.fixed.along + ran, to, distance(hand, to)), run.fixed.along);
      hand = to;
      writeRun(session, { ...run, ran }, reachNow(session, event.held));
      return node;
    },
  };
  return node;
}

/** No more than once round a closed line, and on an open one no farther than its ends. */
export function withinRound({ path, length }: NeedleLine, ran: number, fixed: number): number {
  return path.closed ? Math.max(-length, Math.min(length, ran)) : Math.max(-fixed, Math.min(length - fixed, ran));
}

/** Begins a pass where the hand took the needle line. */
export function beginTrace(session: Session, hit: Extract<Hit, { kind: 'needle' }>, held: Held | undefined): Run | undefined {
  const edge = edgeOf(session, hit.placement, hit.needleLine);
  if (!edge) return undefined;
  const run = newRun(session, edge, drawnTo(edge.line, hit.along, edge.stops, reachNow(session, held)));
  beginRun(session, run, 'Trace a pass along');
  return run;
}

/** Begins the step of undo of a pass. */
export function beginRun(session: Session, { edge: { laying }, pass }: Run, what: string): void {
  beginGesture(session, `${what} ${namedTogether(session.getState(), [laying])}`);
  select(session, { kind: 'placement', sheet: laying.sheet, placement: laying.id, pass });
}

/** Sews all round a needle line, from the place the hand took it at or what draws the foot there. */
export function traceRound(session: Session, hit: Extract<Hit, { kind: 'needle' }>): void {
  const edge = edgeOf(session, hit.placement, hit.needleLine);
  if (!edge || !edge.line.path.closed) return;
  const { laying, line, stops } = edge;
  const pass = freePassId(laying.placement.passes);
  const round = roundPass(line, drawnTo(line, hit.along, stops, reachNow(session, undefined)));
  changePlan(
    session,
    `Sew all round ${namedTogether(session.getState(), [laying])}`,
    (plan) => {
      plan.sheets[laying.sheet]!.placements[laying.id]!.passes[pass] = round;
    },
    { kind: 'placement', sheet: laying.sheet, placement: laying.id, pass },
  );
}
