// The tape measure: laid from one thing to another, it stays there while what it was laid to is moved.

import { boundsHold, boundsOf } from '../../geometry/bounds.ts';
import { nearestOnPath } from '../../geometry/nearest.ts';
import { type Point, distance } from '../../geometry/point.ts';
import { type LengthStyle, writeLength } from '../../num/inches.ts';
import type { Session, SessionState } from '../store.ts';
import { type Measured, type Measurable, measuredBetween } from './between.ts';
import type { TapeEnd } from './tape.ts';
import { type Thing, thingsOnTable } from './things.ts';

/** Takes the tape measure up. */
export function takeTape(session: Session): void {
  session.setState({ measuring: { from: undefined, to: undefined } });
}

/** Puts it away. */
export function putTapeAway(session: Session): void {
  session.setState({ measuring: undefined });
}

/** Lays an end of the tape on something, or takes it up again. */
export function layEnd(session: Session, which: 'from' | 'to', end: TapeEnd | undefined): void {
  session.setState(({ measuring }) => ({ measuring: { from: measuring?.from, to: measuring?.to, [which]: end } }));
}

/** Lays the next end where the hand taps: on what lies within `reach` inches, or on the bare place. A third tap begins anew. */
export function tapTape(session: Session, at: Point<'quilt'>, reach: number): void {
  const state = session.getState();
  const end = endNear(thingsOnTable(state), at, reach);
  const { measuring } = state;
  if (!measuring?.from || measuring.to) session.setState({ measuring: { from: end, to: undefined } });
  else session.setState({ measuring: { from: measuring.from, to: end } });
}

/** What an end of the tape would be laid on: a place before a line, the nearest first; the bare place when nothing is near. */
export function endNear(things: readonly Thing[], at: Point<'quilt'>, reach: number): TapeEnd {
  let best: { readonly id: string; readonly rank: number; readonly away: number } | undefined;
  for (const thing of things) {
    const rank = thing.kind === 'place' ? 0 : 1;
    if (thing.kind === 'line' && !boundsHold(boundsOf(thing.path), at, reach)) continue;
    const away = thing.kind === 'place' ? distance(thing.at, at) : nearestOnPath(thing.path, at).distance;
    if (away > reach) continue;
    if (!best || rank < best.rank || (rank === best.rank && away < best.away)) best = { id: thing.id, rank, away };
  }
  return best ? { on: best.id } : { at };
}

export interface TapeRead {
  readonly from: { readonly name: string; readonly thing: Measurable } | undefined;
  readonly to: { readonly name: string; readonly thing: Measurable } | undefined;
  readonly measured: Measured | undefined;
}

/** What the tape says now; an end on something that is no longer there lies nowhere. */
export function readTape(state: SessionState): TapeRead | undefined {
  const { measuring } = state;
  if (!measuring) return undefined;
  const things = thingsOnTable(state);
  const found = (end: TapeEnd | undefined): TapeRead['from'] => {
    if (!end) return undefined;
    if ('at' in end) return { name: 'this place', thing: { kind: 'place', at: end.at } };
    const thing = things.find(({ id }) => id === end.on);
    return thing && { name: `the ${thing.name}`, thing };
  };
  const [from, to] = [found(measuring.from), found(measuring.to)];
  return { from, to, measured: from && to && measuredBetween(from.thing, to.thing) };
}

/** The reading in words: "From the cross of Arc 8 to the top edge: 2 3/8 in." */
export function sayTape({ from, to, measured }: TapeRead, style: LengthStyle): readonly string[] {
  if (!from) return ['Touch where the tape begins: an etching, a tip, an end, a line, or a bare place.'];
  if (!to) return [`From ${from.name}. Now touch where it ends.`];
  if (!measured) return ['One of the two is not there to be measured.'];
  const length = measured.distance === 0 ? 'they meet' : writeLength(measured.distance, style);
  const said = [`From ${from.name} to ${to.name}: ${length}.`];
  if (measured.angle) {
    const degrees = Math.round(measured.angle.degrees * 10) / 10;
    said.push(measured.angle.of === 'lines' ? (degrees === 0 ? 'They run the same way.' : `They cross at ${degrees} degrees.`) : `The way there runs ${wayOf(degrees)}.`);
  }
  return said;
}

/** Degrees clockwise from level, in words. */
function wayOf(degrees: number): string {
  const named: { readonly [degrees: number]: string } = { 0: 'level, to the right', 90: 'straight down', 180: 'level, to the left', 270: 'straight up', 360: 'level, to the right' };
  const known = named[degrees];
  if (known !== undefined) return known;
  const up = degrees > 180;
  const right = degrees < 90 || degrees > 270;
  const slope = right ? (up ? 360 - degrees : degrees) : up ? degrees - 180 : 180 - degrees;
  return `${up ? 'up' : 'down'} to the ${right ? 'right' : 'left'}, ${Math.round(slope * 10) / 10} degrees from level`;
}
